// Sets what lies at one path of a job, and goes through nothing else. What is absent on the way comes to be there.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/editing/field.h"
#include "core/job/job_file_form.h"
#include "core/job/job_tables.h"
#include "core/units/outcome.h"

namespace ribwright {

class FieldSetter : public Form {
 public:
  enum class Does {
    Reads,     // the text into the value, or into the values of a list
    PutsBack,  // what it is when nothing is stated
    States,    // something that was absent comes to be there
    Changes,   // the list
  };
  // `kind`: of the field at the path.
  static FieldSetter reading(std::string_view path, FieldKind kind, std::string_view text, const LengthStyle& style);
  static FieldSetter puttingBack(std::string_view path, const LengthStyle& style);
  static FieldSetter stating(std::string_view path, const LengthStyle& style);
  static FieldSetter changing(std::string_view list, const ListChange& change, const LengthStyle& style);

  // Empty when it was done. There is nothing at the path: a fault too.
  std::vector<Fault> faults() const;

  bool beginMember(const Key& key, bool usual) override;
  void endMember() override;
  bool beginObject(std::string_view type) override;
  void endObject() override {}
  std::size_t beginList(std::size_t size, ItemCount count) override;
  void beginItem(std::size_t index) override;
  void endItem() override { endMember(); }
  void endList() override {}

  void value(std::string& text, const TextRule& rule) override;
  void value(int& whole, const WholeRange& range) override;
  void value(bool& flag) override;
  void value(Length& length, const LengthRange& range) override;
  void value(Angle& angle, const AngleRange& range) override;
  void value(Slope& slope) override;
  void choice(int& index, ChoiceWords words) override;

  bool putsBack() const override;
  ListChange listChange() const override;

 private:
  FieldSetter(Does does, std::string_view path, std::string_view text, const LengthStyle& style)
      : Form(style.units), does_(does), target_(path), text_(text), style_(style) {}

  bool isAt() const { return path_ == target_; }
  // Takes what was read for the value at hand, or what was wrong with it.
  template <class T>
  void take(T& value, const Outcome<T>& read);
  template <class T>
  bool takeItem(T& value, const std::vector<T>& items) const;
  std::size_t readItems(FieldKind kind);

  Does does_;
  std::string target_, text_;
  FieldKind kind_ = FieldKind::Object;
  LengthStyle style_;
  ListChange change_;
  std::string path_;
  std::vector<std::size_t> lengths_;  // of the path, member by member
  std::size_t item_ = 0;
  std::vector<Length> lengthItems_;
  std::vector<int> wholeItems_;
  std::vector<std::string> textItems_;
  bool found_ = false;
  std::vector<Fault> faults_;
};

}  // namespace ribwright
