// What holds for every page of every elevation, whatever the building.
#include <algorithm>
#include <catch2/catch.hpp>

#include "core/drawing/elevation.h"
#include "tests/core/drawing/all_papers.h"
#include "tests/core/drawing/drawn_jobs.h"
#include "tests/core/drawing/page_faults.h"

using namespace ribwright;

namespace {

// Calls with every page of every invented building on every paper.
template <class Check>
void onEveryPage(const Check& check) {
  for (const DrawnJob& drawn : drawnJobs()) {
    for (const PaperSize paper : papers) {
      for (const Page& page : elevationPages(drawn.job, drawn.plan, paper)) {
        INFO(drawn.name << ", " << nameOf(paper) << ": " << page.title);
        check(page);
      }
    }
  }
}

}  // namespace

const std::vector<std::string> none;

TEST_CASE("no two texts of a page come nearer than 0.3 mm") {
  onEveryPage([](const Page& page) {
    CHECK(textsTooNear(page) == none);
    CHECK(textsOf(page).size() > 5);
  });
}

TEST_CASE("no line runs through a text") {
  onEveryPage([](const Page& page) { CHECK(textsStruckThrough(page) == none); });
}

TEST_CASE("no black area lies under a text") {
  onEveryPage([](const Page& page) { CHECK(textsOnBlack(page) == none); });
}

TEST_CASE("nothing lies beyond the frame, which keeps 10 mm from the paper's edge") {
  onEveryPage([](const Page& page) { CHECK(beyondFrame(page) == none); });
}

// The rules of paper and screen: nothing under 2.5 mm, strokes at least 0.35 mm.
TEST_CASE("no text is smaller than 2.5 mm and no line thinner than 0.35 mm") {
  onEveryPage([](const Page& page) { CHECK(tooSmall(page) == none); });
}

// The checks above are themselves checked: a page with each fault is found at fault.
TEST_CASE("a page with a fault of each kind is found") {
  Page page;
  page.paper = PaperSize::A4;
  const auto add = [&](Item item) { page.drawing.items.push_back(std::move(item)); };
  add(Text{{50, 50}, 2.5, TextAnchor::Start, 0, false, "first", -1});
  CHECK(pageFaults(page) == none);
  SECTION("two texts at one place") {
    add(Text{{52, 51}, 2.5, TextAnchor::Start, 0, false, "second", -1});
    CHECK(textsTooNear(page).size() == 1);
  }
  SECTION("a line through a text") {
    add(Stroke{{{40, 49}, {70, 49}}, false, {0.35}, Dash::Solid, -1});
    CHECK(textsStruckThrough(page).size() == 1);
  }
  SECTION("the closing side of a rectangle through a text") {
    add(Stroke{{{52, 20}, {80, 20}, {80, 80}, {52, 80}}, true, {0.35}, Dash::Solid, -1});
    CHECK(textsStruckThrough(page).size() == 1);
  }
  SECTION("black under a text") {
    add(Fill{{{{40, 40}, {60, 40}, {60, 60}}}, Ink::Black, -1});
    CHECK(textsOnBlack(page).size() == 1);
    add(Fill{{{{0, 0}, {200, 0}, {200, 200}, {0, 200}}}, Ink::Black, -1});
    CHECK(textsOnBlack(page).size() == 2);
  }
  SECTION("a text over the edge, a line over the edge") {
    add(Text{{284, 50}, 2.5, TextAnchor::Start, 0, false, "over the edge", -1});
    add(Stroke{{{20, 20}, {20, 205}}, false, {0.35}, Dash::Solid, -1});
    CHECK(beyondFrame(page).size() == 2);
  }
  SECTION("small text, thin line") {
    add(Text{{100, 100}, 2.4, TextAnchor::Start, 0, false, "small", -1});
    add(Stroke{{{20, 20}, {30, 20}}, false, {0.3}, Dash::Solid, -1});
    CHECK(tooSmall(page).size() == 2);
  }
}

TEST_CASE("every page names job and wall, counts itself and carries the cautions") {
  for (const DrawnJob& drawn : drawnJobs()) {
    const auto pages = elevationPages(drawn.job, drawn.plan, PaperSize::A4);
    for (std::size_t i = 0; i < pages.size(); ++i) {
      std::string all;
      for (const Text& text : textsOf(pages[i])) all += text.words + " ";
      INFO(drawn.name << ": " << all);
      CHECK(all.find(drawn.job.name) != std::string::npos);
      CHECK(all.find("Wall " + pages[i].wall) != std::string::npos);
      CHECK(all.find("page " + std::to_string(i + 1) + " of " + std::to_string(pages.size())) != std::string::npos);
      for (const char* caution : {"engineering plans", "sharp", "sails", "1926.758(g)", "swarf", "Drill nothing"}) {
        CHECK(all.find(caution) != std::string::npos);
      }
    }
  }
}

TEST_CASE("every item that belongs to a part names one that the page has") {
  onEveryPage([](const Page& page) {
    for (const Item& item : page.drawing.items) {
      const int part = std::visit([](const auto& it) { return it.part; }, item);
      CHECK(part < static_cast<int>(page.drawing.parts.size()));
      CHECK(part >= -1);
    }
  });
}

TEST_CASE("the same job gives the same pages") {
  for (const DrawnJob& drawn : drawnJobs()) {
    CHECK(elevationPages(drawn.job, drawn.plan, PaperSize::Letter) ==
          elevationPages(drawn.job, plan(drawn.job), PaperSize::Letter));
  }
}

// Column 3 stands at 20 ft, where the joint is.
TEST_CASE("a column's number stands beside an expansion joint's line") {
  Job job = frozenGable();
  Wall& wall = job.walls.front();
  wall.columns.bays = {Length::feet(10), Length::feet(10), Length::feet(20)};
  wall.expansionJoints = {Length::feet(20)};
  const Page page = elevationPages(job, plan(job), PaperSize::Letter).front();
  CHECK(timesSaid(page, "3") == 1);
  CHECK(pageFaults(page) == std::vector<std::string>{});
}
