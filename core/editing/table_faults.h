// What in a value the job file's tables would refuse, found without writing it down and reading it again.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/job/job_file_form.h"
#include "core/job/job_tables.h"
#include "core/units/outcome.h"

namespace ribwright {

class TableFaults : public Form {
 public:
  // `place` begins every fault's place.
  TableFaults(UnitSystem units, std::string place) : Form(units), path_(std::move(place)) {}

  bool beginMember(const Key& key, bool usual) override;
  void endMember() override;
  bool beginObject(std::string_view type) override;
  void endObject() override;
  std::size_t beginList(std::size_t size, ItemCount count) override;
  void beginItem(std::size_t index) override;
  void endItem() override { endMember(); }
  void endList() override {}

  void value(std::string& text, const TextRule& rule) override;
  void value(int& whole, const WholeRange& range) override;
  void value(bool&) override {}
  void value(Length& length, const LengthRange& range) override;
  void value(Angle& angle, const AngleRange& range) override;
  void value(Slope&) override {}
  void choice(int&, ChoiceWords) override {}

  void wrong(std::string_view at, std::string_view message) override;
  bool soundAt(std::string_view path) const override;
  bool soundBelow(std::string_view path) const override;

  std::vector<Fault> faults() && { return std::move(faults_); }

 private:
  void fault(std::string message) { faults_.push_back({path_, std::move(message)}); }
  std::string pathOf(std::string_view at) const;

  std::string path_;
  std::vector<std::size_t> lengths_;  // of the path, member by member
  std::vector<std::size_t> objects_;  // of the path, object by object
  std::vector<Fault> faults_;
};

template <class T>
std::vector<Fault> tableFaults(T& value, UnitSystem units, std::string place) {
  TableFaults form(units, std::move(place));
  static const T usual{};
  formObject(form, value, usual);
  return std::move(form).faults();
}

}  // namespace ribwright
