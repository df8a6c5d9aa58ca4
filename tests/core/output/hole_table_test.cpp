// The table of holes, row by row. Wall A hangs left to right: sheet A1 has its metal from 0 to 38-1/4 in and its module
// line at 1-1/2 in, A2 from 36 to 74-1/4 in with its line at 37-1/2 in; both end 1-3/4 in below concrete. Wall C hangs
// right to left: C1 has its metal from 100 to 138-1/4 in, its line at 136-3/4 in, and ends 10 in above concrete.
#include <catch2/catch.hpp>

#include "core/output/support_words.h"
#include "core/output/tables.h"
#include "plan_by_hand.h"
#include "table_units.h"

using namespace ribwright;

namespace {

Length inches(std::int64_t whole, std::int64_t sixtyFourths = 0) { return Length::inches(whole, sixtyFourths); }

Piece sheet(const std::string& mark, int order, Length left, Length right, Length bottom) {
  Piece piece;
  piece.mark = mark;
  piece.module = order - 1;
  piece.hangOrder = order;
  piece.left = left;
  piece.right = right;
  piece.bottom = bottom;
  return piece;
}

WallLayout frontWall() {
  WallLayout wall;
  wall.letter = "A";
  wall.sheeted = true;
  wall.face.bottom = HeightLine::level(inches(-1, -48));
  wall.runs.resize(1);
  wall.runs[0].modules.resize(2);
  wall.runs[0].modules[0].startLine = inches(1, 32);
  wall.runs[0].modules[1].startLine = inches(37, 32);
  wall.pieces = {sheet("A1", 1, Length(), inches(38, 16), inches(-1, -48)),
                 sheet("A2", 2, inches(36), inches(74, 16), inches(-1, -48))};
  return wall;
}

WallLayout backWall() {
  WallLayout wall = frontWall();
  wall.letter = "C";
  wall.direction.hand = Hand::RightToLeft;
  wall.runs[0].modules.resize(1);
  wall.runs[0].modules[0].startLine = inches(136, 48);
  wall.pieces = {sheet("C1", 1, inches(100), inches(138, 16), inches(10))};
  return wall;
}

SupportRow row(SupportKind kind, const std::string& id, std::vector<Stretch> stretches) {
  SupportRow made;
  made.kind = kind;
  made.id = id;
  made.stretches = std::move(stretches);
  return made;
}

Stretch stretch(Stretch::Steel steel, const std::string& name) {
  Stretch made;
  made.steel = steel;
  made.name = name;
  return made;
}

// Base; a girt alone, nested, on a column and on two jambs; head and sill of a window with its jambs.
WallSupports supports() {
  using Steel = Stretch::Steel;
  WallSupports all;
  all.rows = {row(SupportKind::Base, "", {stretch(Steel::Own, "")}),
              row(SupportKind::Girt, "g1",
                  {stretch(Steel::Own, "g1"), stretch(Steel::Own, "g1+g2"), stretch(Steel::Column, "2"),
                   stretch(Steel::LeftJamb, "W1"), stretch(Steel::RightJamb, "W1")}),
              row(SupportKind::Head, "W1", {stretch(Steel::Own, "W1")}),
              row(SupportKind::Sill, "W1", {stretch(Steel::Own, "W1")})};
  all.jambs.resize(2);
  all.jambs[0].opening = all.jambs[1].opening = "W1";
  all.jambs[1].left = false;
  return all;
}

Hole hole(HoleKind kind, int row, int stretch, Length u, Length z, int piece = 0) {
  Hole made;
  made.kind = kind;
  made.row = row;
  made.stretch = stretch;
  made.u = u;
  made.z = z;
  made.pieces[0] = piece;
  return made;
}

// On the lap of A1 and A2, over which A2 lies; A1 asks for it.
Hole throughLap() {
  Hole made = hole(HoleKind::Girt, 1, 0, inches(37), inches(48));
  made.pieces = {0, 1, -1, -1};
  made.sheets = 2;
  made.upper = 1;
  made.throughLap = true;
  return made;
}

WallPlan planOf(WallLayout layout, std::vector<Hole> holes) {
  WallPlan plan;
  Screw structural, stitch;
  structural.id = "12-14x1.25";
  stitch.id = "14-14x0.875";
  plan.reads.screws = {structural, stitch};
  ScrewPattern pattern;
  pattern.id = "ribs";
  plan.reads.patterns = {pattern};
  plan.reads.walls.resize(1);
  plan.layout = std::move(layout);
  plan.holes.supports = supports();
  plan.holes.patterns = {{"ribs", false}};
  plan.holes.holes = std::move(holes);
  return plan;
}

Table tableOf(std::vector<WallPlan> walls, UnitSystem units = feetInches) {
  Plan plan;
  for (WallPlan& wall : walls) plan.walls.push_back(std::make_shared<const WallPlan>(std::move(wall)));
  return holeTable(plan, units);
}

std::string cell(const Table& table, std::size_t row, const std::string& column) {
  for (std::size_t i = 0; i < table.columns.size(); ++i) {
    if (table.columns[i] == column) return table.rows.at(row).at(i);
  }
  return "no such column";
}

}  // namespace

// Base row 1 in above concrete: 2-3/4 in from the end of the sheet, which is the chalk line. u = 3-1/2 in is 2 in past
// the module line of A1. The stitch screw at u = 37-1/8 in, 24 in up.
TEST_CASE("every hole stands in one row for each sheet it goes through, and counts in the sheet that owns it") {
  Hole base = hole(HoleKind::Base, 0, 0, inches(3, 32), inches(1));
  base.corner = true;
  Hole stitch = throughLap();
  stitch.kind = HoleKind::Stitch;
  stitch.row = stitch.stretch = -1;
  stitch.screw = 1;
  stitch.u = inches(37, 8);
  stitch.z = inches(24);
  stitch.pieces = {1, 0, -1, -1};
  stitch.upper = 0;
  stitch.inPlace = true;
  Hole jamb = hole(HoleKind::Jamb, 0, -1, inches(60), inches(36), 1);
  jamb.inPlace = true;
  CHECK(csvText(tableOf({planOf(frontWall(), {throughLap(), base, jamb, stitch})}), false) ==
        "mark,support,x_in,s_in,wall,u_in,z_in,through_lap,screw,edge_x_in,chalk_in,count,basis,status,drilled,zone\r\n"
        "A1,base,2,2.75,A,3.5,1,no,12-14x1.25,3.5,2.75,1,plan,held,stack,corner\r\n"
        "A1,stitch,35.625,25.75,A,37.125,24,yes,14-14x0.875,37.125,25.75,0,plan,held,no,field\r\n"
        "A1,girt g1,35.5,49.75,A,37,48,yes,12-14x1.25,37,49.75,1,plan,held,no,field\r\n"
        "A2,stitch,-0.375,25.75,A,37.125,24,yes,14-14x0.875,1.125,25.75,1,plan,held,in place,field\r\n"
        "A2,left jamb W1,22.5,37.75,A,60,36,no,12-14x1.25,24,37.75,1,plan,held,in place,field\r\n"
        "A2,girt g1,-0.5,49.75,A,37,48,yes,12-14x1.25,1,49.75,0,plan,held,stack,field\r\n");
}

// C1 hangs from its right edge at 138-1/4 in: u = 120 in is 18-1/4 in from that edge, 16-3/4 in past the module line.
TEST_CASE("on a wall hung right to left a sheet is measured from its right edge to the left") {
  const Table table = tableOf({planOf(frontWall(), {hole(HoleKind::Base, 0, 0, inches(3), inches(1))}),
                               planOf(backWall(), {hole(HoleKind::Girt, 1, 2, inches(120), inches(48))})});
  REQUIRE(table.rows.size() == 2);
  CHECK(table.rows[1] == std::vector<std::string>{"C1", "column 2", "16.75", "38", "C", "120", "48", "no", "12-14x1.25",
                                                  "18.25", "49.75", "1", "plan", "held", "stack", "field"});
}

TEST_CASE("holes of one height stand in the order of x, from the starting edge") {
  const auto us = [](const WallPlan& plan) {
    const Table table = tableOf({plan});
    return std::vector<std::string>{cell(table, 0, "u_in"), cell(table, 1, "u_in"), cell(table, 2, "u_in")};
  };
  const auto at = [](Length u) { return hole(HoleKind::Base, 0, 0, u, inches(12)); };
  const Hole lower = hole(HoleKind::Base, 0, 0, inches(130), inches(11));
  CHECK(us(planOf(frontWall(), {at(inches(20)), at(inches(10)), lower})) ==
        std::vector<std::string>{"130", "10", "20"});
  CHECK(us(planOf(backWall(), {at(inches(110)), at(inches(120)), lower})) ==
        std::vector<std::string>{"130", "120", "110"});
}

// A chalk line snapped at 2 in above concrete: a hole at 48 in stands 46 in over it.
TEST_CASE("a chalk line that was snapped counts before the sheets' bottom") {
  WallPlan wall = planOf(frontWall(), {throughLap()});
  wall.reads.walls[0].survey.chalkLine = inches(2);
  const Table table = tableOf({wall});
  CHECK(cell(table, 0, "chalk_in") == "46");
  CHECK(cell(table, 0, "s_in") == "49.75");
}

// The bottom steps up from -1-3/4 in to 14-1/4 in at u = 37 in, where the hole stands.
TEST_CASE("at a step of the bottom the chalk is the lower of its two heights") {
  for (const bool rising : {true, false}) {
    WallLayout layout = frontWall();
    const Length low = inches(-1, -48), high = inches(14, 16);
    layout.face.bottom = HeightLine({{inches(0), rising ? low : high},
                                     {inches(37), rising ? low : high},
                                     {inches(37), rising ? high : low},
                                     {inches(80), rising ? high : low}});
    CHECK(cell(tableOf({planOf(layout, {throughLap()})}), 0, "chalk_in") == "49.75");
  }
}

TEST_CASE("of the sheets of a lap only the upper one is drilled, unless the pattern says both") {
  WallPlan wall = planOf(frontWall(), {throughLap()});
  const Table upperOnly = tableOf({wall});
  CHECK(cell(upperOnly, 0, "drilled") == "no");
  CHECK(cell(upperOnly, 1, "drilled") == "stack");
  wall.reads.patterns[0].lapHoles = ScrewPattern::LapHoles::BothSheets;
  const Table both = tableOf({wall});
  CHECK(cell(both, 0, "drilled") == "stack");
  CHECK(cell(both, 1, "drilled") == "stack");
}

TEST_CASE("in millimetres every length column of the holes says so") {
  const Table table =
      tableOf({planOf(frontWall(), {hole(HoleKind::Base, 0, 0, inches(3, 32), inches(1))})}, UnitSystem::Millimetres);
  CHECK(table.columns == std::vector<std::string>{"mark", "support", "x_mm", "s_mm", "wall", "u_mm", "z_mm",
                                                  "through_lap", "screw", "edge_x_mm", "chalk_mm", "count", "basis",
                                                  "status", "drilled", "zone"});
  CHECK(table.rows ==
        std::vector<std::vector<std::string>>{{"A1", "base", "50.8", "69.85", "A", "88.9", "25.4", "no", "12-14x1.25",
                                               "88.9", "69.85", "1", "plan", "held", "stack", "field"}});
}

TEST_CASE("a wall without holes has none in the table") { CHECK(tableOf({planOf(frontWall(), {})}).rows.empty()); }

TEST_CASE("what a hole is screwed to is said in plain words") {
  const WallSupports all = supports();
  const auto said = [&](HoleKind kind, int row, int stretch) {
    return supportWords(all, hole(kind, row, stretch, Length(), Length()));
  };
  CHECK(said(HoleKind::Base, 0, 0) == "base");
  CHECK(said(HoleKind::Eave, 0, 0) == "eave");
  CHECK(said(HoleKind::Rake, 0, 0) == "rake");
  CHECK(said(HoleKind::Girt, 1, 0) == "girt g1");
  CHECK(said(HoleKind::Girt, 1, 1) == "girt g1+g2");
  CHECK(said(HoleKind::Girt, 1, 2) == "column 2");
  CHECK(said(HoleKind::Girt, 1, 3) == "left jamb W1");
  CHECK(said(HoleKind::Girt, 1, 4) == "right jamb W1");
  CHECK(said(HoleKind::EndLap, 1, 0) == "end lap g1");
  CHECK(said(HoleKind::Head, 2, 0) == "head W1");
  CHECK(said(HoleKind::Sill, 3, 0) == "sill W1");
  CHECK(said(HoleKind::Jamb, 0, -1) == "left jamb W1");
  CHECK(said(HoleKind::Jamb, 1, -1) == "right jamb W1");
  CHECK(said(HoleKind::Stitch, -1, -1) == "stitch");
}
