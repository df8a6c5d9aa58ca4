// Takes a T out into a JSON tree by its table: keys in the table's order, members that equal their default left out.
#pragma once

#include <vector>

#include "core/job/job_file_form.h"
#include "core/job/job_file_tree.h"
#include "core/job/job_tables.h"

namespace ribwright {

class JobWriter : public Form {
 public:
  explicit JobWriter(UnitSystem units) : Form(units) {}

  bool beginMember(const Key& key, bool usual) override;
  void endMember() override;
  bool beginObject(std::string_view type) override;
  void endObject() override {}
  std::size_t beginList(std::size_t size, ItemCount count) override;
  void beginItem(std::size_t index) override;
  void endItem() override;
  void endList() override {}

  void value(std::string& text, const TextRule& rule) override;
  void value(int& whole, const WholeRange& range) override;
  void value(bool& flag) override;
  void value(Length& length, const LengthRange& range) override;
  void value(Angle& angle, const AngleRange& range) override;
  void value(Slope& slope) override;
  void choice(int& index, ChoiceWords words) override;

  JsonNode tree() && { return std::move(nodes_.front()); }

 private:
  std::vector<JsonNode> nodes_{JsonNode{}};  // the one at hand is the last
  std::vector<std::string_view> keys_;
};

template <class T>
std::string writtenAs(const T& object, UnitSystem units) {
  JobWriter writer(units);
  T copy = object;  // a table's members are not const, for the reader's sake
  formObject(writer, copy, T{});
  return jsonText(std::move(writer).tree());
}

}  // namespace ribwright
