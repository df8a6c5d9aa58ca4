// What holds for every page of every elevation, whatever the building.
#include <algorithm>
#include <catch2/catch.hpp>

#include "core/drawing/elevation.h"
#include "tests/core/drawing/drawn_jobs.h"
#include "tests/core/drawing/page_reading.h"

using namespace ribwright;

namespace {

constexpr PaperSize papers[] = {PaperSize::Letter, PaperSize::Tabloid, PaperSize::A4, PaperSize::A3};

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

std::string where(const Text& text) {
  return text.words + " at " + std::to_string(text.at.x) + ", " + std::to_string(text.at.y);
}

}  // namespace

TEST_CASE("no two texts of a page come nearer than 0.3 mm") {
  onEveryPage([](const Page& page) {
    const std::vector<Text> texts = textsOf(page);
    for (std::size_t i = 0; i < texts.size(); ++i) {
      for (std::size_t j = 0; j < i; ++j) {
        const bool apart = !overlap(boxOf(texts[i]).grown(0.299), boxOf(texts[j]));
        if (!apart) FAIL_CHECK(where(texts[i]) << " against " << where(texts[j]));
      }
    }
    CHECK(texts.size() > 5);
  });
}

TEST_CASE("no line runs through a text") {
  onEveryPage([](const Page& page) {
    for (const Text& text : textsOf(page)) {
      const Box box = boxOf(text);
      for (const Stroke& stroke : strokesOf(page)) {
        const std::size_t count = stroke.points.size();
        for (std::size_t i = 1; i < count + (stroke.closed ? 1 : 0); ++i) {
          const PaperPoint &a = stroke.points[i - 1], &b = stroke.points[i % count];
          if (crosses(box.grown(stroke.width.size / 2), a, b)) FAIL_CHECK(where(text));
        }
      }
    }
  });
}

TEST_CASE("no black area lies under a text") {
  onEveryPage([](const Page& page) {
    for (const Fill& fill : fillsOf(page)) {
      if (fill.ink != Ink::Black) continue;
      Box area{1e9, 1e9, -1e9, -1e9};
      for (const PaperPoint& point : fill.rings.front()) area = united(area, {point.x, point.y, point.x, point.y});
      for (const Text& text : textsOf(page)) {
        if (overlap(area, boxOf(text))) FAIL_CHECK(where(text));
      }
    }
  });
}

TEST_CASE("nothing lies beyond the frame, which keeps 10 mm from the paper's edge") {
  onEveryPage([](const Page& page) {
    const PaperExtent extent = extentOf(page.paper);
    const Box frame = Box{0, 0, extent.width, extent.height}.grown(-10);
    for (const Text& text : textsOf(page)) CHECK(inside(boxOf(text), frame));
    for (const Stroke& stroke : strokesOf(page)) {
      for (const PaperPoint& point : stroke.points) CHECK(inside({point.x, point.y, point.x, point.y}, frame));
    }
    for (const Fill& fill : fillsOf(page)) {
      for (const auto& ring : fill.rings) {
        for (const PaperPoint& point : ring) CHECK(inside({point.x, point.y, point.x, point.y}, frame));
      }
    }
  });
}

// screens.md: nothing under 2.5 mm, strokes at least 0.35 mm.
TEST_CASE("no text is smaller than 2.5 mm and no line thinner than 0.35 mm") {
  onEveryPage([](const Page& page) {
    for (const Text& text : textsOf(page)) CHECK(text.height >= 2.5);
    for (const Stroke& stroke : strokesOf(page)) {
      CHECK(stroke.width.in == StrokeWidth::In::MillimetresOnPaper);
      CHECK(stroke.width.size >= 0.35);
    }
  });
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
