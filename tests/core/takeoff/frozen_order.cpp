// The order for the example that everyone tests alike: a gable end 40 ft wide, eave 12 ft, 4:12, hung
// flush.
#include <catch2/catch.hpp>

#include <algorithm>

#include "core/job/job_file.h"
#include "core/layout/lay_out_wall.h"
#include "core/takeoff/sheet_order.h"
#include "walls_by_hand.h"

namespace ribwright {
namespace {

// Two such ends, A hung left to right and C right to left, of the shipped sheet with a lip of 1-1/2 in and a leg of
// 3/4.
Job twoGables() {
  Job job;
  const auto& profiles = shippedProfiles();
  job.profiles = {
      *std::find_if(profiles.begin(), profiles.end(), [](const Profile& p) { return p.id == "rib-36-1.25-at-12"; })};
  for (const auto& [letter, hang] : {std::pair("A", Hang::LeftToRight), std::pair("C", Hang::RightToLeft)}) {
    Wall wall;
    wall.letter = letter;
    wall.width = Length::feet(40);
    wall.hang = hang;
    wall.eaveHoldDown = wall.rakeHoldDown = Length();
    wall.top = {
        {Length(), Length::feet(12)}, {Length::feet(20), Length::feet(18, 8)}, {Length::feet(40), Length::feet(12)}};
    wall.bands = {band("sand", "rib-36-1.25-at-12")};
    job.walls.push_back(wall);
  }
  return job;
}

TEST_CASE("frozen gable: fourteen lengths, each once for either end") {
  const Job job = twoGables();
  const WallLayout a = layOutWall(job, job.walls[0]).value(), c = layOutWall(job, job.walls[1]).value();
  const SheetOrder order = sheetOrder(job, {&a, &c});
  // Up the rake 146-1/2 + 12 k in for sheets 1 to 6, the ridge, and down from 222 by 12 in for sheets 8 to 14.
  const std::vector<Length> lengths = {inch(226),     inch(222),     inch(218, 32), inch(210),     inch(206, 32),
                                       inch(198),     inch(194, 32), inch(186),     inch(182, 32), inch(174),
                                       inch(170, 32), inch(162),     inch(158, 32), inch(150)};
  REQUIRE(order.lines.size() == lengths.size());
  for (std::size_t i = 0; i < lengths.size(); ++i) {
    CHECK(order.lines[i].length == lengths[i]);
    CHECK(order.lines[i].quantity() == 2);
  }
  CHECK(order.lines[0].marks == std::vector<std::string>{"A7", "C7"});
  CHECK(order.lines[13].marks == std::vector<std::string>{"A14", "C14"});
}

TEST_CASE("frozen gable: the end hung the other way takes mirror images, which no sheet of this end serves for") {
  const Job job = twoGables();
  const WallLayout a = layOutWall(job, job.walls[0]).value(), c = layOutWall(job, job.walls[1]).value();
  const SheetOrder order = sheetOrder(job, {&a, &c});
  CHECK(order.codes[0].front() == "13a");
  CHECK(order.codes[1].front() == "13b");
  CHECK(order.codes[0][6] == "1a");
  CHECK(order.codes[1][6] == "1b");
}

}  // namespace
}  // namespace ribwright
