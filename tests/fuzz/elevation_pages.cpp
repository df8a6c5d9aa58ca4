// Pages of random buildings: whatever the wall, nothing on its pages covers or strikes out anything else.
#include <algorithm>
#include <catch2/catch.hpp>
#include <map>

#include "core/drawing/elevation.h"
#include "tests/core/drawing/all_papers.h"
#include "tests/core/drawing/page_faults.h"
#include "tests/fuzz/random_building.h"
#include "tests/fuzz/random_screws.h"

using namespace ribwright;
using namespace ribwright::fuzz;

namespace {

constexpr int drawnBuildings = 200;
// How often each mark is written in the pictures.
std::map<std::string, int> marksOn(const std::vector<Page>& pages) {
  std::map<std::string, int> marks;
  for (const Page& page : pages) {
    for (const Text& text : textsOf(page)) {
      if (text.part < 0 || !text.bold) continue;
      const Part& part = page.drawing.parts[static_cast<std::size_t>(text.part)];
      if (part.kind == Part::Kind::Piece && part.id == text.words) ++marks[text.words];
    }
  }
  return marks;
}

// Labels that the pages say they have no room for.
int saidToBeMissing(const std::vector<Page>& pages) {
  int missing = 0;
  for (const Page& page : pages) {
    for (const Text& text : textsOf(page)) {
      if (text.words.find(" found no room in the drawing") != std::string::npos) missing += std::stoi(text.words);
    }
  }
  return missing;
}

// Screws that the pages of each wall say they show: of every kind, of a wall without a break or of each of its pages.
std::map<std::string, int> screwsSaid(const std::vector<Page>& pages) {
  std::map<std::string, int> said;
  for (const Page& page : pages) {
    for (const Text& text : textsOf(page)) {
      for (const char* kind : {"structural ", "stitch ", "jambs "}) {
        if (text.words.starts_with(kind)) said[page.wall] += std::stoi(text.words.substr(std::string(kind).size()));
      }
    }
  }
  return said;
}

}  // namespace

TEST_CASE(
    "with the screws and girts of 200 random buildings nothing covers, crosses or leaves anything, and every screw is "
    "counted") {
  std::size_t screws = 0;
  for (int index = 0; index < drawnBuildings; ++index) {
    Dice dice(kSeed + 1, index);
    const Job job = withScrews(randomJob(kSeed, index), dice);
    const Plan made = plan(job);
    const auto pages = elevationPages(job, made, papers[index % 4]);
    INFO("seed " << kSeed << ", building " << index);
    for (const Page& page : pages) CHECK(pageFaults(page) == std::vector<std::string>{});
    auto said = screwsSaid(pages);
    for (const auto& wall : made.walls) {
      CHECK(said[wall->layout.letter] == static_cast<int>(wall->holes.holes.size()));
      screws += wall->holes.holes.size();
    }
  }
  CHECK(screws > 10'000);
}

TEST_CASE(
    "on the pages of 200 random buildings nothing covers, crosses or leaves anything, and every piece is named once") {
  int large = 0, largeUnnamed = 0;
  for (int index = 0; index < drawnBuildings; ++index) {
    const Job job = randomJob(kSeed, index);
    const Plan made = plan(job);
    const auto pages = elevationPages(job, made, papers[index % 4]);
    INFO("seed " << kSeed << ", building " << index);
    for (const Page& page : pages) CHECK(pageFaults(page) == std::vector<std::string>{});
    const auto marks = marksOn(pages);
    int absent = 0;
    for (const auto& wall : made.walls) {
      for (const Piece& piece : wall->layout.pieces) {
        const auto found = marks.find(piece.mark);
        if (found != marks.end()) CHECK(found->second == 1);
        absent += found == marks.end() ? 1 : 0;
        const bool isLarge =
            piece.right - piece.left >= Length::inches(24) && piece.top - piece.bottom >= Length::feet(8);
        if (isLarge && wall->layout.face.top.highest(Length(), wall->layout.face.width) > Length::feet(60)) continue;
        large += isLarge ? 1 : 0;
        largeUnnamed += isLarge && found == marks.end() ? 1 : 0;
      }
    }
    CHECK(absent <= saidToBeMissing(pages));
  }
  // Strips of a few inches and low tiers may find no room, nor may walls over 60 ft, which fit no usual scale on small
  // paper.
  INFO(largeUnnamed << " of " << large << " large pieces are not named");
  CHECK(large > 2000);
  CHECK(largeUnnamed * 100 < large);
}
