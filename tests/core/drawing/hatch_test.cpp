#include "core/drawing/hatch.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "core/drawing/elevation.h"
#include "tests/core/drawing/drawn_jobs.h"
#include "tests/core/drawing/page_faults.h"

using namespace ribwright;

namespace {

double lengthOfAll(const std::vector<std::pair<PaperPoint, PaperPoint>>& lines) {
  double length = 0;
  for (const auto& [a, b] : lines) length += std::hypot(b.x - a.x, b.y - a.y);
  return length;
}

}  // namespace

// Strokes a millimetre apart cover as much as the area: 200 mm2 less a hole of 16 mm2.
TEST_CASE("strokes of a hatching lie in the shape and not in its holes") {
  const std::vector<std::vector<PaperPoint>> rings{{{0, 0}, {20, 0}, {20, 10}, {0, 10}},
                                                   {{4, 3}, {8, 3}, {8, 7}, {4, 7}}};
  const auto lines = hatchLines(rings, 0.05);
  CHECK(lengthOfAll(lines) * 0.05 == Approx(184).epsilon(0.01));
  for (const auto& [a, b] : lines) {
    CHECK(a.x + a.y == Approx(b.x + b.y));
    const double x = (a.x + b.x) / 2, y = (a.y + b.y) / 2;
    CHECK((x >= 0 && x <= 20 && y >= 0 && y <= 10));
    CHECK_FALSE((x > 4 && x < 8 && y > 3 && y < 7));
  }
}

TEST_CASE("two shapes beside one another are hatched on the same lines") {
  const auto left = hatchLines({{{0, 0}, {10, 0}, {10, 10}, {0, 10}}}, 2);
  const auto right = hatchLines({{{10, 0}, {20, 0}, {20, 10}, {10, 10}}}, 2);
  const auto both = hatchLines({{{0, 0}, {20, 0}, {20, 10}, {0, 10}}}, 2);
  CHECK(lengthOfAll(left) + lengthOfAll(right) == Approx(lengthOfAll(both)));
}

TEST_CASE("translucent sheets are hatched, the others are not, and the page says what the hatching means") {
  Job job = frozenGable();
  CHECK(timesSaid(elevationPages(job, plan(job), PaperSize::Letter).front(), "translucent sheets") == 0);
  job.walls.front().bands.front().translucent = {3, 4};
  const Page page = elevationPages(job, plan(job), PaperSize::Letter).front();
  CHECK(timesSaid(page, "translucent sheets") == 1);
  CHECK(pageFaults(page) == std::vector<std::string>{});
  int hatched = 0;
  for (const Stroke& stroke : strokesOf(page)) {
    const PaperPoint &a = stroke.points.front(), &b = stroke.points.back();
    if (stroke.part < 0 || a.x == b.x || std::abs(a.x + a.y - b.x - b.y) > 1e-6) continue;
    const std::string& mark = page.drawing.parts[static_cast<std::size_t>(stroke.part)].id;
    CHECK((mark == "A3" || mark == "A4"));
    ++hatched;
  }
  CHECK(hatched > 10);
}
