// The page that goes with the survey, read back.
#include <catch2/catch.hpp>
#include <cmath>

#include "core/drawing/drill_pages.h"
#include "tests/core/drawing/drawn_jobs.h"
#include "tests/core/drawing/page_faults.h"
#include "tests/core/drawing/surveyed_job.h"

using namespace ribwright;

namespace {

std::string wordsOf(const Job& job) {
  std::string all;
  for (const Page& page : drillPages(job, plan(job), PaperSize::Letter)) {
    if (page.title.find("props, chalk line") == std::string::npos) continue;
    CHECK(pageFaults(page) == std::vector<std::string>{});
    for (const Text& text : textsOf(page)) all += text.words + " ";
  }
  return all;
}

bool has(const std::string& words, const std::string& part) { return words.find(part) != std::string::npos; }

Job front() {
  Job job = withMember(screwedFront());
  Wall& wall = job.walls[0];
  wall.columns.bays = {Length::feet(20), Length::feet(20), Length::feet(20)};
  return job;
}

}  // namespace

TEST_CASE("sags stand with formula and source, and props are asked for until they are in place") {
  Job job = front();
  const std::string words = wordsOf(job);
  CHECK(has(words, "Props: set them at midspan"));
  CHECK(has(words, "Z8x2.5x0.068"));
  CHECK(has(words, ".0069wL^4/EI"));
  CHECK(has(words, "AISI S100"));
  job.walls[0].survey.propsInPlace = true;
  CHECK_FALSE(has(wordsOf(job), "Props: set them at midspan"));
  CHECK(has(wordsOf(job), "Props are in place"));
}

// The edge falls 3/8 in to the right; sheets hang 1-3/4 in below it everywhere at 2-1/8 in below the plans' concrete.
TEST_CASE("the chalk line stands with how far below the edge it lies at each column") {
  Job job = front();
  const Length width = *job.walls[0].width;
  job.walls[0].survey.slab = {{Length(), Length()}, {width, -Length::inches(0, 24)}};
  const std::string words = wordsOf(job);
  CHECK(has(words, "snap it 2-1/8\" below the top of concrete"));
  CHECK(has(words, "column 1: 2-1/8\""));
  CHECK(has(words, "column 4: 1-3/4\""));
  CHECK_FALSE(has(words, "Left open"));
  job.walls[0].survey.slab.back().z = -Length::inches(2);
  CHECK(has(wordsOf(job), "Left open as the sheets end now"));
}

// 60 ft wide and 12 ft high; the top 1 in to the right: 60' 1" and 59' 11" over 12 ft.
TEST_CASE("width and lean stand with what they were worked out over") {
  Job job = front();
  const auto diagonal = [](Length across) {
    const double a = across.inMillimetres(), b = Length::feet(12).inMillimetres();
    return Length::nanometres(std::llround(std::sqrt(a * a + b * b) * 1e6));
  };
  job.walls[0].survey.diagonalRising = diagonal(Length::feet(60, 1));
  CHECK_FALSE(has(wordsOf(job), "leans"));
  job.walls[0].survey.diagonalFalling = diagonal(Length::feet(59, 11));
  const std::string words = wordsOf(job);
  CHECK(has(words, "Width 60' 0\"; the plans have 60' 0\"."));
  CHECK(has(words, "leans 1\" to the right over 12' 0\""));
}
