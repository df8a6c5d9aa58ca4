#include "core/output/paper_age.h"

#include "core/job/fingerprint.h"

namespace ribwright {
namespace {

// In StatedPart's order.
constexpr const char* partIds[kStatedParts] = {"stated.building", "stated.sheets", "stated.openings",
                                               "stated.steel",    "stated.screws", "stated.survey"};

// Of both systems of units that in which less differs: the page was printed in that one.
Outcome<std::vector<StatedPart>> changedInEitherUnits(const Job& job, const Fingerprint& printed) {
  Job other = job;
  other.units = job.units == UnitSystem::FeetInches ? UnitSystem::Millimetres : UnitSystem::FeetInches;
  auto own = changedSince(job, printed);
  if (!own) return own;
  auto shown = changedSince(other, printed);
  return own.value().size() <= shown.value().size() ? own : shown;
}

}  // namespace

Outcome<PaperAge> paperAge(const Job& job, std::string_view fingerprint) {
  const auto printed = readFingerprint(fingerprint);
  if (!printed) return printed.faults();
  const auto changed = changedInEitherUnits(job, printed.value());
  if (!changed) return changed.faults();
  PaperAge age{printed.value().text(), std::nullopt};
  if (changed.value().empty()) return age;
  Phrase parts;
  for (const StatedPart part : changed.value())
    parts.values.emplace_back("", Phrase{partIds[static_cast<std::size_t>(part)]});
  age.older = {Grade::Stop, "paper-older-than-job", printed.value().of, "", {{"page", age.page}, {"parts", parts}}, ""};
  return age;
}

std::string ageText(const PaperAge& age, const Words& words) {
  if (age.older) return words.say("page.older", age.older->values, {});
  return words.say("page.current", {{"page", age.page}}, {});
}

}  // namespace ribwright
