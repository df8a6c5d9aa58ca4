#include <catch2/catch.hpp>

#include <cmath>

#include "section_samples.h"

namespace ribwright {
namespace {

// The trade's rules: turnable when the cross-section equals its own mirror image about the metal's middle.
TEST_CASE("A sheet with both edges alike may be turned end for end; one with lip and leg unlike may not") {
  CHECK(sectionOf(twoEdgesAlike()).turnable);
  CHECK_FALSE(sectionOf(oneRib()).turnable);
}

TEST_CASE("Turning is judged to the nanometre") {
  for (const std::size_t vertex : {0U, 2U, 5U}) {
    Profile profile = twoEdgesAlike();
    profile.section[vertex].y += Length::nanometres(1);
    INFO("vertex " << vertex);
    CHECK_FALSE(sectionOf(profile).turnable);
  }
  Profile shifted = twoEdgesAlike();
  shifted.section[3].x += Length::nanometres(1);
  CHECK_FALSE(sectionOf(shifted).turnable);
}

TEST_CASE("A vertex on a straight side does not keep a sheet from being turned") {
  Profile profile = twoEdgesAlike();
  profile.section.insert(profile.section.begin() + 5, {inch(3), inch(0)});
  CHECK(sectionOf(profile).turnable);
}

// Where the module line stands is a reckoning, not metal: a sheet that equals its mirror image is the same sheet when
// it is turned.
TEST_CASE("Turning asks for the metal's own mirror image, not for a lip as wide as the leg") {
  Profile profile = twoEdgesAlike();
  profile.over += inch(1);
  profile.under -= inch(1);
  for (SectionPoint& point : profile.section) point.x -= inch(1);
  CHECK(sectionOf(profile).turnable);
}

// Pythagoras: four sides of 1 in over 1 in are 4 sqrt 2; the stiffener's two are 1/4 over 1/2 each; half a side at the
// leg's end.
TEST_CASE("Developed width is the sum of the chords") {
  const double inches = 3.5 * std::sqrt(2.0) + 2 * std::sqrt(0.25 * 0.25 + 0.5 * 0.5) +  // sides
                        0.5 + 3.5 + 3.5 + 2 * 1.0 + 1.0;                                 // pans, crowns, stiffener
  CHECK(sectionOf(oneRib()).developedWidth == Approx(inches * 25.4).epsilon(1e-12));
}

TEST_CASE("A place along the run is looked up in its own sheet") {
  const Section section = sectionOf(oneRib());
  CHECK_FALSE(ribAt(section, inch(3)));
  CHECK(ribAt(section, inch(6)) == Rib{inch(5), inch(7), inch(0, 16)});
  CHECK(ribAt(section, inch(6) + inch(12) * 9) == Rib{inch(5 + 108), inch(7 + 108), inch(0, 16)});
  CHECK(ribAt(section, inch(6) - inch(12) * 2) == Rib{inch(5 - 24), inch(7 - 24), inch(0, 16)});
}

TEST_CASE("A bend belongs to its rib") {
  const Section section = sectionOf(oneRib());
  CHECK(ribAt(section, inch(5)));
  CHECK(ribAt(section, inch(7)));
  CHECK_FALSE(ribAt(section, inch(5) - Length::nanometres(1)));
  CHECK_FALSE(ribAt(section, inch(7) + Length::nanometres(1)));
}

// The earlier sheet's rib ends at 13 in, on its slope; the next sheet's lies over it and reaches 13-1/2.
TEST_CASE("On a lap the rib of both sheets is one rib") {
  const Section section = sectionOf(oneRib());
  const Rib lap{inch(10, 32), inch(13, 32), inch(1)};
  CHECK(ribAt(section, inch(11)) == lap);
  CHECK(ribAt(section, inch(12)) == lap);
  CHECK(ribAt(section, inch(12, 32)) == lap);
  CHECK(ribAt(section, inch(13, 16)) == Rib{inch(10, 32), inch(13, 32), inch(1)});
  CHECK(ribAt(section, inch(11) + inch(120)) == Rib{lap.from + inch(120), lap.to + inch(120), lap.height});
}

// A lip that begins on the crown: up to there the rib is the earlier sheet's alone, whose leg lies under the lip.
TEST_CASE("On a lap with a short lip the earlier sheet's leg makes the rib whole") {
  Profile profile = oneRib();
  profile.over = inch(0, 32);
  profile.section.erase(profile.section.begin(), profile.section.begin() + 2);
  const Rib lap{inch(10, 32), inch(13, 32), inch(1)};
  const Section section = sectionOf(profile);
  REQUIRE(section.ribs.front() == Rib{-inch(0, 32), inch(1, 32), inch(1)});
  CHECK(ribAt(section, inch(12, 16)) == lap);
  CHECK(ribAt(section, inch(11, 48)) == lap);
  CHECK(ribAt(section, inch(11)) == Rib{inch(10, 32), inch(13), inch(1)});  // the lip does not reach here
}

TEST_CASE("The pan beyond a lap is no rib") {
  const Section section = sectionOf(oneRib());
  CHECK_FALSE(ribAt(section, inch(14)));
  CHECK_FALSE(ribAt(section, inch(10)));
}

TEST_CASE("A sheet without cover has no place to look up") {
  Section section = sectionOf(oneRib());
  section.cover = Length();
  CHECK_THROWS_AS(ribAt(section, inch(1)), std::domain_error);
}

TEST_CASE("A wider lap takes from the cover what it gives to the lip; the metal stays") {
  const Profile wider = lappedBy(oneRib(), inch(2));
  CHECK(wider.cover == inch(10));
  CHECK(wider.over == inch(4));
  CHECK(wider.under == inch(1));
  CHECK(wider.metalWidth() == oneRib().metalWidth());
  CHECK(wider.section.front().x == -wider.over);
  CHECK(wider.section.back().x == wider.cover + wider.under);
  CHECK(sectionOf(wider).developedWidth == Approx(sectionOf(oneRib()).developedWidth).epsilon(1e-14));
  CHECK(lappedBy(oneRib(), Length()) == oneRib());
}

TEST_CASE("A lap wider than the sheet, or a negative one, is refused") {
  // Cover 12, lip and leg 3: with 4-1/2 more, cover and laps are 7-1/2 each.
  CHECK_THROWS_AS(lappedBy(oneRib(), inch(4, 32)), std::invalid_argument);
  CHECK(lappedBy(oneRib(), inch(4, 31)).cover == inch(7, 33));
  CHECK_THROWS_AS(lappedBy(oneRib(), -inch(1)), std::invalid_argument);
}

}  // namespace
}  // namespace ribwright
