#include "core/editing/girt_survey_edits.h"

#include <algorithm>
#include <utility>

#include "core/editing/wall_items.h"

namespace ribwright {
namespace {

std::vector<GirtSurvey>::iterator surveyOf(Wall& wall, const std::string& girt) {
  auto& all = wall.survey.girts;
  return std::find_if(all.begin(), all.end(), [&](const GirtSurvey& one) { return one.girt == girt; });
}

bool lapsAt(const EndLaps& laps, const std::string& girt) {
  return std::find(laps.girts.begin(), laps.girts.end(), girt) != laps.girts.end();
}

std::vector<GirtReading> inOrder(std::vector<GirtReading> readings) {
  std::stable_sort(readings.begin(), readings.end(),
                   [](const GirtReading& a, const GirtReading& b) { return a.u < b.u; });
  return readings;
}

}  // namespace

void splitReadings(Wall& wall, const std::string& left, const std::string& right, Length u) {
  if (lapsAt(wall.endLaps, left)) wall.endLaps.girts.push_back(right);
  const auto survey = surveyOf(wall, left);
  if (survey == wall.survey.girts.end()) return;
  const auto beyond = std::find_if(survey->readings.begin(), survey->readings.end(),
                                   [u](const GirtReading& reading) { return reading.u > u; });
  if (beyond == survey->readings.end()) return;
  GirtSurvey of{right, {beyond, survey->readings.end()}};
  survey->readings.erase(beyond, survey->readings.end());
  const auto behind = survey->readings.empty() ? wall.survey.girts.erase(survey) : survey + 1;
  wall.survey.girts.insert(behind, std::move(of));
}

Outcome<Wall> joinedReadings(Wall wall, const std::string& into, const std::string& from) {
  if (lapsAt(wall.endLaps, from)) {
    std::erase(wall.endLaps.girts, from);
    if (!lapsAt(wall.endLaps, into)) wall.endLaps.girts.push_back(into);
  }
  const auto taken = surveyOf(wall, from);
  if (taken == wall.survey.girts.end()) return wall;
  const auto keeps = surveyOf(wall, into);
  if (keeps == wall.survey.girts.end()) {
    taken->girt = into;
    return wall;
  }
  std::vector<GirtReading> all = keeps->readings;
  all.insert(all.end(), taken->readings.begin(), taken->readings.end());
  all = inOrder(std::move(all));
  const auto twice =
      std::adjacent_find(all.begin(), all.end(), [](const GirtReading& a, const GirtReading& b) { return a.u == b.u; });
  if (twice != all.end())
    return Fault{itemPlace(wall, "survey.girts", from),
                 joined("was measured where ", into, " was; strike out one of the two readings, then join them")};
  keeps->readings = std::move(all);
  wall.survey.girts.erase(taken);
  return wall;
}

}  // namespace ribwright
