// Fills a T from a JSON tree by its table, and lists every fault there is.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/job/job_file_form.h"
#include "core/job/job_file_tree.h"
#include "core/job/job_tables.h"

namespace ribwright {

class JobReader : public Form {
 public:
  // `name` begins every place. The root must outlive the reader.
  JobReader(const JsonNode& root, std::string_view name, UnitSystem units);

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

  void wrong(std::string_view at, std::string_view message) override;
  bool soundAt(std::string_view path) const override;
  bool soundBelow(std::string_view path) const override;

  // At most mostFaults, then how many more there are.
  std::vector<Fault> faults() &&;

 private:
  struct Object {
    const JsonNode* node;
    std::size_t pathLength;               // of the object's own path
    std::size_t firstFault;               // faults from here on lie inside it
    std::vector<std::string_view> known;  // keys of its table
  };
  // The node at hand and where in path_ its own name begins.
  struct Place {
    const JsonNode* node;
    std::size_t pathLength;
  };

  const JsonNode& node() const { return *places_.back().node; }
  bool isA(JsonNode::Is is, std::string_view wanted);
  void fault(std::string_view message);
  void add(std::string path, std::string_view message);
  std::string pathFrom(const Object& object, std::string_view at) const;

  std::string name_;
  std::string path_;
  std::vector<Place> places_;
  std::vector<Object> objects_;
  std::vector<Fault> faults_;  // places without the file's name, until they are handed out
  std::size_t more_ = 0;
};

// Reads a whole T; `usual` members where the file has none.
template <class T>
Outcome<T> readAs(const JsonTree& tree, std::string_view name, UnitSystem units) {
  T object;
  JobReader reader(tree.root, name, units);
  formObject(reader, object, T{});
  std::vector<Fault> faults = tree.doubled;
  for (Fault& fault : std::move(reader).faults()) faults.push_back(std::move(fault));
  if (!faults.empty()) return faults;
  return object;
}

}  // namespace ribwright
