// One wall by pencil, three girts and four sheets, read from its template: a level wall 12 ft wide and 12 ft high, drop
// 1-3/4 in, hung left to right. Girts typed by web line at 3 ft 8, 7 ft 4 and 11 ft, flanges down, rows 1-1/4 in below
// their web lines. Measured: g1 as planned; g2 falls 3/4 in from corner to corner; g3 stands 1/4 in high all along.
//
//   g1  44 + 1-3/4 - 1-1/4                                   44-1/2
//   g2  88 + 1/2, less the middle of 0.0182 and 0.7057       88.138, at the mark 88-1/8
//   g3  132 + 1/2 + 1/4                                      132-3/4
//   base: 1 in above the concrete                             2-3/4
// Blanks: 12 ft + 1-3/4 in, up to the next 1/2 in: 12 ft 2 in.
#include <catch2/catch.hpp>

#include "core/drawing/drill_pages.h"
#include "tests/core/drawing/page_reading.h"
#include "tests/core/fastening/measured_walls.h"

using namespace ribwright;
using namespace ribwright::examples;

namespace {

Job threeGirts() {
  const auto byWeb = [](const char* id, Length height) { return girt(id, height, Girt::TypedBy::WebLine); };
  Job job =
      levelWall({byWeb("g1", Length::feet(3, 8)), byWeb("g2", Length::feet(7, 4)), byWeb("g3", Length::feet(11))});
  const auto fromTo = [](const char* id, Length left, Length right) {
    return GirtSurvey{id, {at(Length(), left), at(Length::feet(12), right)}};
  };
  job.walls[0].survey.girts = {fromTo("g1", in(45, 12), in(45, 12)), fromTo("g2", in(89, 12), in(89)),
                               fromTo("g3", in(134), in(134))};
  return job;
}

Page firstTemplate(const std::vector<Page>& pages) {
  for (const Page& page : pages) {
    if (page.title.find("drill template A/1,") != std::string::npos) return page;
  }
  FAIL("no template");
  return {};
}

}  // namespace

TEST_CASE("by hand: the template of four sheets on three girts says what the tape must read") {
  const Job job = threeGirts();
  const Plan made = plan(job);
  REQUIRE(made.walls[0]->batches.size() == 1);
  const Page page = firstTemplate(drillPages(job, made, PaperSize::Letter));
  for (const char* words :
       {"FACE UP", "Batch A/1: sheets A1 to A4", "Sheets in the stack: 4. Holes through a full sheet: 12.",
        // Running from the bottom end.
        "2-3/4\"", "3' 8-1/2\"", "7' 4-1/8\"", "11' 0-3/4\"",
        // Between them: differences of what is printed.
        "3' 5-3/4\"", "3' 7-5/8\"", "3' 8-5/8\"",
        // From the starting edge: 2, 14 and 26 in from the module line, which lies 1-1/2 in from it.
        "3-1/2\"", "1' 3-1/2\"", "2' 3-1/2\"", "a: base, g1, g2, g3: 3 × through the sheet; starting edge at your left",
        "1. A1, 12' 2\"", "4. A4, 12' 2\""}) {
    INFO(words);
    const bool twice = std::string(words) == "2-3/4\"";  // also the space from the bottom end
    CHECK(timesSaid(page, words) == (twice ? 2 : 1));
  }
}
