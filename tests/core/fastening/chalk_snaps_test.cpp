// Where the chalk line is snapped: a wall 40 ft wide whose sheets overhang by 1-3/4 in, slab measured at the corners
// and at 20 ft.
#include "core/fastening/chalk_snaps.h"

#include <catch2/catch.hpp>
#include <random>

#include "core/units/length_text.h"
#include "measured_walls.h"

using namespace ribwright;
using namespace ribwright::examples;

namespace {

Job slabOf(std::vector<SlabReading> slab) {
  Job job = freeWall(ft(40));
  job.walls[0].survey.slab = std::move(slab);
  return job;
}

ChalkSnaps snapsOf(const Job& job) {
  const auto layout = layOutWall(job, job.walls[0]).value();
  return chalkSnaps(job, job.walls[0], layout).value();
}

bool hasSnaps(const Job& job) {
  const auto layout = layOutWall(job, job.walls[0]).value();
  return chalkSnaps(job, job.walls[0], layout).has_value();
}

Opening door(Length left) {
  Opening made;
  made.id = "D1";
  made.kind = Opening::Kind::OverheadDoor;
  made.place.distance = left;
  made.width = ft(10);
  made.height = ft(10);
  return made;
}

}  // namespace

TEST_CASE("the chalk line hangs below the lowest place of the slab edge by the drop") {
  const ChalkSnaps snaps = snapsOf(slabOf({{ft(0), in(0, 3)}, {ft(20), -in(0, 5)}, {ft(40), in(0, 1)}}));
  CHECK(snaps.asked == in(1, 12));
  REQUIRE(snaps.runs.size() == 1);
  CHECK(snaps.runs[0] == ChalkRun{ft(0), ft(40), -in(2, 1), -in(0, 5), false});
  CHECK(snaps.open.empty());
}

// -1/3 mm is no mark of the tape: the next lower one is.
TEST_CASE("the chalk line lies on a mark of the tape, the next lower one") {
  Job job = slabOf({{ft(0), -Length::nanometres(333'333)}, {ft(40), Length()}});
  CHECK(snapsOf(job).runs[0].line == -in(1, 13));
  job.units = UnitSystem::Millimetres;
  CHECK(snapsOf(job).runs[0].line == -Length::millimetres(45));  // 44.45 + 0.333 = 44.783
}

TEST_CASE("columns and stations say how far to measure down from the slab edge") {
  Job job = slabOf({{ft(0), Length()}, {ft(30), -in(0, 12)}});
  job.walls[0].columns.bays = {ft(20), ft(20)};
  const ChalkSnaps snaps = snapsOf(job);
  REQUIRE(snaps.marks.size() == 3);
  CHECK(snaps.marks[0] == ChalkMark{ft(0), 1, Length(), -in(2, 8)});
  CHECK(snaps.marks[1] == ChalkMark{ft(20), 2, -in(0, 8), -in(2, 8)});
  CHECK(snaps.marks[1].below() == in(2));
  CHECK(snaps.marks[2] == ChalkMark{ft(30), 0, -in(0, 12), -in(2, 8)});
}

// 3 in lower at 20 ft: sheets that end 1-3/4 in below the datum leave the middle open. Down to -1-3/4 in it falls over
// 140 in from either corner.
TEST_CASE("an edge below the sheets' end is open from where it falls past it") {
  const ChalkSnaps snaps = snapsOf(slabOf({{ft(0), Length()}, {ft(20), -in(3)}, {ft(40), Length()}}));
  REQUIRE(snaps.open.size() == 1);
  CHECK(snaps.open[0] == OpenEdge{in(140), ft(40) - in(140), in(1, 4), ft(20), -in(1, 12), 0});
  CHECK(snaps.runs[0].line == -in(4, 12));
}

TEST_CASE("at the sheets' end the edge is not open, below it is") {
  CHECK(snapsOf(slabOf({{ft(0), -in(1, 12)}, {ft(40), -in(1, 12)}})).open.empty());
  const auto open = snapsOf(slabOf({{ft(0), -in(1, 12)}, {ft(40), -in(1, 13)}})).open;
  REQUIRE(open.size() == 1);
  CHECK(open[0].by == in(0, 1));
  CHECK(open[0].at == ft(40));
}

TEST_CASE("a stated chalk line is where sheets end, and may leave open what the plans would not") {
  Job job = slabOf({{ft(0), -in(0, 8)}, {ft(40), -in(0, 8)}});
  CHECK(snapsOf(job).open.empty());
  job.walls[0].survey.chalkLine = -in(0, 4);
  const auto open = snapsOf(job).open;
  REQUIRE(open.size() == 1);
  CHECK(open[0] == OpenEdge{ft(0), ft(40), in(0, 4), ft(0), -in(0, 4), 0});
}

// The slab falls away 3 in under a door from 15 to 25 ft.
TEST_CASE("under a door the slab edge is not covered by sheets") {
  Job job = slabOf({{ft(0), Length()}, {ft(16), Length()}, {ft(20), -in(3)}, {ft(24), Length()}, {ft(40), Length()}});
  CHECK(snapsOf(job).runs[0].line == -in(4, 12));
  job.walls[0].openings = {door(ft(15))};
  CHECK(snapsOf(job).runs[0].line == -in(1, 12));
  CHECK(snapsOf(job).open.empty());
}

// Concrete 24 in higher from 20 ft on; measured 1/4 in low at the left corner, 1/2 in low at the right one.
TEST_CASE("each level run of the concrete has its own line") {
  Job job = slabOf({{ft(0), -in(0, 4)}, {ft(40), ft(2) - in(0, 8)}});
  job.walls[0].base.steps = {{ft(20), ft(2)}};
  const ChalkSnaps snaps = snapsOf(job);
  REQUIRE(snaps.runs.size() == 2);
  CHECK(snaps.runs[0] == ChalkRun{ft(0), ft(20), -in(2, 2), -in(0, 6), false});
  CHECK(snaps.runs[1] == ChalkRun{ft(20), ft(40), ft(2) - in(2, 4), ft(2) - in(0, 8), false});
  CHECK(snaps.open.empty());
}

// A ledge 1-1/2 in deep, sheets 1/4 in above it: they hang 1-1/4 in below the edge.
TEST_CASE("in a notch the line that covers the lowest edge may lie on the ledge under the highest") {
  Job job = slabOf({{ft(0), Length()}, {ft(40), -in(0, 4)}});
  job.walls[0].base.form = Base::Form::Notch;
  CHECK(snapsOf(job).asked == in(1, 4));
  CHECK(snapsOf(job).runs[0] == ChalkRun{ft(0), ft(40), -in(1, 8), -in(0, 4), false});
  job.walls[0].survey.slab[1].z = -in(0, 5);
  CHECK(snapsOf(job).runs[0].onLedge);
}

TEST_CASE("a base trim covers the edge itself; its line follows the slab") {
  Job job = slabOf({{ft(0), Length()}, {ft(40), -in(3)}});
  job.walls[0].base.form = Base::Form::BaseTrim;
  job.walls[0].base.shelf = in(1);
  CHECK(snapsOf(job).runs[0].line == -in(3) + in(1, 4));
  CHECK(snapsOf(job).open.empty());
}

TEST_CASE("nothing is said without two stations, or of sheets that end on a wall") {
  CHECK_FALSE(hasSnaps(slabOf({})));
  CHECK_FALSE(hasSnaps(slabOf({{ft(0), Length()}})));
  Job job = slabOf({{ft(0), Length()}, {ft(40), Length()}});
  CHECK(hasSnaps(job));
  job.walls[0].base.form = Base::Form::OnWall;
  CHECK_FALSE(hasSnaps(job));
}

// Sheets of 145-3/4 in, ordered 146: a quarter of an inch is left.
TEST_CASE("a sheet is short of the line by what its blank lacks") {
  const auto shortSheets = [](Length low) {
    Job job = slabOf({{ft(0), -low}, {ft(40), -low}});
    const auto layout = layOutWall(job, job.walls[0]).value();
    return shortOfLine(job, job.walls[0], layout, chalkSnaps(job, job.walls[0], layout).value());
  };
  CHECK(shortSheets(in(0, 4)).empty());
  const auto sheets = shortSheets(in(0, 5));
  CHECK(sheets.size() == 14);
  CHECK(sheets[0] == ShortSheet{0, in(0, 1)});
}

// Random slabs: at the line, every place of the edge is covered by what is asked; a mark of the tape higher, some place
// is not. And what is called open is just where the edge lies below the sheets' end.
TEST_CASE("property: the line covers the slab edge everywhere, and no higher mark does") {
  std::mt19937 dice(20260711);
  for (int round = 0; round < 300; ++round) {
    std::vector<SlabReading> slab;
    const auto height = [&] { return Length::nanometres(std::int64_t(dice() % 120'000'001) - 60'000'000); };
    Length u;
    for (std::size_t i = 0; i < 2 + dice() % 6; ++i) {
      slab.push_back({u, height()});
      u += Length::nanometres(1 + std::int64_t(dice() % 2'000'000'000));
    }
    Job job = slabOf(slab);
    job.units = dice() % 2 ? UnitSystem::FeetInches : UnitSystem::Millimetres;
    job.walls[0].base.drop = Length::nanometres(1 + std::int64_t(dice() % 80'000'000));
    const ChalkSnaps snaps = snapsOf(job);
    REQUIRE(snaps.runs.size() == 1);
    const Length line = snaps.runs[0].line, step = tapeMark(job.units), drop = job.walls[0].base.drop;
    CHECK(rest(line, step) == Length());
    bool higherCovers = true;
    for (std::size_t i = 0; i + 1 < slab.size() && slab[i].u < ft(40); ++i) {
      for (int part = 0; part <= 50; ++part) {
        const Length at = slab[i].u + scaled(slab[i + 1].u - slab[i].u, part, 50);
        if (at > ft(40)) break;
        const Length edge = slab[i].z + scaled(slab[i + 1].z - slab[i].z, part, 50);
        CHECK(edge - line >= drop - Length::nanometres(1));  // where it slopes, this sampling rounds too
        higherCovers = higherCovers && edge - line - step >= drop;
        const bool open = std::any_of(snaps.open.begin(), snaps.open.end(),
                                      [&](const OpenEdge& one) { return one.from <= at && at <= one.to; });
        if (absolute(edge + drop) > Length::nanometres(1)) CHECK(open == (edge < -drop));
      }
    }
    // Beyond the wall's end nothing is sampled, and its last place may be the lowest.
    if (slab.back().u <= ft(40)) CHECK_FALSE(higherCovers);
  }
}
