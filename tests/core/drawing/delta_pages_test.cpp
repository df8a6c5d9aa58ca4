// What is still to be ordered, on paper.
#include "core/drawing/delta_pages.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "core/drawing/schedule_pages.h"
#include "core/job/job_file.h"
#include "tests/core/drawing/page_faults.h"

using namespace ribwright;

namespace {

Job leanTo() { return loadJob(RIBWRIGHT_ROOT "/sample-jobs/lean-to.json").value(); }

Job lower() {
  Job job = leanTo();
  job.walls[0].base.drop += Length::inches(6);
  return job;
}

std::vector<Page> deltaOf(const Job& job, PaperSize paper, const char* language = "en") {
  const Plan made = plan(job);
  const PageFrame frame{paper, &job, &Words::of(language), "job"};
  return framed(frame, deltaPages(job, made, frame));
}

std::string all(const std::vector<Page>& pages) {
  std::string words;
  for (const Page& page : pages) {
    for (const Text& text : textsOf(page)) words += text.words + "\n";
  }
  return words;
}

bool says(const std::vector<Page>& pages, const std::string& words) {
  return all(pages).find(words) != std::string::npos;
}

}  // namespace

TEST_CASE("while no order was placed nothing is said of what is still to be ordered") {
  Job job = leanTo();
  job.facts.orders.clear();
  CHECK(deltaOf(job, PaperSize::Letter).empty());
}

TEST_CASE("a job whose orders are enough says so, and what is used from site") {
  const auto pages = deltaOf(leanTo(), PaperSize::Letter);
  REQUIRE(!pages.empty());
  CHECK(says(pages, "Nothing: what was ordered is enough."));
  CHECK(says(pages, "Use from site as they are"));
  CHECK(says(pages, "Still to come, used as they are"));
  CHECK(!says(pages, "Left over"));
  const Job job = leanTo();
  const auto schedules = schedulePages(job, plan(job), PaperSize::Letter);
  CHECK(std::count_if(schedules.begin(), schedules.end(), [](const Page& page) {
          return page.title.find("what is still to be ordered") != std::string::npos;
        }) == std::ptrdiff_t(pages.size()));
}

TEST_CASE("after a change longer sheets are ordered, and shorter ones are left over; no money is on paper") {
  const auto pages = deltaOf(lower(), PaperSize::A4);
  CHECK(says(pages, "Order now"));
  CHECK(!says(pages, "Nothing: what was ordered is enough."));
  CHECK(says(pages, "Left over"));
  CHECK(!says(pages, "USD"));
}

TEST_CASE("a sheet that hangs is not listed") {
  Job job = leanTo();
  const Plan made = plan(job);
  const WallLayout& wall = made.walls[0]->layout;
  const SheetRun& run = wall.runs.at(0);
  const Module& first = run.modules.at(0);
  const std::string mark = wall.letter + std::to_string(first.number);
  CHECK(says(deltaOf(job, PaperSize::A3), mark + ","));
  const bool rightward = wall.direction.hand == Hand::LeftToRight;
  job.facts.hung = {{mark, rightward ? first.metalRight : first.metalLeft, "x", ""}};
  CHECK(!says(deltaOf(job, PaperSize::A3), " " + mark + ","));
}

TEST_CASE("pages of what is still to be ordered have no fault on any paper, in any language") {
  for (const Job& job : {leanTo(), lower()}) {
    for (const PaperSize paper : {PaperSize::Letter, PaperSize::Tabloid, PaperSize::A4, PaperSize::A3}) {
      for (const char* language : {"en", "es"}) {
        for (const Page& page : deltaOf(job, paper, language)) {
          INFO(page.title);
          CHECK(pageFaults(page) == std::vector<std::string>());
        }
      }
    }
  }
}
