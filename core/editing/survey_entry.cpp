#include "core/editing/survey_entry.h"

#include "core/editing/survey_edits.h"
#include "core/job/length_style.h"
#include "core/units/typed_text.h"

namespace ribwright {
namespace {

bool isSlab(const SurveyLine& line) { return line.of == SurveyLine::Of::Slab; }

std::optional<TypedReading> readingBefore(const Wall& wall, const SurveyLine& line, Length u) {
  std::optional<TypedReading> before;
  for (const GirtReading& reading : readingsOf(wall, line)) {
    if (reading.u < u) before = TypedReading{reading.height, reading.within};
  }
  return before;
}

std::vector<Fault> faultsAt(const SurveyLine& line, Length u) {
  if (!isSlab(line) && line.id.empty())
    return {{"", "the girt has no id; give it one, so that its readings can be told from another girt's"}};
  if (!line.reaches(u)) return {{"", "it does not reach to this station; type into a station that it passes"}};
  return {};
}

std::vector<Fault> faultsOf(const TypedReading& reading, const SurveyLine& line, const ReadBy& who) {
  if (!reading.within) return {};
  if (isSlab(line)) return {{"", "the slab edge takes no stick check; type its height"}};
  if (!isBlank(who.by) && !isBlank(who.date)) return {};
  return {{"", "a stick check needs who read it and when; fill in both, then enter it again"}};
}

}  // namespace

Outcome<Job> enterReading(const Job& job, std::size_t wall, const SurveyLine& line, Length u, std::string_view text,
                          const ReadBy& who) {
  if (isBlank(text)) return isSlab(line) ? clearSlab(job, wall, u) : clearReading(job, wall, line.id, u);
  if (auto faults = faultsAt(line, u); !faults.empty()) return faults;
  const auto typed = parseReading(text, styleOf(job), readingBefore(job.walls.at(wall), line, u));
  if (!typed) return typed.faults();
  const TypedReading& reading = typed.value();
  if (auto faults = faultsOf(reading, line, who); !faults.empty()) return faults;
  if (isSlab(line)) return setSlab(job, wall, {u, reading.height});
  return setReading(job, wall, line.id, {u, reading.height, reading.within, who.by, who.date});
}

std::string typedText(const Job& job, std::size_t wall, const SurveyLine& line, Length u) {
  const auto reading = readingAt(job.walls.at(wall), line, u);
  return reading ? readingText({reading->height, reading->within}, styleOf(job)) : std::string();
}

}  // namespace ribwright
