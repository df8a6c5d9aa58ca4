// The number of a page is never cut short, however many there are: a page that is missing must be missed.
#include <algorithm>
#include <catch2/catch.hpp>

#include "core/drawing/page_frame.h"
#include "tests/core/drawing/page_faults.h"

using namespace ribwright;

TEST_CASE("page numbers stand whole in the title block in every language, beyond 99 pages too") {
  Job job;
  job.name = "Long hall";
  for (const char* language : {"en", "es"}) {
    for (const PaperSize paper : {PaperSize::Letter, PaperSize::Tabloid, PaperSize::A4, PaperSize::A3}) {
      for (const int pages : {9, 21, 120, 1000}) {
        PageFrame frame;
        frame.paper = paper;
        frame.job = &job;
        frame.words = &Words::of(language);
        PageTitle title;
        title.page = title.pages = pages;
        title.scale = DrawingScale{96};
        Page page;
        page.paper = paper;
        Sketch sketch;
        drawFrame(sketch, frame, title);
        page.drawing = std::move(sketch.drawing);
        const std::string wanted =
            frame.words->say("paper.page", {{"page", pages}, {"pages", pages}}, {UnitSystem::FeetInches, '.'});
        const std::vector<Text> texts = textsOf(page);
        CHECK(std::count_if(texts.begin(), texts.end(), [&](const Text& text) { return text.words == wanted; }) == 1);
        CHECK(pageFaults(page) == std::vector<std::string>{});
      }
    }
  }
}
