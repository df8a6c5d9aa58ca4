// What holds for the screws of every building: each against the independent checker, and against itself moved, mirrored
// and edited. The seed is fixed and printed; a building is thrown again by its index alone.
#include <catch2/catch.hpp>

#include "tests/fuzz/building_report.h"
#include "tests/fuzz/hole_checker.h"
#include "tests/fuzz/hole_moves.h"
#include "tests/fuzz/layout_text.h"
#include "tests/fuzz/moved.h"
#include "tests/fuzz/screwed_job.h"

namespace ribwright::fuzz {
namespace {

// Of a job's walls, each stated free.
template <class Use>
void eachWallFreed(const Job& job, const Use& use) {
  const Plan whole = plan(job);
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    const WallLayout& layout = whole.walls[i]->layout;
    if (layout.sheeted) use(freed(job, job.walls[i], layout.direction.hand));
  }
}

WallHoles onlyHoles(const Job& job) { return plan(job).walls.front()->holes; }

std::string unlike(const WallHoles& a, const WallHoles& b) { return firstDifference(holesText(a), holesText(b)); }

std::string allHoles(const Plan& plan) {
  std::string text;
  for (const auto& wall : plan.walls) text += holesText(wall->holes);
  return text;
}

}  // namespace

// AISI S100-16, UFGS 07413, common practice: core/fastening/holes.h
TEST_CASE("Every screw of two thousand random buildings is where the trade says, and none is missing") {
  Report report;
  for (int i = 0; i < 2000; ++i) {
    const Job job = screwedJob(i);
    if (report.add(i, job, checkScrews(job, plan(job)).text())) return;
  }
}

TEST_CASE("Where sheets hang already the screws go by what was measured") {
  Report report;
  for (int i = 0; i < 700; ++i) {
    Dice dice(kScrewSeed + 1, i);
    const Job planned = screwedJob(i);
    const Job job = withHungSheets(planned, plan(planned), dice);
    if (report.add(i, job, checkScrews(job, plan(job)).text())) return;
  }
}

// All goes by the hanging direction, so that a mirror changes nothing
TEST_CASE("The screws of a wall in a mirror are in the mirror") {
  Report report;
  bool enough = false;
  for (int i = 0; i < 700 && !enough; ++i) {
    eachWallFreed(screwedJob(i), [&](const Job& free) {
      if (enough) return;
      const Wall& wall = free.walls.front();
      const int columns = static_cast<int>(wall.columns.bays.size()) + 1;
      const WallHoles expected = mirrored(onlyHoles(free), *wall.width, columns);
      enough = report.add(i, free, unlike(expected, onlyHoles(mirrored(free))));
    });
  }
}

TEST_CASE("The screws of a wall raised are the same, raised") {
  Report report;
  bool enough = false;
  for (int i = 0; i < 500 && !enough; ++i) {
    Dice dice(kScrewSeed + 2, i);
    const Length by = dice.length(-Length::feet(30), Length::feet(30));
    eachWallFreed(screwedJob(i), [&](const Job& free) {
      if (enough) return;
      enough = report.add(i, free, unlike(raised(onlyHoles(free), by), onlyHoles(raised(free, by))));
    });
  }
}

TEST_CASE("A wall of a building has the same screws as the same wall stated free") {
  Report report;
  for (int i = 0; i < 300; ++i) {
    const Job job = screwedJob(i);
    const Plan whole = plan(job);
    for (std::size_t wall = 0; wall < job.walls.size(); ++wall) {
      const WallLayout& layout = whole.walls[wall]->layout;
      if (!layout.sheeted) continue;
      const Job free = freed(job, job.walls[wall], layout.direction.hand);
      if (report.add(i, free, unlike(whole.walls[wall]->holes, onlyHoles(free)))) return;
    }
  }
}

TEST_CASE("A job planned twice has the same screws") {
  Report report;
  for (int i = 0; i < 200; ++i) {
    const Job job = screwedJob(i);
    const Job copy = job;
    if (report.add(i, job, firstDifference(allHoles(plan(job)), allHoles(plan(copy))))) return;
  }
}

TEST_CASE("A job with its screws edited is planned from the plan before as it is planned anew") {
  Report report;
  for (int i = 0; i < 700; ++i) {
    Dice dice(kScrewSeed + 3, i);
    Job job = screwedJob(i);
    Plan before = plan(job);
    for (int edits = dice.small(1, 3); edits > 0; --edits) {
      job = dice.oneIn(3) ? edited(job, dice) : withScrewEdit(job, dice);
      if (job.walls.empty()) break;
      const Plan after = plan(job, before), anew = plan(job);
      if (report.add(i, job, firstDifference(allHoles(anew), allHoles(after)))) return;
      CHECK(anew.findings == after.findings);
      before = after;
    }
  }
}

}  // namespace ribwright::fuzz
