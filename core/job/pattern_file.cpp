#include "core/job/pattern_file.h"

#include <stdexcept>
#include <utility>

#include "core/job/job_file_held.h"
#include "core/job/job_file_reader.h"
#include "core/words/embedded.h"

namespace ribwright {

constexpr std::string_view typeName(const PatternExample&) { return "pattern_example"; }

void describe(Fields<PatternExample>& file) {
  file.required("pattern", &PatternExample::pattern, "the hole pattern");
  file.required("screws", &PatternExample::screws, "screws that the pattern names");
  const PatternExample& read = file.read();
  file.eachDiffers("screws", read.screws, &Screw::id, "id");
  HeldIds screws(file.form(), "file", "screws", read.screws);
  holdScrews(read.pattern, "pattern.", screws);
}

Outcome<PatternExample> readPattern(std::string_view text, std::string_view name) {
  const auto tree = readJson(text, name);
  if (!tree) return tree.faults();
  return readAs<PatternExample>(tree.value(), name, UnitSystem::FeetInches);
}

const std::vector<PatternExample>& shippedPatterns() {
  static const std::vector<PatternExample> patterns = [] {
    std::vector<PatternExample> read;
    for (const EmbeddedFile& file : embeddedFiles()) {
      if (!file.name.starts_with("patterns/")) continue;
      auto example = readPattern(file.text, file.name);
      if (!example) throw std::logic_error(oneLine(example.faults().front()));  // the program itself is broken
      const ScrewPattern& pattern = example.value().pattern;
      if (!pattern.example || pattern.confirmation) throw std::logic_error(pattern.id + " claims to be no example");
      read.push_back(std::move(example).value());
    }
    return read;
  }();
  return patterns;
}

}  // namespace ribwright
