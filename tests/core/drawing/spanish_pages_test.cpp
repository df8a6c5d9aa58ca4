// Pages in Spanish: longer words find their room too.
#include <algorithm>
#include <catch2/catch.hpp>

#include "core/drawing/elevation.h"
#include "tests/core/drawing/drawn_jobs.h"
#include "tests/core/drawing/page_faults.h"

using namespace ribwright;

namespace {

const Words& spanish() { return Words::of("es"); }

// In any text but the job's own name.
std::string saying(const Page& page, const Job& job, const std::string& words) {
  for (const Text& text : textsOf(page)) {
    if (text.words.find(words) != std::string::npos && job.name.find(text.words) == std::string::npos)
      return text.words;
  }
  return "";
}

}  // namespace

TEST_CASE("the paper's font has every letter of every language") {
  for (const char* language : {"en", "es"}) {
    for (const std::string& id : Words::of(language).ids()) {
      const std::string text = Words::of(language).say(id, {}, {});
      INFO(id << ": " << text);
      CHECK(drawnWords(text) == text);  // what the font has not is drawn as an open square
    }
  }
  CHECK(drawnWords("áéíóúüñ ÁÉÍÓÚÜÑ ¿¡«»—") == "áéíóúüñ ÁÉÍÓÚÜÑ ¿¡«»—");
  CHECK(drawnWords("尺") != "尺");
}

TEST_CASE("pages in Spanish have no fault on any paper") {
  for (const DrawnJob& drawn : drawnJobs()) {
    for (const PaperSize paper : {PaperSize::Letter, PaperSize::Tabloid, PaperSize::A4, PaperSize::A3}) {
      for (const Page& page : elevationPages(drawn.job, drawn.plan, paper, spanish())) {
        INFO(drawn.name << ", " << nameOf(paper));
        CHECK(pageFaults(page) == std::vector<std::string>());
      }
    }
  }
}

TEST_CASE("a page in Spanish has no English words, and the figures of the English page") {
  for (const DrawnJob& drawn : drawnJobs()) {
    for (const Page& page : elevationPages(drawn.job, drawn.plan, PaperSize::A3, spanish())) {
      INFO(drawn.name << ": " << page.title);
      CHECK(saying(page, drawn.job, "Pared " + page.wall) != "");
      CHECK(page.title.find("página ") != std::string::npos);
      for (const char* english : {"scale", "wall", "sheets", "the ", "column", "screws", "start", "ridge"})
        CHECK(saying(page, drawn.job, english) == "");
    }
  }
  const DrawnJob gable = planned("gable", frozenGable());
  const auto english = elevationPages(gable.job, gable.plan, PaperSize::A3);
  const auto pages = elevationPages(gable.job, gable.plan, PaperSize::A3, spanish());
  REQUIRE(pages.size() == english.size());
  for (const Text& text : textsOf(english.front())) {
    const bool figures = std::all_of(text.words.begin(), text.words.end(), [](char letter) {
      return std::string_view("0123456789'\"/- ").find(letter) != std::string_view::npos;
    });
    if (figures) CHECK(timesSaid(pages.front(), text.words) == timesSaid(english.front(), text.words));
  }
}
