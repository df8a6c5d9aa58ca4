// Boards of random buildings: labels never overlap, and everything is picked at its middle.
#include <catch2/catch.hpp>

#include "core/drawing/board_picture.h"
#include "tests/core/drawing/board_faults.h"
#include "tests/core/drawing/board_middles.h"
#include "tests/fuzz/random_building.h"
#include "tests/fuzz/random_screws.h"

using namespace ribwright;
using namespace ribwright::fuzz;

TEST_CASE("on the boards of 100 random buildings no label overlaps another, and everything is picked at its middle") {
  std::size_t things = 0, labels = 0;
  for (int index = 0; index < 100; ++index) {
    Dice dice(kSeed + 2, index);
    const Job job = withScrews(randomJob(kSeed, index), dice);
    const Plan made = plan(job);
    for (std::size_t wall = 0; wall < job.walls.size(); ++wall) {
      INFO("seed " << kSeed << ", building " << index << ", wall " << job.walls[wall].letter);
      const BoardPicture picture = boardPicture(job, made, wall, Words::of("en"));
      CHECK(boardFaults(picture) == std::vector<std::string>{});
      CHECK(missedAtTheirMiddles(picture, made.walls[wall]->layout) == std::vector<std::string>{});
      CHECK(missedScrews(picture) == std::vector<std::string>{});
      things += picture.things.size();
      labels += picture.labels.all().size();
    }
  }
  CHECK(things > 3000);
  CHECK(labels > 3000);
}
