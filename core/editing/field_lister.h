// Lists the fields of a job, or of what lies at a path in it. What it goes through is a copy: what is absent comes to
// be there, so that its fields are known too.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/editing/field.h"
#include "core/job/job_file_form.h"
#include "core/job/job_tables.h"

namespace ribwright {

class FieldLister : public Form {
 public:
  enum class Lists {
    Counted,  // of lists of objects, the one at the path alone has its items
    Shown,    // every list has one item at least: all types are met
  };
  FieldLister(std::string_view path, const LengthStyle& style, Lists lists);

  // Null: there is nothing at the path.
  const Field* found() const { return found_ ? &root_ : nullptr; }

  bool beginMember(const Key& key, bool usual) override;
  void endMember() override;
  bool beginObject(std::string_view type) override;
  void endObject() override;
  std::size_t beginList(std::size_t size, ItemCount count) override;
  void beginItem(std::size_t index) override;
  void endItem() override;
  void endList() override;

  void value(std::string& text, const TextRule& rule) override;
  void value(int& whole, const WholeRange& range) override;
  void value(bool& flag) override;
  void value(Length& length, const LengthRange& range) override;
  void value(Angle& angle, const AngleRange& range) override;
  void value(Slope& slope) override;
  void choice(int& index, ChoiceWords words) override;

 private:
  // One that is gone through: the job's root, a member, or an item of a list.
  struct Level {
    Field field;
    std::size_t items = 0;  // of a list: how many there really are
    std::vector<Length> lengths;
    std::vector<int> wholes;
    std::vector<std::string> texts;
  };
  Level& here() { return levels_.back(); }
  bool isListed() const;  // at the path or inside it
  bool isOnWay() const;   // at the path or above it
  bool isOnlyCounted() const;
  void open(std::string path);
  void take(Field field);
  void gather(Level item);
  void put(FieldKind kind, std::string text, Phrase limits);

  std::string target_;
  LengthStyle style_;
  Lists lists_;
  std::vector<Level> levels_;
  Field root_;
  bool found_ = false;
};

}  // namespace ribwright
