// The random walls that drill batches are proved on: small ones most of whose batches can be cleared, and those of
// random buildings of every kind. The seed is fixed; a wall is thrown again by its index alone.
#pragma once

#include <catch2/catch.hpp>
#include <string>

#include "tests/fuzz/layout_text.h"
#include "tests/fuzz/measured_wall.h"
#include "tests/fuzz/random_building.h"
#include "tests/fuzz/random_screws.h"
#include "tests/fuzz/random_survey.h"

namespace ribwright::fuzz {

inline constexpr std::uint64_t kSurveySeed = kSeed + 40;

inline Job smallSurveyedWall(int index) { return surveyedWall(kSurveySeed, index); }

inline Job surveyedBuilding(int index) {
  Dice dice(kSurveySeed + 1, index);
  Job job = withSurvey(withScrews(randomJob(kSeed, index), dice), dice);
  return dice.oneIn(6) ? withHungSheets(job, plan(job), dice) : job;
}

// Says what is wrong with this job and counts it; a test stops at its fifth bad job.
class SurveyReport {
 public:
  bool add(int index, const Job& job, const std::string& what) {
    std::string said = what;
    if (!what.empty()) said = "index " + std::to_string(index) + "\n" + what + "\n" + jobText(job);
    CHECK(said == "");
    return !said.empty() && ++bad_ >= 5;
  }

 private:
  int bad_ = 0;
};

// Of each sheeted wall what was measured, and its batches.
template <class Use>
void eachMeasuredWall(const Job& job, const Plan& plan, const Use& use) {
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    const WallPlan& wall = *plan.walls[i];
    if (wall.layout.sheeted) use(MeasuredWall(job, job.walls[i], wall.layout, wall.holes), wall);
  }
}

// The first `small` small walls and `buildings` buildings; `check` gives its complaints.
template <class Check>
void eachSurveyed(int small, int buildings, const Check& check) {
  SurveyReport report;
  for (int i = 0; i < small; ++i) {
    const Job job = smallSurveyedWall(i);
    if (report.add(i, job, check(job).text())) return;
  }
  for (int i = 0; i < buildings; ++i) {
    const Job job = surveyedBuilding(i);
    if (report.add(i, job, check(job).text())) return;
  }
}

inline std::string whereIn(const DrillBatch& batch, std::size_t row) {
  return batch.id + " row " + std::to_string(row + 1) + " at " + std::to_string(batch.rows[row].s.nanometres());
}

inline DrilledRow drilledRow(const BatchRow& row) {
  return {row.key.kind, row.key.screw, row.key.height.nanometres(), row.key.level};
}

}  // namespace ribwright::fuzz
