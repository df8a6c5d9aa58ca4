// Marks of screws on the pages of an elevation, read back from the items alone.
#include "core/drawing/screw_marks.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <map>

#include "core/drawing/elevation.h"
#include "tests/core/drawing/all_papers.h"
#include "tests/core/drawing/drawn_jobs.h"
#include "tests/core/drawing/page_faults.h"

using namespace ribwright;

namespace {

struct SeenMark {
  ScrewMark mark;
  Box box;
};

// A mark by its corners: 8 of a dot, 16 of a cross, and a dash by its 1.8 mm by 0.5 mm.
std::optional<ScrewMark> markOf(const std::vector<PaperPoint>& ring) {
  if (ring.size() == 8) return ScrewMark::Structural;
  if (ring.size() == 16) return ScrewMark::Jamb;
  const Box box = boxAround(ring);
  const bool isDash = ring.size() == 4 && box.width() == Approx(1.8) && box.height() == Approx(0.5);
  return isDash ? std::optional(ScrewMark::Stitch) : std::nullopt;
}

std::vector<SeenMark> marksOn(const Page& page) {
  std::vector<SeenMark> marks;
  for (const Fill& fill : fillsOf(page)) {
    for (const auto& ring : fill.rings) {
      const auto mark = fill.ink == Ink::Black ? markOf(ring) : std::nullopt;
      if (mark) marks.push_back({*mark, boxAround(ring)});
    }
  }
  return marks;
}

bool saysNotForDrilling(const Page& page) { return timesSaid(page, "screw heights from plan: not for drilling") == 1; }

// The count behind a word of the legend: "stitch 96", "structural 412: base 40, eave 40".
int countSaid(const Page& page, const std::string& word) {
  for (const Text& text : textsOf(page)) {
    const auto at = text.words.find(word + " ");
    if (at == std::string::npos || (at > 0 && text.words[at - 1] != ' ')) continue;
    return std::stoi(text.words.substr(at + word.size() + 1));
  }
  return 0;
}

int saidWithoutMark(const Page& page) {
  for (const Text& text : textsOf(page)) {
    if (text.words.ends_with(" have no room for a mark")) return std::stoi(text.words);
  }
  return 0;
}

// The marks of the wall, without those of the legend: one of each kind that is shown.
std::vector<SeenMark> marksOnWall(const Page& page) {
  std::vector<SeenMark> marks = marksOn(page);
  for (const ScrewMark mark : {ScrewMark::Structural, ScrewMark::Stitch, ScrewMark::Jamb}) {
    const auto legend =
        std::find_if(marks.rbegin(), marks.rend(), [&](const SeenMark& seen) { return seen.mark == mark; });
    if (legend != marks.rend()) marks.erase(std::next(legend).base());
  }
  return marks;
}

std::vector<DrawnJob> screwedJobs() {
  std::vector<DrawnJob> all = drawnJobs();
  std::erase_if(all, [](const DrawnJob& drawn) { return drawn.job.patterns.empty(); });
  return all;
}

std::map<ScrewMark, int> screwsByMark(const DrawnJob& drawn) {
  std::map<ScrewMark, int> count;
  for (const auto& wall : drawn.plan.walls) {
    for (const Hole& hole : wall->holes.holes) ++count[ribwright::markOf(hole.kind)];
  }
  return count;
}

}  // namespace

TEST_CASE("the three marks differ in shape, and each is large enough to be seen") {
  const auto boxOf = [](ScrewMark mark) { return boxAround(markRing(mark, {10, 20})); };
  for (const ScrewMark mark : {ScrewMark::Structural, ScrewMark::Stitch, ScrewMark::Jamb}) {
    CHECK(markOf(markRing(mark, {10, 20})) == mark);
    CHECK(boxOf(mark).middle().x == Approx(10));
    CHECK(boxOf(mark).middle().y == Approx(20));
    CHECK(boxOf(mark).width() == Approx(2 * reachOf(mark)));
    CHECK(std::min(boxOf(mark).width(), boxOf(mark).height()) >= 0.35);
  }
}

TEST_CASE("structural screws have dots, stitch screws dashes, jamb screws crosses") {
  for (const HoleKind kind : {HoleKind::Base, HoleKind::Eave, HoleKind::Rake, HoleKind::Girt, HoleKind::EndLap,
                              HoleKind::Head, HoleKind::Sill}) {
    CHECK(ribwright::markOf(kind) == ScrewMark::Structural);
  }
  CHECK(ribwright::markOf(HoleKind::Stitch) == ScrewMark::Stitch);
  CHECK(ribwright::markOf(HoleKind::Jamb) == ScrewMark::Jamb);
}

TEST_CASE("every screw is counted on one page, and has its mark there or is said to have none") {
  for (const DrawnJob& drawn : screwedJobs()) {
    for (const PaperSize paper : papers) {
      INFO(drawn.name << " on " << nameOf(paper));
      std::map<ScrewMark, int> said;
      std::size_t marks = 0;
      int without = 0;
      for (const Page& page : elevationPages(drawn.job, drawn.plan, paper)) {
        const int structural = countSaid(page, "structural");
        int kinds = 0;
        for (const char* kind : {"base", "eave", "rake", "girts", "end laps", "heads", "sills"})
          kinds += countSaid(page, kind);
        CHECK(structural == kinds);
        said[ScrewMark::Structural] += structural;
        said[ScrewMark::Stitch] += countSaid(page, "stitch");
        said[ScrewMark::Jamb] += countSaid(page, "jambs");
        marks += marksOnWall(page).size();
        without += saidWithoutMark(page);
      }
      auto wanted = screwsByMark(drawn);
      const int all = wanted[ScrewMark::Structural] + wanted[ScrewMark::Stitch] + wanted[ScrewMark::Jamb];
      CHECK(all > 30);
      CHECK(said == wanted);
      CHECK(static_cast<int>(marks) + without == all);
    }
  }
}

// Measured from the upper left corner of the wall's outline, at the scale that the page says.
TEST_CASE("a mark stands where its screw is") {
  for (const Job& job : {screwedFront(), withScrews(metricGable(), "trapezoid-1035-35-at-207", Length::feet(4))}) {
    const DrawnJob drawn = planned("screwed", job);
    const WallPlan& wall = *drawn.plan.walls.front();
    const auto pages = elevationPages(drawn.job, drawn.plan, PaperSize::A3);
    const Page& page = pages.front();
    const Box face = faceOf(page);
    REQUIRE(face.width() * saidScale(page) == Approx(wall.layout.face.width.inMillimetres()));
    const double top = wall.layout.face.top.highest(Length(), wall.layout.face.width).inMillimetres();
    int found = 0;
    for (const SeenMark& seen : marksOnWall(page)) {
      const bool isThere = std::any_of(wall.holes.holes.begin(), wall.holes.holes.end(), [&](const Hole& hole) {
        const double x = face.left + hole.u.inMillimetres() / saidScale(page);
        const double y = face.top + (top - hole.z.inMillimetres()) / saidScale(page);
        return ribwright::markOf(hole.kind) == seen.mark && std::abs(seen.box.middle().x - x) < 1e-6 &&
               std::abs(seen.box.middle().y - y) < 1e-6;
      });
      CHECK(isThere);
      found += isThere ? 1 : 0;
    }
    CHECK(found > 200);
    CHECK(screwsByMark(drawn)[ScrewMark::Jamb] > 0);
  }
}

TEST_CASE("no mark touches another") {
  for (const DrawnJob& drawn : screwedJobs()) {
    INFO(drawn.name);
    for (const Page& page : elevationPages(drawn.job, drawn.plan, PaperSize::Letter)) {
      std::vector<SeenMark> marks = marksOn(page);
      std::sort(marks.begin(), marks.end(),
                [](const SeenMark& a, const SeenMark& b) { return a.box.left < b.box.left; });
      int touching = 0;
      for (std::size_t i = 0; i < marks.size(); ++i) {
        for (std::size_t j = i + 1; j < marks.size() && marks[j].box.left < marks[i].box.right; ++j)
          touching += overlap(marks[i].box, marks[j].box) ? 1 : 0;
      }
      CHECK(touching == 0);
    }
  }
}

TEST_CASE("a page that shows screws says that nothing is drilled by it, and no other page does") {
  for (const DrawnJob& drawn : drawnJobs()) {
    for (const Page& page : elevationPages(drawn.job, drawn.plan, PaperSize::A4)) {
      INFO(drawn.name << ": " << page.title);
      const bool shows = !marksOn(page).empty();
      CHECK(saysNotForDrilling(page) == shows);
      if (drawn.job.patterns.empty()) CHECK_FALSE(shows);
    }
  }
}

TEST_CASE("a wall broken over pages says on each how many screws the whole wall has") {
  const DrawnJob drawn = planned("long", withScrews(longWall(), "rib-36-1.25-at-12", Length::feet(6)));
  const std::size_t all = drawn.plan.walls.front()->holes.holes.size();
  const std::string words = "on this page, of " + std::to_string(all) + " screws in the wall:";
  int pages = 0;
  for (const Page& page : elevationPages(drawn.job, drawn.plan, PaperSize::A3)) {
    CHECK(timesSaid(page, words) == (saysNotForDrilling(page) ? 1 : 0));
    pages += saysNotForDrilling(page) ? 1 : 0;
  }
  CHECK(pages > 2);
  const DrawnJob front = planned("front", screwedFront());
  for (const Page& page : elevationPages(front.job, front.plan, PaperSize::A3))
    CHECK(countSaid(page, "on this page, of") == 0);
}

// 12 ft less some inches of wall, girts every 3 in, on 3 ft of wall: more than 30 heights of 3.4 mm on paper.
TEST_CASE("a page without room for every girt's height says how many are left out") {
  const DrawnJob drawn = planned("crowded", crowdedGirts());
  const auto pages = elevationPages(drawn.job, drawn.plan, PaperSize::Letter);
  int said = 0;
  for (const Text& text : textsOf(pages.front())) {
    const auto at = text.words.find("The heights of ");
    if (at != std::string::npos) said = std::stoi(text.words.substr(at + 15));
  }
  int named = 0;
  for (const Text& text : textsOf(pages.front()))
    named += text.words.starts_with("g") && text.words.size() < 14 ? 1 : 0;
  CHECK(said > 0);
  CHECK(said + named == 37);  // 3 in to 9 ft 3 in, all under the top at 9 ft 5-1/2 in
}

// A wall of 334 sheets has its marks in few items, so that screen and paper stay quick and small.
TEST_CASE("marks of one kind are drawn by the hundred") {
  const DrawnJob drawn = planned("long", withScrews(longWall(), "rib-36-1.25-at-12", Length::feet(6)));
  for (const Page& page : elevationPages(drawn.job, drawn.plan, PaperSize::A3)) {
    std::size_t fills = 0;
    for (const Fill& fill : fillsOf(page)) fills += fill.ink == Ink::Black && markOf(fill.rings.front()) ? 1 : 0;
    CHECK(fills <= 6 + marksOn(page).size() / 500);
  }
}
