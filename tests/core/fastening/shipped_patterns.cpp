// Every example pattern that ships, held against the rules of where a screw may go, for the profile that it is for.
#include <catch2/catch.hpp>

#include <algorithm>

#include "core/fastening/chosen_pattern.h"
#include "core/fastening/holes.h"
#include "core/fastening/seats.h"
#include "core/job/job_file.h"
#include "core/job/pattern_file.h"
#include "core/layout/lay_out_wall.h"

namespace ribwright {
namespace {

const Profile& profileOf(const PatternExample& example) {
  const auto& all = shippedProfiles();
  const auto found =
      std::find_if(all.begin(), all.end(), [&](const Profile& p) { return p.id == example.pattern.profile; });
  if (found == all.end()) FAIL(example.pattern.profile + " does not ship");
  return *found;
}

const Screw& screwOf(const PatternExample& example, const std::string& id) {
  const auto found =
      std::find_if(example.screws.begin(), example.screws.end(), [&](const Screw& s) { return s.id == id; });
  if (found == example.screws.end()) FAIL("\"" + id + "\" is no screw of " + example.pattern.id);
  return *found;
}

const PatternRow* rowOf(const PatternExample& example, SupportKind support, Zone zone) {
  const auto& rows = example.pattern.rows;
  const auto found = std::find_if(rows.begin(), rows.end(),
                                  [&](const PatternRow& row) { return row.support == support && row.zone == zone; });
  return found == rows.end() ? nullptr : &*found;
}

Length between(Length a, Length b) { return a < b ? b - a : a - b; }

template <class Look>
void eachOffset(const PatternExample& example, Look look) {
  for (std::size_t i = 0; i < example.pattern.rows.size(); ++i) {
    const PatternRow& row = example.pattern.rows[i];
    for (const Length x : row.offsets) {
      INFO(example.pattern.id << " row " << i << " at " << x.inMillimetres() << " mm");
      look(x, screwOf(example, row.screw));
    }
  }
}

// Does a screw of the pattern go through two sheets side by side?
bool sewsLap(const PatternExample& example) {
  const Profile& profile = profileOf(example);
  bool sews = false;
  eachOffset(example,
             [&](Length x, const Screw&) { sews = sews || x < profile.under || x > profile.cover - profile.over; });
  return sews;
}

// A wall of ten sheets of the pattern's profile, level at both ends, with three girts.
Job wallOf(const PatternExample& example) {
  Job job;
  job.profiles = {profileOf(example)};
  job.screws = example.screws;
  job.patterns = {example.pattern};
  job.members = {{"Z8x2.5x0.075", Member::Shape::Zed, Length::inches(8), Length::inches(2, 32), Length::inches(0, 56),
                  Length::nanometres(1'905'000), Length::inches(0, 12)}};
  Wall wall;
  wall.letter = "A";
  wall.width = 10 * job.profiles[0].cover;
  wall.top = {{Length(), Length::feet(12)}, {*wall.width, Length::feet(12)}};
  wall.hang = Hang::LeftToRight;
  wall.start.rule = Start::Rule::ModuleLine;
  wall.reachLeft = job.profiles[0].over;
  wall.reachRight = job.profiles[0].under;
  wall.bands = {Band{}};
  wall.bands[0].profile = job.profiles[0].id;
  for (const int feet : {3, 6, 9}) {
    Girt girt;
    girt.id = "g" + std::to_string(feet);
    girt.height = Length::feet(feet);
    girt.member = "Z8x2.5x0.075";
    wall.girts.push_back(girt);
  }
  wall.pattern = example.pattern.id;
  job.walls = {wall};
  return job;
}

}  // namespace

TEST_CASE("a shipped pattern states every kind of support, and the girts' corner rows") {
  for (const PatternExample& example : shippedPatterns()) {
    INFO(example.pattern.id);
    for (const SupportKind kind : {SupportKind::Base, SupportKind::Girt, SupportKind::Eave, SupportKind::Rake,
                                   SupportKind::Head, SupportKind::Sill, SupportKind::EndLap}) {
      const PatternRow* row = rowOf(example, kind, Zone::Field);
      REQUIRE(row);
      CHECK_FALSE(row->offsets.empty());
      screwOf(example, row->screw);
    }
    REQUIRE(rowOf(example, SupportKind::Girt, Zone::Corner));
    const PatternRow* jamb = rowOf(example, SupportKind::Jamb, Zone::Field);
    REQUIRE(jamb);
    CHECK(jamb->offsets.empty());  // a jamb's screws stand where its flange does
    screwOf(example, jamb->screw);
  }
}

TEST_CASE("a shipped pattern is denser at base, eave, end laps and corners than at girts") {
  for (const PatternExample& example : shippedPatterns()) {
    INFO(example.pattern.id);
    const std::size_t atGirts = rowOf(example, SupportKind::Girt, Zone::Field)->offsets.size();
    CHECK(rowOf(example, SupportKind::Girt, Zone::Corner)->offsets.size() > atGirts);
    for (const SupportKind kind : {SupportKind::Base, SupportKind::Eave, SupportKind::EndLap}) {
      CHECK(rowOf(example, kind, Zone::Field)->offsets.size() > atGirts);
    }
  }
}

TEST_CASE("every shipped offset lies within the cover, on a flat that bears, washer and all") {
  for (const PatternExample& example : shippedPatterns()) {
    const Profile& profile = profileOf(example);
    eachOffset(example, [&](Length x, const Screw& screw) {
      CHECK(x >= Length());
      CHECK(x < profile.cover);
      CHECK(isOnSeat(structuralSeats(profile, screw.washer), x));
    });
  }
}

// AISI S100-16: 1.5 d from an edge. On a lap there are the edges of two sheets.
TEST_CASE("no shipped offset bites the edge of its own sheet or of its neighbour's") {
  for (const PatternExample& example : shippedPatterns()) {
    const Profile& profile = profileOf(example);
    eachOffset(example, [&](Length x, const Screw& screw) {
      CHECK(between(x, profile.under) >= fromEdge(screw));
      CHECK(between(x, profile.cover - profile.over) >= fromEdge(screw));
    });
  }
}

TEST_CASE("a shipped offset through the lap sits on a flat of both sheets") {
  std::vector<std::string> sewing;
  for (const PatternExample& example : shippedPatterns()) {
    const Profile& profile = profileOf(example);
    if (sewsLap(example)) sewing.push_back(profile.id);
    eachOffset(example, [&](Length x, const Screw& screw) {
      const auto seats = structuralSeats(profile, screw.washer);
      if (x < profile.under) CHECK(isOnSeat(seats, x + profile.cover));
      if (x > profile.cover - profile.over) CHECK(isOnSeat(seats, x - profile.cover));
    });
  }
  // Where the leg gives a seat; on all others it ends on the rib.
  CHECK(sewing == std::vector<std::string>{"corrugated-32-0.875-at-2.667", "corrugated-762-17-at-76.2",
                                           "rib-1000-30-at-250", "rib-36-1.25-at-12-leg-1.875"});
}

// 3 d: AISI S100-16; 1 in: common practice. The last of a row is followed by the first of the next sheet's.
TEST_CASE("screws of a shipped row rise along the sheet and stand max(3 d, 1 in) apart, from sheet to sheet too") {
  for (const PatternExample& example : shippedPatterns()) {
    for (const PatternRow& row : example.pattern.rows) {
      if (row.offsets.empty()) continue;
      std::vector<Length> along = row.offsets;
      along.push_back(row.offsets.front() + profileOf(example).cover);
      const Screw& screw = screwOf(example, row.screw);
      for (std::size_t i = 1; i < along.size(); ++i) {
        INFO(example.pattern.id << " after " << along[i - 1].inMillimetres() << " mm");
        CHECK(along[i] - along[i - 1] >= apart(screw, screw));
      }
    }
  }
}

TEST_CASE("a shipped pattern's stitch screws find a crown that both sheets share, clear of both edges") {
  for (const PatternExample& example : shippedPatterns()) {
    INFO(example.pattern.id);
    const Profile& profile = profileOf(example);
    REQUIRE(example.pattern.stitchSpacing);
    const Length r = fromEdge(screwOf(example, example.pattern.stitchScrew));
    const auto crowns = stitchSeats(profile);
    const bool found = std::any_of(crowns.begin(), crowns.end(), [&](const Flat& crown) {
      const auto middle = nearestOnSeat(crowns, half(crown.from + crown.to) + profile.cover, -profile.over,
                                        profile.cover + profile.under);
      return middle && isOnSeat(crowns, *middle - profile.cover) && *middle - profile.cover + profile.over >= r &&
             profile.cover + profile.under - *middle >= r;
    });
    CHECK(found);
  }
}

TEST_CASE("hung with a shipped pattern, a plain wall takes every screw that is asked for") {
  for (const PatternExample& example : shippedPatterns()) {
    INFO(example.pattern.id);
    const Job job = wallOf(example);
    const auto layout = layOutWall(job, job.walls[0]);
    REQUIRE(layout.ok());
    REQUIRE(layout.value().runs.at(0).modules.size() == 10);
    const WallHoles holes = holesOf(job, job.walls[0], layout.value());
    CHECK(holes.refusals.empty());
    CHECK(holes.unstated.empty());
    std::size_t structural = 0;
    bool stitched = false, throughLap = false;
    for (const Hole& hole : holes.holes) {
      if (hole.kind == HoleKind::Stitch) {
        stitched = true;
        continue;
      }
      ++structural;
      throughLap = throughLap || hole.throughLap;
    }
    const std::size_t dense = rowOf(example, SupportKind::Base, Zone::Field)->offsets.size();
    const std::size_t atGirts = rowOf(example, SupportKind::Girt, Zone::Field)->offsets.size();
    CHECK(structural == 10 * (2 * dense + 3 * atGirts));
    CHECK(stitched);
    CHECK(throughLap == sewsLap(example));
  }
}

}  // namespace ribwright
