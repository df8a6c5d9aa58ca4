// Pages of trim: every piece stands on them, in the order in which it is set, and in a stick.
#include <catch2/catch.hpp>

#include "core/drawing/trim_flat.h"
#include "core/drawing/trim_pages.h"
#include "core/drawing/trim_sticks.h"
#include "core/job/job_file.h"
#include "core/job/trim_file.h"

namespace ribwright {
namespace {

Job loadedSample(const std::string& name) { return loadJob(RIBWRIGHT_ROOT "/sample-jobs/" + name + ".json").value(); }

std::vector<BarePage> pagesOf(const Job& job, const Plan& made, const Words& words, PaperSize paper) {
  return trimPages(job, made, {paper, &job, &words, ""});
}

std::string textOf(const std::vector<BarePage>& pages) {
  std::string all;
  for (const BarePage& page : pages) {
    for (const Item& item : page.sketch.drawing.items) {
      if (const Text* text = std::get_if<Text>(&item)) all += text->words + "\n";
    }
  }
  return all;
}

TEST_CASE("every piece of trim is listed, set in order and cut, in both languages") {
  for (const char* name : {"gable-workshop", "metric-hall"}) {
    const Job job = loadedSample(name);
    const Plan made = plan(job);
    const TrimTakeoff takeoff = trimTakeoff(job, made.layouts());
    REQUIRE(takeoff.pieces.size() > 20);
    for (const char* language : {"en", "es"}) {
      const Words& words = Words::of(language);
      const std::string text = textOf(pagesOf(job, made, words, PaperSize::A4));
      for (const TrimPiece& piece : takeoff.pieces) {
        const std::string said = words.say(trimPieceName(piece), {job.units, job.decimalSign});
        INFO(said);
        std::size_t times = 0;
        for (std::size_t at = text.find(said); at != std::string::npos; at = text.find(said, at + 1)) ++times;
        CHECK(times >= 3);  // its list, the setting order, a stick
      }
    }
  }
}

TEST_CASE("nothing of the trim pages lies outside their frame") {
  for (const char* name : {"gable-workshop", "metric-hall"}) {
    for (const PaperSize paper : {PaperSize::Letter, PaperSize::A4, PaperSize::A3}) {
      const Job job = loadedSample(name);
      const Plan made = plan(job);
      const Box frame = frameBox(paper);
      for (const BarePage& page : pagesOf(job, made, Words::of("en"), paper))
        CHECK(inside(page.sketch.bounds(), frame));
    }
  }
}

TEST_CASE("a job without trim has no such page") {
  const Job job = loadedSample("l-shape");
  CHECK(pagesOf(job, plan(job), Words::of("en"), PaperSize::A4).empty());
}

TEST_CASE("a flat head of 5-1/2 in is bent at 3 in and at 4-1/2") {
  const std::vector<double> bends = bendsOf(shippedTrim(UnitSystem::FeetInches).trims[2]);
  REQUIRE(bends.size() == 2);
  CHECK(bends[0] == Approx(3 / 5.5));
  CHECK(bends[1] == Approx(4.5 / 5.5));
}

TEST_CASE("cuts are lettered a to z, then aa") {
  CHECK(cutLetter(0) == "a");
  CHECK(cutLetter(25) == "z");
  CHECK(cutLetter(26) == "aa");
  CHECK(cutLetter(27) == "ab");
}

}  // namespace
}  // namespace ribwright
