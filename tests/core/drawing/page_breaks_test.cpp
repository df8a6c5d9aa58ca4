#include "core/drawing/page_breaks.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "tests/core/drawing/drawn_jobs.h"

using namespace ribwright;

namespace {

bool isModuleLine(const WallLayout& layout, Length u) {
  for (const Module& module : layout.runs.front().modules) {
    if (module.startLine == u || module.leadLine == u) return true;
  }
  return false;
}

}  // namespace

TEST_CASE("a wall that fits is not broken") {
  const DrawnJob drawn = planned("frozen gable", frozenGable());
  const WallLayout& layout = drawn.plan.walls.front()->layout;
  CHECK(pageBreaks(layout, Length::feet(40)) == std::vector<Length>{Length(), Length::feet(40)});
}

TEST_CASE("a long wall is broken at module lines, beside doors, and no page is too long") {
  const DrawnJob drawn = planned("long wall", longWall());
  const WallLayout& layout = drawn.plan.walls.front()->layout;
  for (const Length most : {Length::feet(60), Length::feet(96), Length::feet(150), Length::feet(501)}) {
    const auto breaks = pageBreaks(layout, most);
    CHECK(breaks.front() == Length());
    CHECK(breaks.back() == Length::feet(1002));
    for (std::size_t i = 1; i < breaks.size(); ++i) {
      CHECK(breaks[i] > breaks[i - 1]);
      CHECK(breaks[i] - breaks[i - 1] <= most);
      if (i + 1 == breaks.size()) continue;
      CHECK(isModuleLine(layout, breaks[i]));
      for (const CutRegion& cut : layout.cuts) CHECK_FALSE((cut.left < breaks[i] && breaks[i] < cut.right));
    }
  }
}

TEST_CASE("a wall without sheets is broken into equal pages") {
  Job job = longWall();
  job.walls.front().cladding = Cladding::ByOthers;
  const DrawnJob drawn = planned("by others", job);
  const auto breaks = pageBreaks(drawn.plan.walls.front()->layout, Length::feet(334));
  CHECK(breaks == std::vector<Length>{Length(), Length::feet(334), Length::feet(668), Length::feet(1002)});
}
