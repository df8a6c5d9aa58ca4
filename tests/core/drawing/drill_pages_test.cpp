// What holds for every page for measuring and drilling, whatever the building.
#include "core/drawing/drill_pages.h"

#include <catch2/catch.hpp>

#include <algorithm>

#include "core/drawing/packet_pages.h"
#include "core/job/job_file.h"
#include "tests/core/drawing/all_papers.h"
#include "tests/core/drawing/drawn_jobs.h"
#include "tests/core/drawing/page_faults.h"
#include "tests/core/drawing/surveyed_job.h"

using namespace ribwright;

namespace {

std::vector<DrawnJob> drilledJobs() {
  std::vector<DrawnJob> jobs;
  for (const DrawnJob& drawn : drawnJobs()) {
    jobs.push_back(drawn);
    if (!drawn.job.patterns.empty())
      jobs.push_back(planned(drawn.name + ", surveyed", surveyed(withMember(drawn.job))));
  }
  return jobs;
}

bool says(const Page& page, const std::string& words) {
  for (const Text& text : textsOf(page)) {
    if (text.words.find(words) != std::string::npos) return true;
  }
  return false;
}

// Of the drawing, not of frame and title.
std::vector<Text> siteTexts(const Page& page) {
  std::vector<Text> texts = textsOf(page);
  const double bottom = extentOf(page.paper).height - 33;
  std::erase_if(texts, [&](const Text& text) { return text.at.y > bottom; });
  return texts;
}

}  // namespace

TEST_CASE("on pages for drilling nothing covers, crosses or leaves anything, on any paper, in both languages") {
  std::size_t pages = 0, cleared = 0;
  for (const DrawnJob& drawn : drilledJobs()) {
    for (const auto& wall : drawn.plan.walls) {
      for (const DrillBatch& batch : wall->batches) cleared += batch.isCleared() ? 1 : 0;
    }
    for (const PaperSize paper : papers) {
      for (const char* language : {"en", "es"}) {
        for (const Page& page : drillPages(drawn.job, drawn.plan, paper, Words::of(language))) {
          INFO(drawn.name << ", " << nameOf(paper) << ", " << language);
          CHECK(pageFaults(page) == std::vector<std::string>{});
          ++pages;
        }
      }
    }
  }
  CHECK(cleared > 50);
  CHECK(pages > 1000);
}

// What is read on the slab is at least 3.5 mm high; smaller are only the plans' figures in a survey's boxes.
TEST_CASE("words of templates, strips and sticks are at least 3.5 mm high") {
  for (const DrawnJob& drawn : drilledJobs()) {
    for (const Page& page : drillPages(drawn.job, drawn.plan, PaperSize::A3)) {
      if (page.title.find("survey of girts") != std::string::npos) continue;
      for (const Text& text : siteTexts(page)) {
        INFO(page.title << ": " << text.words);
        CHECK((text.height >= 3.5 || text.at.y > 230));
      }
    }
  }
}

TEST_CASE("no word on a page for drilling is cut short, in both languages") {
  const DrawnJob drawn = planned("front", surveyed(withMember(screwedFront())));
  for (const char* language : {"en", "es"}) {
    for (const Page& page : drillPages(drawn.job, drawn.plan, PaperSize::Letter, Words::of(language))) {
      for (const Text& text : siteTexts(page)) {
        INFO(page.title << ": " << text.words);
        CHECK(text.words.find("…") == std::string::npos);
      }
    }
  }
}

TEST_CASE("a cleared batch has a template, a held one reasons and no ordinate") {
  Job job = surveyed(withMember(screwedFront()));
  job.walls[0].survey.girts.back().readings.resize(2);  // the rest of the lowest girt is not measured
  const Plan made = plan(job);
  std::size_t cleared = 0, held = 0;
  const std::vector<Page> pages = drillPages(job, made, PaperSize::A3);
  for (const DrillBatch& batch : made.walls[0]->batches) {
    std::size_t templates = 0, reasons = 0;
    for (const Page& page : pages) {
      templates += page.title.find("drill template " + batch.id + ",") != std::string::npos ? 1 : 0;
      reasons += says(page, "Batch " + batch.id + ":") && page.title.find("held") != std::string::npos ? 1 : 0;
    }
    CHECK((templates > 0) == batch.isCleared());
    CHECK((reasons > 0) != batch.isCleared());
    (batch.isCleared() ? cleared : held) += 1;
  }
  CHECK(cleared > 0);
  CHECK(held > 0);
  for (const Page& page : pages) {
    if (page.title.find("held") == std::string::npos) continue;
    CHECK(says(page, "HELD"));
    CHECK_FALSE(says(page, "FACE UP"));
    CHECK_FALSE(says(page, "running"));
  }
}

TEST_CASE("the packet has each wall's elevation before its pages for drilling, then those of the whole job") {
  const DrawnJob drawn = planned("front", surveyed(withMember(screwedFront())));
  const std::vector<Page> pages = packetPages(drawn.job, drawn.plan, PaperSize::A3);
  const std::string last = " of " + std::to_string(pages.size());
  for (std::size_t i = 0; i < pages.size(); ++i) CHECK(says(pages[i], "page " + std::to_string(i + 1) + last));
  CHECK(pages.front().title.find("elevation") != std::string::npos);
  const auto whole = std::find_if(pages.begin(), pages.end(), [](const Page& page) { return page.wall.empty(); });
  REQUIRE((whole != pages.begin() && whole != pages.end()));
  CHECK((whole - 1)->title.find("module marks") != std::string::npos);
  CHECK(std::all_of(whole, pages.end(), [](const Page& page) { return page.wall.empty(); }));
}

TEST_CASE("two girts of one height are one mark of the stick") {
  Job job = loadJob(RIBWRIGHT_ROOT "/sample-jobs/gable-workshop.json").value();
  job.walls.resize(1);
  Wall& wall = job.walls[0];
  wall.survey = WallSurvey{};
  Girt right = wall.girts[0];
  wall.girts[0].to = Length::feet(6);
  right.id = "right of the door";
  right.from = Length::feet(10);
  wall.girts.push_back(right);
  const auto sticksSaying = [&](const std::string& words) {
    const Plan made = plan(job);
    std::size_t pages = 0;
    for (const Page& page : drillPages(job, made, PaperSize::Letter, Words::of("en"))) {
      if (page.title.find("marking stick") != std::string::npos) pages += says(page, words) ? 1 : 0;
    }
    return pages;
  };
  CHECK(sticksSaying(wall.girts[0].id + ", right") == 0);  // no room for both names: each has its mark
  wall.girts[2].id = "g9";
  CHECK(sticksSaying(wall.girts[0].id + ", g9") == 1);
  wall.girts[2].height += Length::inches(1);
  CHECK(sticksSaying(wall.girts[0].id + ", g9") == 0);
}
