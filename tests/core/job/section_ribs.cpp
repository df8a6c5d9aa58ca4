#include <catch2/catch.hpp>

#include "section_samples.h"

namespace ribwright {
namespace {

// The trade's rules: the metal's width is lip + cover + leg.
TEST_CASE("A sheet is as wide as lip, cover and leg together, and as deep as its highest rib") {
  const Section section = sectionOf(oneRib());
  CHECK(section.cover == inch(12));
  CHECK(section.metalWidth == inch(15));
  CHECK(section.depth == inch(1));
}

// A rib reaches from the first bend off the pan to the last bend back.
TEST_CASE("Ribs reach from the first bend off the pan to the last bend back, or to the metal's edge") {
  const std::vector<Rib> expected = {
      {inch(-1, -32), inch(1, 32), inch(1)}, {inch(5), inch(7), inch(0, 16)}, {inch(10, 32), inch(13), inch(1)}};
  CHECK(sectionOf(oneRib()).ribs == expected);
}

TEST_CASE("Crown flats lie at the crown's height, pan flats at y = 0; a stiffener's top is neither") {
  const Section section = sectionOf(oneRib());
  CHECK(section.crownFlats == std::vector<Flat>{{inch(0, -32), inch(0, 32)}, {inch(11, 32), inch(12, 32)}});
  CHECK(section.panFlats ==
        std::vector<Flat>{{inch(-2), inch(-1, -32)}, {inch(1, 32), inch(5)}, {inch(7), inch(10, 32)}});
}

TEST_CASE("A sheet that begins or ends on a rib has a rib to its edge") {
  Profile profile = oneRib();
  profile.over = inch(1);
  profile.section[0] = {inch(-1), inch(0, 32)};
  profile.section.erase(profile.section.begin() + 1);
  const Section section = sectionOf(profile);
  REQUIRE(section.ribs.size() == 3);
  CHECK(section.ribs.front() == Rib{inch(-1), inch(1, 32), inch(1)});
  CHECK(section.panFlats.front().from == inch(1, 32));
}

// Corrugated: the flat is the level chord at the extreme height; other chords are none.
TEST_CASE("A curved sheet's flats are its level chords at the crest and in the valley") {
  Profile profile;
  profile.cover = inch(10);
  profile.over = profile.under = inch(0);
  profile.section = {{inch(0), inch(0)}, {inch(1), inch(0)}, {inch(2), inch(0, 32)}, {inch(3), inch(0, 56)},
                     {inch(4), inch(1)}, {inch(5), inch(1)}, {inch(6), inch(0, 56)}, {inch(7), inch(0, 32)},
                     {inch(8), inch(0)}, {inch(10), inch(0)}};
  const Section section = sectionOf(profile);
  CHECK(section.ribs == std::vector<Rib>{{inch(1), inch(8), inch(1)}});
  CHECK(section.crownFlats == std::vector<Flat>{{inch(4), inch(5)}});
  CHECK(section.panFlats == std::vector<Flat>{{inch(0), inch(1)}, {inch(8), inch(10)}});
}

TEST_CASE("Two ribs that meet on the pan in one point stay two") {
  Profile profile;
  profile.cover = inch(8);
  profile.section = {
      {inch(0), inch(0)}, {inch(2), inch(1)}, {inch(4), inch(0)}, {inch(6), inch(2)}, {inch(8), inch(0)}};
  CHECK(sectionOf(profile).ribs == std::vector<Rib>{{inch(0), inch(4), inch(1)}, {inch(4), inch(8), inch(2)}});
}

TEST_CASE("An upright side belongs to its rib") {
  Profile profile;
  profile.cover = inch(8);
  profile.section = {{inch(0), inch(0)}, {inch(2), inch(0)}, {inch(2), inch(3)},
                     {inch(5), inch(3)}, {inch(5), inch(0)}, {inch(8), inch(0)}};
  const Section section = sectionOf(profile);
  CHECK(section.ribs == std::vector<Rib>{{inch(2), inch(5), inch(3)}});
  CHECK(section.developedWidth == Approx(14 * 25.4));
  CHECK(section.turnable == false);
}

TEST_CASE("A flat sheet has a pan and neither ribs nor crowns, and may be turned") {
  Profile profile;
  profile.cover = inch(36);
  profile.over = inch(1);
  profile.under = inch(2);
  profile.section = {{inch(-1), inch(0)}, {inch(10), inch(0)}, {inch(38), inch(0)}};
  const Section section = sectionOf(profile);
  CHECK(section.ribs.empty());
  CHECK(section.crownFlats.empty());
  CHECK(section.panFlats == std::vector<Flat>{{inch(-1), inch(38)}});
  CHECK(section.turnable);
}

TEST_CASE("Vertices on a straight side are no bends; a turn straight back is one") {
  const std::vector<SectionPoint> drawn = {{inch(0), inch(0)}, {inch(1), inch(0)}, {inch(1), inch(0)},
                                           {inch(3), inch(0)}, {inch(4), inch(1)}, {inch(6), inch(3)},
                                           {inch(6), inch(5)}, {inch(6), inch(2)}, {inch(8), inch(0)}};
  CHECK(bends(drawn) == std::vector<SectionPoint>{{inch(0), inch(0)},
                                                  {inch(3), inch(0)},
                                                  {inch(6), inch(3)},
                                                  {inch(6), inch(5)},
                                                  {inch(6), inch(2)},
                                                  {inch(8), inch(0)}});
  CHECK(bends({}).empty());
  CHECK(bends({{inch(1), inch(0)}, {inch(1), inch(0)}}).size() == 1);
}

TEST_CASE("A section of fewer than two points says nothing and breaks nothing") {
  Profile profile = oneRib();
  for (const std::size_t points : {0U, 1U}) {
    profile.section.resize(points);
    const Section section = sectionOf(profile);
    CHECK(section.metalWidth == inch(15));
    CHECK(section.ribs.empty());
    CHECK(section.panFlats.empty());
    CHECK_FALSE(section.turnable);
    CHECK(section.developedWidth == 0);
  }
}

}  // namespace
}  // namespace ribwright
