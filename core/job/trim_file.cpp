#include "core/job/trim_file.h"

#include <algorithm>
#include <stdexcept>
#include <string>

#include "core/job/job_file_held.h"
#include "core/job/job_file_joined.h"
#include "core/job/job_file_reader.h"
#include "core/words/embedded.h"

namespace ribwright {

constexpr std::string_view typeName(const TrimSet&) { return "trim_set"; }

void describe(Fields<TrimSet>& set) {
  set.required("trims", &TrimSet::trims, "strips bent to a section");
  set.required("rules", &TrimSet::rules, "by which they are counted");
  const TrimSet& read = set.read();
  set.eachDiffers("trims", read.trims, &Trim::id, "id");
  set.eachDiffers("rules", read.rules, &TrimRule::id, "id");
  HeldIds trims(set.form(), "file", "trims", read.trims);
  for (std::size_t i = 0; i < read.rules.size(); ++i) trims.hold(read.rules[i].trim, itemPath("rules", i, "trim"));
}

Outcome<TrimSet> readTrimSet(std::string_view text, std::string_view name) {
  const auto tree = readJson(text, name);
  if (!tree) return tree.faults();
  return readAs<TrimSet>(tree.value(), name, UnitSystem::FeetInches);
}

namespace {

TrimSet shipped(std::string_view name) {
  for (const EmbeddedFile& file : embeddedFiles()) {
    if (file.name != name) continue;
    auto set = readTrimSet(file.text, file.name);
    if (!set) throw std::logic_error(oneLine(set.faults().front()));  // the program itself is broken
    return std::move(set).value();
  }
  throw std::logic_error(joined("there is no ", name));
}

}  // namespace

const TrimSet& shippedTrim(UnitSystem units) {
  static const TrimSet feetAndInches = shipped("trim/feet-and-inches.json");
  static const TrimSet millimetres = shipped("trim/millimetres.json");
  return units == UnitSystem::FeetInches ? feetAndInches : millimetres;
}

}  // namespace ribwright
