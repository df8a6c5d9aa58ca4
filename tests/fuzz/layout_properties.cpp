// What holds for every building: the layout against the independent checker, and against itself moved, mirrored and
// edited. The seed is fixed and printed; a building is thrown again by its index alone.
#include <catch2/catch.hpp>

#include "tests/fuzz/building_report.h"
#include "tests/fuzz/layout_checker.h"
#include "tests/fuzz/layout_text.h"
#include "tests/fuzz/moved.h"
#include "tests/fuzz/random_building.h"

namespace ribwright::fuzz {
namespace {

// Of a job's walls, each stated free; `use` gets the free job and the layout it came from.
template <class Use>
void eachWallFreed(const Job& job, const Plan& whole, const Use& use) {
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    const WallLayout& layout = whole.walls[i]->layout;
    if (layout.sheeted) use(freed(job, job.walls[i], layout.direction.hand), layout);
  }
}

const WallLayout& onlyWall(const Plan& plan) { return plan.walls.front()->layout; }

std::string unlike(const WallLayout& a, const WallLayout& b) {
  return firstDifference(layoutText(inFixedOrder(a)), layoutText(inFixedOrder(b)));
}

}  // namespace

// The trade's rules
TEST_CASE("Two thousand random buildings are laid out as the trade model says") {
  Report report;
  for (int i = 0; i < 2000; ++i) {
    const Job job = randomJob(kSeed, i);
    Dice dice(kSeed + 1, i);
    const Complaints complaints = checkLayout(job, plan(job), dice);
    if (report.add(i, job, complaints.text())) return;
  }
}

// The trade's rules: hung sheets are facts: the run goes on from the last one's measured leading edge
TEST_CASE("Runs go on from hung sheets as the trade model says") {
  Report report;
  for (int i = 0; i < 2000; ++i) {
    Dice dice(kSeed + 2, i);
    const Job planned = randomJob(kSeed, i);
    const Job job = withHungSheets(planned, plan(planned), dice);
    const Complaints complaints = checkLayout(job, plan(job), dice);
    if (report.add(i, job, complaints.text())) return;
  }
}

// The trade's rules: marks of hung sheets never change
TEST_CASE("Sheets that hang just where they should change nothing") {
  Report report;
  for (int i = 0; i < 700; ++i) {
    Dice dice(kSeed + 6, i);
    const Job job = randomJob(kSeed, i);
    const Plan before = plan(job), after = plan(withHungSheets(job, before, dice, true));
    for (std::size_t wall = 0; wall < before.walls.size(); ++wall) {
      WallLayout hung = after.walls[wall]->layout;
      for (SheetRun& run : hung.runs) {
        for (Module& module : run.modules) module.hung = false;
      }
      if (report.add(i, job, unlike(before.walls[wall]->layout, hung))) return;
    }
  }
}

// The trade's rules: heights on a slope are measured from its lower end, so that a mirror changes nothing
TEST_CASE("A wall in a mirror is laid out in a mirror") {
  Report report;
  bool enough = false;
  for (int i = 0; i < 700 && !enough; ++i) {
    const Job job = randomJob(kSeed, i);
    eachWallFreed(job, plan(job), [&](const Job& free, const WallLayout&) {
      if (enough) return;
      const Job turned = mirrored(free);
      enough = report.add(i, free, unlike(mirrored(onlyWall(plan(free))), onlyWall(plan(turned))));
    });
  }
}

// The house's rules: a wall's layout reads the wall, wherever it stands
TEST_CASE("A wall of a building is laid out as the same wall stated free") {
  Report report;
  bool enough = false;
  for (int i = 0; i < 500 && !enough; ++i) {
    const Job job = randomJob(kSeed, i);
    eachWallFreed(job, plan(job), [&](const Job& free, const WallLayout& layout) {
      if (enough) return;
      WallLayout placed = layout, alone = onlyWall(plan(free));
      placed.face.line.reset();
      placed.direction = alone.direction;
      enough = report.add(i, free, unlike(placed, alone));
    });
  }
}

TEST_CASE("A wall raised is laid out the same, raised") {
  Report report;
  bool enough = false;
  for (int i = 0; i < 500 && !enough; ++i) {
    Dice dice(kSeed + 3, i);
    const Length by = dice.length(-Length::feet(30), Length::feet(30));
    const Job job = randomJob(kSeed, i);
    eachWallFreed(job, plan(job), [&](const Job& free, const WallLayout&) {
      if (enough) return;
      enough = report.add(i, free, unlike(raised(onlyWall(plan(free)), by), onlyWall(plan(raised(free, by)))));
    });
  }
}

TEST_CASE("A building moved in its plan is laid out the same") {
  Report report;
  for (int i = 0; i < 500; ++i) {
    Dice dice(kSeed + 4, i);
    const Job job = randomJob(kSeed, i);
    const Length x = dice.length(-Length::feet(900), Length::feet(900)),
                 y = dice.length(-Length::feet(900), Length::feet(900));
    const Plan here = plan(job), there = plan(movedInPlan(job, x, y));
    for (std::size_t wall = 0; wall < here.walls.size(); ++wall) {
      WallLayout a = here.walls[wall]->layout, b = there.walls[wall]->layout;
      a.face.line.reset();
      b.face.line.reset();
      if (report.add(i, job, unlike(a, b))) return;
    }
  }
}

// The house's rules
TEST_CASE("A job planned twice gives one plan") {
  Report report;
  for (int i = 0; i < 300; ++i) {
    const Job job = randomJob(kSeed, i);
    const Job copy = job;
    if (report.add(i, job, firstDifference(planText(plan(job)), planText(plan(copy))))) return;
  }
}

// The house's rules
TEST_CASE("An edited job planned from the plan before is the job planned anew") {
  Report report;
  for (int i = 0; i < 700; ++i) {
    Dice dice(kSeed + 5, i);
    Job job = randomJob(kSeed, i);
    Plan before = plan(job);
    for (int edits = dice.small(1, 3); edits > 0; --edits) {
      job = dice.oneIn(5) ? withHungSheets(job, before, dice) : edited(job, dice);
      if (job.walls.empty()) break;
      const Plan after = plan(job, before);
      const Plan anew = plan(job);
      if (report.add(i, job, firstDifference(planText(anew), planText(after)))) return;
      CHECK(anew.findings == after.findings);
      before = after;
    }
  }
}

}  // namespace ribwright::fuzz
