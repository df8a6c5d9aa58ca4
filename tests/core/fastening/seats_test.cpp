// Where across a sheet a screw may sit.
#include <catch2/catch.hpp>

#include "core/fastening/seats.h"
#include "core/job/job_file.h"
#include "tests/core/layout/example_walls.h"

using namespace ribwright;

namespace {

Profile shipped(const std::string& id) {
  for (const Profile& profile : shippedProfiles()) {
    if (profile.id == id) return profile;
  }
  FAIL(id + " does not ship");
  return {};
}

}  // namespace

// Ribs 2 in wide at 12 in: pans from 1 to 11 in. Washer 1/2 in: 1/4 + 1/16 in from the bend.
TEST_CASE("a structural screw keeps washer radius and 1/16 in from a bend") {
  const auto seats = structuralSeats(examples::ribbed36(), Length::inches(0, 32));
  REQUIRE(seats.size() == 4);
  CHECK(seats[1].from == Length::inches(1, 20));
  CHECK(seats[1].to == Length::inches(10, 44));
  CHECK(isOnSeat(seats, Length::inches(1, 20)));
  CHECK_FALSE(isOnSeat(seats, Length::inches(1, 20) - Length::nanometres(1)));
  CHECK_FALSE(isOnSeat(seats, Length::inches(12)));
}

// The lip ends on a pan 1/2 in wide, from -1-1/2 to -1: 1-1/2 is the sheet's own edge and no bend.
TEST_CASE("the sheet's own edge is no bend") {
  const auto seats = structuralSeats(examples::ribbed36(), Length::inches(0, 32));
  CHECK(seats[0].from == -Length::inches(1, 32));
  CHECK(seats[0].to == -Length::inches(1, 20));
}

TEST_CASE("a washer wider than the pan has no seat there") {
  const auto seats = structuralSeats(examples::ribbed36(), Length::inches(10));
  CHECK(seats.empty());
}

// Common practice: screws of a corrugated wall stand in the middle of the valley.
TEST_CASE("on a corrugated sheet the bottom of each valley is the seat") {
  const Profile profile = shipped("corrugated-762-17-at-76.2");
  const auto seats = structuralSeats(profile, Length::millimetres(16));
  REQUIRE(seats.size() >= 10);
  for (std::size_t i = 1; i < seats.size(); ++i) {
    const Length pitch = seats[i].from - seats[i - 1].from;
    CHECK(seats[i].to - seats[i].from <= Length::millimetres(3));
    CHECK(pitch > Length::nanometres(75'000'000));
    CHECK(pitch < Length::nanometres(77'500'000));
  }
}

TEST_CASE("the nearest seat, and of two equally near the smaller") {
  const std::vector<Flat> seats = {{Length::inches(1), Length::inches(3)}, {Length::inches(5), Length::inches(7)}};
  const Length far = Length::inches(100);
  CHECK(nearestOnSeat(seats, Length::inches(2), -far, far) == Length::inches(2));
  CHECK(nearestOnSeat(seats, Length::inches(4), -far, far) == Length::inches(3));
  CHECK(nearestOnSeat(seats, Length::inches(4, 1), -far, far) == Length::inches(5));
  CHECK(nearestOnSeat(seats, Length::inches(4), Length::inches(6), far) == Length::inches(6));
  CHECK_FALSE(nearestOnSeat(seats, Length::inches(4), Length::inches(8), far));
}

TEST_CASE("stitch screws sit on crowns, and a flat sheet has none") {
  CHECK(stitchSeats(examples::ribbed36()).size() == 4);
  Profile flat = examples::ribbed36();
  flat.section = {{-flat.over, Length()}, {flat.cover + flat.under, Length()}};
  CHECK(stitchSeats(flat).empty());
}
