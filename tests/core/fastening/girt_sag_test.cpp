// What girts sag under their own weight: an 8 in zed on a wall 60 ft wide, columns every 20 ft.
//
// The zed: 8 in deep, 2-1/2 in flanges, 7/8 in lips, 0.075 in thick, inside radius 3/16 in.
#include "core/fastening/girt_sag.h"

#include <catch2/catch.hpp>

#include "beam_elements.h"
#include "core/fastening/girt_spans.h"
#include "example_screws.h"
#include "tests/core/tape_lengths.h"

using namespace ribwright;
using namespace ribwright::examples;
using Taken = GirtSag::Taken;

namespace {

Job wallOfBays(std::vector<Length> bays, std::vector<Girt> girts = {girt("g1", ft(7))}) {
  Length width;
  for (const Length bay : bays) width += bay;
  Job job = screwed(freeWall(width), everywhere({Length::inches(2)}));
  job.walls[0].girts = std::move(girts);
  job.walls[0].columns.bays = std::move(bays);
  return job;
}

std::vector<GirtSag> sagsOf(const Job& job, ModulusBy by = ModulusBy::American) {
  const ScrewedWall wall(job);
  return girtSags(job, job.walls[0], wall.layout, wall.holes.supports, by);
}

// w and EI of the zed, in N and mm.
BeamSpan zedSpan(Length length, ModulusBy by = ModulusBy::American) {
  const MemberProperties properties = memberProperties(zed()).value();
  return {length.inMillimetres(), properties.area * 7850e-9 * 9.80665,
          modulusOf(zed(), by) * inertiaUnderOwnWeight(properties)};
}

double byFormula(double factor, Length length) {
  const BeamSpan span = zedSpan(length);
  return factor * span.load * std::pow(span.length, 4) / span.stiffness;
}

Opening opening(Length left, Length sill, Length height) {
  Opening made;
  made.id = "O1";
  made.place.distance = left;
  made.width = ft(4);
  made.height = height;
  made.sill = sill;
  return made;
}

std::vector<Taken> takenOf(const std::vector<GirtSag>& sags) {
  std::vector<Taken> all;
  for (const GirtSag& sag : sags) all.push_back(sag.taken);
  return all;
}

}  // namespace

TEST_CASE("one bay is a simple span: 5wL^4/384EI, lowest in the middle") {
  const auto sags = sagsOf(wallOfBays({ft(20)}));
  REQUIRE(sags.size() == 1);
  CHECK(sags[0].taken == Taken::Simple);
  CHECK(formulaOf(sags[0].taken) == "5wL^4/384EI");
  CHECK(sags[0].at == ft(10));
  CHECK(sags[0].bay == 1);
  CHECK(sags[0].sag.inMillimetres() == Approx(byFormula(5.0 / 384, ft(20))).margin(.001));
  CHECK(sags[0].sag > Length::inches(0, 16));  // a girt of 20 ft is worth a prop
}

TEST_CASE("two equal bays: wL^4/185EI in each, lowest nearer the outer hold") {
  const auto sags = sagsOf(wallOfBays({ft(20), ft(20)}));
  REQUIRE(sags.size() == 2);
  for (const GirtSag& sag : sags) {
    CHECK(sag.taken == Taken::TwoEqual);
    CHECK(sag.sag.inMillimetres() == Approx(byFormula(1.0 / 185, ft(20))).margin(.001));
  }
  CHECK(sags[0].at.inFeet() == Approx(20 * .4215).margin(.01));
  CHECK(sags[1].at.inFeet() == Approx(40 - 20 * .4215).margin(.01));
}

TEST_CASE("three equal bays: .0069wL^4/EI in the outer ones, the three-moment equation in the middle") {
  const auto sags = sagsOf(wallOfBays({ft(20), ft(20), ft(20)}));
  CHECK(takenOf(sags) == std::vector<Taken>{Taken::ThreeEqual, Taken::Continuous, Taken::ThreeEqual});
  CHECK(sags[0].sag.inMillimetres() == Approx(byFormula(.0069, ft(20))).margin(.001));
  CHECK(sags[1].sag < sags[0].sag);
  CHECK(sags[1].spans == 3);
}

TEST_CASE("unequal bays sag as a beam of fine elements does") {
  const std::vector<Length> bays = {ft(20), ft(25), ft(16), ft(20)};
  const auto sags = sagsOf(wallOfBays(bays));
  std::vector<BeamSpan> spans;
  for (const Length bay : bays) spans.push_back(zedSpan(bay));
  const auto elements = sagsByElements(spans);
  REQUIRE(sags.size() == 4);
  for (std::size_t i = 0; i < sags.size(); ++i) {
    CHECK(sags[i].taken == Taken::Continuous);
    CHECK(sags[i].bay == std::int32_t(i) + 1);
    CHECK(sags[i].sag.inMillimetres() == Approx(elements[i]).epsilon(.005).margin(.01));
  }
}

TEST_CASE("flush girts end at each column: every bay is simple") {
  Job job = wallOfBays({ft(20), ft(25)});
  job.walls[0].girtSetting = GirtSetting::Flush;
  job.walls[0].columns.flange = Length::inches(6);
  const auto stated = sagsOf(job);
  CHECK(takenOf(stated) == std::vector<Taken>{Taken::Simple, Taken::Simple});
  CHECK(stated[1].sag.inMillimetres() == Approx(byFormula(5.0 / 384, ft(25))).margin(.001));
  job.walls[0].columns.flange = Length();  // not stated
  CHECK(sagsOf(job) == stated);
}

TEST_CASE("girts that lap over a column go on over it; girts that end on it do not") {
  std::vector<Girt> girts = {girt("g1", ft(7)), girt("g2", ft(7))};
  girts[0].to = ft(21);
  girts[1].from = ft(19);
  const auto lapped = sagsOf(wallOfBays({ft(20), ft(20)}, girts));
  CHECK(takenOf(lapped) == std::vector<Taken>{Taken::TwoEqual, Taken::TwoEqual});
  CHECK(lapped[0].girt == 0);
  CHECK(lapped[1].girt == 1);
  girts[0].to = girts[1].from = ft(20);
  CHECK(takenOf(sagsOf(wallOfBays({ft(20), ft(20)}, girts))) == std::vector<Taken>{Taken::Simple, Taken::Simple});
}

// A girt that runs from 4 ft to 44 ft stands on the columns at 20 and 40 ft alone.
TEST_CASE("a girt is held by the columns that it reaches") {
  std::vector<Girt> girts = {girt("g1", ft(7))};
  girts[0].from = ft(4);
  girts[0].to = ft(44);
  const auto sags = sagsOf(wallOfBays({ft(20), ft(20), ft(20)}, girts));
  REQUIRE(sags.size() == 1);
  CHECK(sags[0].bay == 2);
  CHECK(sags[0].taken == Taken::Simple);
  girts[0].from = Length::inches(6);  // near enough to the column at the corner to be held by it
  CHECK(sagsOf(wallOfBays({ft(20), ft(20), ft(20)}, girts)).size() == 2);
  girts[0].from = Length::inches(6, 1);
  CHECK(sagsOf(wallOfBays({ft(20), ft(20), ft(20)}, girts)).size() == 1);
}

// A door from 8 to 12 ft in the first bay: its jambs stand on the floor.
TEST_CASE("a door's jambs hold the girts that end at them") {
  Job job = wallOfBays({ft(20), ft(20)});
  job.walls[0].openings = {opening(ft(8), Length(), ft(8))};
  const auto sags = sagsOf(job);
  REQUIRE(sags.size() == 3);
  CHECK(sags[0].to == ft(8));
  CHECK(sags[0].bay == 0);
  CHECK(sags[0].taken == Taken::Simple);
  CHECK(sags[1].from == ft(12));
  CHECK(sags[1].taken == Taken::Continuous);
  CHECK(sags[2].bay == 2);
}

TEST_CASE("nothing is said of a girt that ends at a window's jamb") {
  Job job = wallOfBays({ft(20), ft(20)});
  job.walls[0].openings = {opening(ft(8), ft(5), ft(4))};
  const auto sags = sagsOf(job);
  REQUIRE(sags.size() == 1);
  CHECK(sags[0].bay == 2);
}

TEST_CASE("nothing is said of girts without a member, or on a wall without bays") {
  Job job = wallOfBays({ft(20)});
  job.walls[0].girts[0].member.clear();
  CHECK(sagsOf(job).empty());
  job = wallOfBays({ft(20)});
  job.walls[0].columns.bays.clear();
  CHECK(sagsOf(job).empty());
  // Nor between two doors there: a column may stand between them.
  job = wallOfBays({ft(40)});
  job.walls[0].openings = {opening(ft(4), Length(), ft(8)), opening(ft(30), Length(), ft(8))};
  job.walls[0].openings[1].id = "O2";
  CHECK(sagsOf(job).size() == 3);
  job.walls[0].columns.bays.clear();
  CHECK(sagsOf(job).empty());
}

TEST_CASE("in metric modulus the same girt sags less") {
  const double american = sagsOf(wallOfBays({ft(20)}))[0].sag.inMillimetres();
  const double european = sagsOf(wallOfBays({ft(20)}), ModulusBy::European)[0].sag.inMillimetres();
  CHECK(european == Approx(american * 29'500 * 6.894757 / 210'000).epsilon(1e-4));
}

TEST_CASE("a sag is never given as more than its span") {
  const auto sags = sagsOf(wallOfBays({ft(30'000)}));
  REQUIRE(sags.size() == 1);
  CHECK(sags[0].sag == ft(30'000));
}
