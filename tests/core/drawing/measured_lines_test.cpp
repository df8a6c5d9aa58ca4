// Measured girts on the elevation.
#include "core/drawing/measured_lines.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "core/drawing/elevation.h"
#include "tests/core/drawing/drawn_jobs.h"
#include "tests/core/drawing/page_faults.h"
#include "tests/core/drawing/surveyed_job.h"

using namespace ribwright;

namespace {

// The lowest edge stands 1/2 in high at the left corner and 1/4 in low at the right one.
Job sagging() {
  const Job job = withMember(screwedFront());
  const std::size_t lowest = job.walls[0].girts.size();  // after the eave
  const Length width = *job.walls[0].width;
  return surveyed(job, [=](std::size_t line, Length u) {
    if (line != lowest) return Length();
    return u == Length() ? Length::inches(0, 32) : u == width ? -Length::inches(0, 16) : Length();
  });
}

}  // namespace

// At 1:48, ten times: 1/2 in is 12.7 x 10 / 48 mm.
TEST_CASE("a measured girt is drawn about its row, ten times as far off as it is") {
  const Job job = sagging();
  const Plan made = plan(job);
  WallView view = wholeWall(job, made, 0, Words::of("en"));
  view.scale = {48};
  Length row = Length::feet(100);
  for (const SupportRow& one : made.walls[0]->holes.supports.rows) {
    if (one.kind == SupportKind::Girt) row = std::min(row, one.stretches.front().row);
  }
  const double high = view.y(row) - 12.7 * 10 / 48, low = view.y(row) + 6.35 * 10 / 48;
  const auto lines = measuredLines(view);
  const auto stands = [&](double x, double y) {
    return std::any_of(lines.begin(), lines.end(), [&](const std::vector<PaperPoint>& line) {
      return std::any_of(line.begin(), line.end(), [&](const PaperPoint& point) {
        return std::abs(point.x - x) < 1e-9 && std::abs(point.y - y) < 1e-9;
      });
    });
  };
  CHECK(stands(0, high));
  CHECK(stands(view.x(view.to), low));
  CHECK_FALSE(stands(0, view.y(row)));
}

TEST_CASE("what of a measured girt lies beyond a match line is not on the drawing") {
  const Job job = sagging();
  const Plan made = plan(job);
  WallView view = wholeWall(job, made, 0, Words::of("en"));
  view.scale = {48};
  const Length width = view.to;
  view.from = scaled(width, 1, 3);
  view.to = scaled(width, 2, 3);
  for (const auto& line : measuredLines(view)) {
    for (const PaperPoint& point : line) {
      CHECK(point.x >= -1e-9);
      CHECK(point.x <= view.x(view.to) + 1e-9);
    }
  }
}

TEST_CASE("measured girts run through no text of an elevation, whose legend says what they are") {
  const Job job = sagging();
  const Plan made = plan(job);
  for (const PaperSize paper : {PaperSize::Letter, PaperSize::A3}) {
    bool said = false;
    for (const Page& page : elevationPages(job, made, paper)) {
      CHECK(pageFaults(page) == std::vector<std::string>{});
      said = said || timesSaid(page, "as measured, off the plans 10 times enlarged") == 1;
    }
    CHECK(said);
  }
}
