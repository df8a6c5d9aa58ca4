// Invented surveys of invented buildings: every edge measured where the plans have it, or off by so much.
#pragma once

#include "core/fastening/measured_faces.h"
#include "core/fastening/survey_grid.h"
#include "core/job/pattern_numbers.h"
#include "core/plan/plan.h"

namespace ribwright {

inline void confirmAll(Job& job) {
  for (ScrewPattern& pattern : job.patterns) pattern.confirmation = {"S-4", "M", "day", numbersOf(pattern, job.screws)};
}

// `off`: how far the edge numbered `line` (from the top) stands above the plans at u.
template <class Off>
Job surveyed(Job job, const Off& off) {
  confirmAll(job);
  const Plan made = plan(job);
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    Wall& wall = job.walls[i];
    const WallPlan& of = *made.walls[i];
    const auto lines = surveyLines(wall, of.layout, of.holes.supports);
    for (std::size_t k = 0; k < lines.size(); ++k) {
      if (lines[k].of == SurveyLine::Of::Slab || lines[k].id.empty()) continue;
      GirtSurvey survey{lines[k].id, {}};
      for (const SurveyStation& station : surveyStations(wall, of.layout, lines)) {
        if (!lines[k].reaches(station.u)) continue;
        const Length z = plannedHeight(wall, of.layout, lines[k], station.u) + off(k, station.u);
        survey.readings.push_back({station.u, z - chalkLineAt(wall, of.layout, station.u), {}, "M", "day"});
      }
      wall.survey.girts.push_back(survey);
    }
  }
  return job;
}

inline Job surveyed(const Job& job) {
  return surveyed(job, [](std::size_t, Length) { return Length(); });
}

// A member for every girt, so that its screw face is known.
inline Job withMember(Job job) {
  Member member;
  member.id = "Z8x2.5x0.068";
  member.depth = Length::inches(8);
  member.flange = Length::inches(2, 32);
  member.lip = Length::inches(0, 56);
  member.thickness = Length::inches(0, 4);
  member.bendRadius = Length::inches(0, 12);
  job.members.push_back(member);
  for (Wall& wall : job.walls) {
    for (Girt& girt : wall.girts) girt.member = member.id;
  }
  return job;
}

}  // namespace ribwright
