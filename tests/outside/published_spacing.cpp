// How far apart screws and rows of them may be, against published values. Documents are named with what was read in
// them.
#include <catch2/catch.hpp>
#include <set>

#include "core/fastening/chosen_pattern.h"
#include "core/fastening/holes.h"
#include "core/fastening/spacing_limits.h"
#include "core/job/job_file.h"
#include "core/layout/lay_out_wall.h"

using namespace ribwright;

namespace {

SpacingLimits limitsOf(ScrewPattern::Limits limits) {
  ScrewPattern pattern;
  pattern.limits = limits;
  return spacingLimits(pattern);
}

// Nominal diameter in thousandths of an inch.
Screw thick(std::int64_t thousandths) {
  Screw screw;
  screw.diameter = scaled(Length::inches(1), thousandths, 1000);
  return screw;
}

}  // namespace

// UFGS 07413 (metal siding) 3.1.1.1: 8 in at end laps, 8 in at intermediate supports, 18 in at side laps.
TEST_CASE("UFGS 07413: 8 in at supports and end laps, 18 in at side laps") {
  const SpacingLimits limits = limitsOf(ScrewPattern::Limits::Ufgs07413);
  CHECK(limits.atSupports == Length::inches(8));
  CHECK(limits.atEndLaps == Length::inches(8));
  CHECK(limits.atSideLaps == Length::inches(18));
  CHECK_FALSE(limits.betweenRows);
}

// The same limit over a sheet of 36 in cover: five screws a row, 7.2 in apart; the common three, 12 in apart, are too
// few.
TEST_CASE("36 in cover and 8 in between screws: at least 5 screws a row") {
  const Length limit = limitsOf(ScrewPattern::Limits::Ufgs07413).atSupports.value();
  const std::int64_t fewest = fewestPerCover(Length::inches(36), limit);
  CHECK(fewest == 5);
  CHECK(scaled(Length::inches(36), 1, fewest) == scaled(Length::inches(1), 72, 10));
  CHECK(scaled(Length::inches(36), 1, fewest - 1) > limit);
}

// The reference warehouse's pattern has three screws a sheet at its girts: every girt of every wall is found too wide.
TEST_CASE("three screws a sheet on the reference warehouse's girts stand wider than UFGS 07413 allows") {
  auto job = loadJob(RIBWRIGHT_ROOT "/sample-jobs/doe-warehouse.json");
  REQUIRE(job.ok());
  const auto wideKinds = [&](const Wall& wall) {
    const auto layout = layOutWall(job.value(), wall);
    REQUIRE(layout.ok());
    std::set<HoleKind> kinds;
    for (const WideSpace& space : holesOf(job.value(), wall, layout.value()).wideSpaces) {
      CHECK(space.limit == Length::inches(8));
      CHECK(space.to - space.from == Length::inches(12));
      kinds.insert(space.kind);
    }
    return kinds;
  };
  for (const Wall& wall : job.value().walls) {
    INFO("wall " << wall.letter);
    const auto kinds = wideKinds(wall);
    CHECK(kinds.contains(HoleKind::Girt));
    CHECK_FALSE(kinds.contains(HoleKind::Base));  // six a sheet
  }
  job.value().patterns.at(0).spacingApproval = "the engineer, on sheet S3";
  CHECK(wideKinds(job.value().walls[0]).empty());
}

// The same limit along a side lap of 28 ft, the reference warehouse's height: 19 spaces of 17.68 in.
TEST_CASE("28 ft of side lap and 18 in between screws: 19 spaces of 17.68 in") {
  const std::int64_t spaces = evenSpaces(Length::feet(28), *limitsOf(ScrewPattern::Limits::Ufgs07413).atSideLaps);
  CHECK(spaces == 19);
  const Length space = scaled(Length::feet(28), 1, spaces);
  CHECK(roundTo(space, scaled(Length::inches(1), 1, 100)) == scaled(Length::inches(1), 1768, 100));
}

// NZ Metal Roof and Wall Cladding Code of Practice: a wall's end lap about 150 mm.
TEST_CASE("NZ code of practice: end lap of 150 mm") {
  const SpacingLimits limits = limitsOf(ScrewPattern::Limits::NzCode);
  CHECK(limits.endLap == Length::millimetres(150));
  CHECK_FALSE(limits.atSupports);
}

// BRANZ Build 146, vertical sheets: top and bottom, one row between up to 2.4 m, then rows at most 1200 mm apart.
TEST_CASE("BRANZ Build 146: rows between bottom and top of a sheet") {
  const Length limit = limitsOf(ScrewPattern::Limits::Branz146).betweenRows.value();
  CHECK(limit == Length::millimetres(1200));
  const Length warehouse = Length::millimetres(8534);
  CHECK(rowsBetween(warehouse, limit) == 7);
  CHECK(scaled(warehouse, 1, 7 + 1) == Length::nanometres(1'066'750'000));
  CHECK(rowsBetween(Length::millimetres(2400), limit) == 1);
  CHECK(rowsBetween(Length::millimetres(2401), limit) == 2);
  CHECK(rowsBetween(Length::millimetres(600), limit) == 1);
}

// AISI S100-16 (J4): screws at least 3 d apart and 1.5 d from an edge; diameters by number from Yu and LaBoube, table
// 8.6: No. 12 0.216 in, No. 10 0.190 in, 1/4 in.
TEST_CASE("AISI S100-16: a screw stays 1.5 d from an edge and 3 d from the next") {
  struct Row {
    std::int64_t diameter, spacing, edge;  // thousandths of an inch
  };
  for (const Row& row : {Row{216, 648, 324}, Row{190, 570, 285}, Row{250, 750, 375}}) {
    INFO("0." << row.diameter << " in");
    const Screw screw = thick(row.diameter);
    CHECK(fromEdge(screw) == scaled(Length::inches(1), row.edge, 1000));
    // All less than the 1 in between holes (common practice), so that 3 d shows only in tenfold screws.
    CHECK(apart(screw, screw) == Length::inches(1));
    const Screw tenfold = thick(10 * row.diameter);
    CHECK(apart(tenfold, tenfold) == scaled(Length::inches(1), 10 * row.spacing, 1000));
    CHECK(apart(screw, tenfold) == apart(tenfold, tenfold));
    CHECK(apart(tenfold, screw) == apart(tenfold, tenfold));
  }
}
