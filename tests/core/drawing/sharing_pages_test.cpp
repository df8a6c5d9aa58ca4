// Pages of shared blanks say what the tape reads, which part is turned and which end of it is up.
#include "core/drawing/sharing_pages.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "core/drawing/text_extent.h"
#include "core/job/fingerprint.h"
#include "tests/core/layout/example_walls.h"

using namespace ribwright;

namespace {

Job twoSlopes() {
  Job job = examples::gable40();
  Profile& profile = job.profiles.front();
  profile.section = {{-profile.over, Length()}, {profile.cover + profile.under, Length()}};
  job.settings.sharing.reach = Sharing::Reach::On;
  return job;
}

// Beside a level wall with a wide door: rips, short pieces.
Job allKinds() {
  Job job = twoSlopes();
  Wall wall = job.walls.front();
  wall.letter = "B";
  wall.hang = Hang::RightToLeft;
  wall.start.rule = Start::Rule::Typed;
  wall.start.offset = Length::inches(12);
  wall.top = {{Length(), Length::feet(12)}, {Length::feet(40), Length::feet(12)}};
  Opening door;
  door.id = "D1";
  door.place.distance = Length::feet(3);
  door.width = Length::feet(30);
  door.height = Length::inches(134);
  wall.openings = {door};
  job.walls.push_back(wall);
  return job;
}

std::vector<Page> pagesOf(const Job& job, const Plan& plan, PaperSize paper, const Words& words = Words::of("en")) {
  const PageFrame frame{paper, &job, &words, fingerprintOf(job).text()};
  return framed(frame, sharingPages(job, plan, frame));
}

std::vector<std::string> wordsOn(const std::vector<Page>& pages) {
  std::vector<std::string> words;
  for (const Page& page : pages) {
    for (const Item& item : page.drawing.items) {
      if (const Text* text = std::get_if<Text>(&item)) words.push_back(text->words);
    }
  }
  return words;
}

bool says(const std::vector<std::string>& words, const std::string& what) {
  return std::find(words.begin(), words.end(), what) != words.end();
}

}  // namespace

// Sheets 1 and 2 of the frozen gable: worked by hand in tests/core/cutting/share_blanks_test.cpp.
TEST_CASE("a rake pair's page says where the tape reads its cuts, what is turned and which end is up") {
  const Job job = twoSlopes();
  const auto words = wordsOn(pagesOf(job, plan(job), PaperSize::Letter));
  for (const char* const what :
       {"FACE UP", "A2  up →", "← up  A1, turned", "13' 1-3/4\"", "14' 2-1/2\"", "13' 2\"", "14' 2-3/4\"",
        "26' 4-1/2\"", "A2: sloped, 13' 1-3/4\" from the lower end at the lip edge, 14' 2-1/2\" at the leg edge"}) {
    INFO(what);
    CHECK(says(words, what));
  }
}

TEST_CASE("nothing is drawn of blanks where nothing shares") {
  Job job = twoSlopes();
  job.settings.sharing.reach = Sharing::Reach::Off;
  CHECK(pagesOf(job, plan(job), PaperSize::Letter).empty());
}

TEST_CASE("no two texts of shared blanks lie over each other, and none leaves the page's frame") {
  const Job job = allKinds();
  const Plan planned = plan(job);
  for (const char* const language : {"en", "es"}) {
    for (const PaperSize paper : {PaperSize::Letter, PaperSize::A4, PaperSize::A3}) {
      const auto pages = pagesOf(job, planned, paper, Words::of(language));
      REQUIRE(pages.size() > 2);
      for (const Page& page : pages) {
        std::vector<std::pair<Box, std::string>> boxes;
        for (const Item& item : page.drawing.items) {
          const Text* text = std::get_if<Text>(&item);
          if (text) boxes.emplace_back(boxOf(*text), text->words);
        }
        for (std::size_t i = 0; i < boxes.size(); ++i) {
          INFO(page.title << ": " << boxes[i].second);
          CHECK(inside(boxes[i].first, frameBox(paper)));
          for (std::size_t k = i + 1; k < boxes.size(); ++k) {
            INFO(boxes[k].second);
            CHECK_FALSE(overlap(boxes[i].first.grown(-0.2), boxes[k].first.grown(-0.2)));
          }
        }
      }
    }
  }
}
