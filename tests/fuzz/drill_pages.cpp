// Pages for measuring and drilling of many made-up buildings, as the plans have them and measured.
#include "core/drawing/drill_pages.h"

#include <catch2/catch.hpp>

#include "tests/core/drawing/all_papers.h"
#include "tests/core/drawing/page_faults.h"
#include "tests/fuzz/surveyed_walls.h"

using namespace ribwright;
using namespace ribwright::fuzz;

namespace {

constexpr int smallWalls = 120, drilledBuildings = 40;
int cleared(const Plan& plan) {
  int count = 0;
  for (const auto& wall : plan.walls) {
    for (const DrillBatch& batch : wall->batches) count += batch.isCleared() ? 1 : 0;
  }
  return count;
}

// Gives how many pages there are.
int lookAtPages(const Job& job, const Plan& made, PaperSize paper) {
  const auto pages = drillPages(job, made, paper);
  for (const Page& page : pages) CHECK(pageFaults(page) == std::vector<std::string>{});
  return static_cast<int>(pages.size());
}

}  // namespace

TEST_CASE("on the pages for drilling of 160 random walls and buildings nothing covers, crosses or leaves anything") {
  int pages = 0, drilled = 0;
  const auto look = [&](int index, const Job& job) {
    INFO("seed " << kSurveySeed << ", building " << index);
    const Plan made = plan(job);
    pages += lookAtPages(job, made, papers[index % 4]);
    drilled += cleared(made);
  };
  for (int index = 0; index < smallWalls; ++index) look(index, smallSurveyedWall(index));
  for (int index = 0; index < drilledBuildings; ++index) look(index, surveyedBuilding(index));
  CHECK(pages > 800);
  CHECK(drilled > 40);
}
