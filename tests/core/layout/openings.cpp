#include <catch2/catch.hpp>

#include "example_walls.h"
#include "laid_wall.h"

using namespace ribwright;

namespace {

Opening opening(const char* id, Length left, Length sill, Length width, Length height) {
  Opening made;
  made.id = id;
  made.place.distance = left;
  made.sill = sill;
  made.width = width;
  made.height = height;
  made.clearances = {Length(), Length(), Length()};
  return made;
}

std::vector<std::string> marks(const WallLayout& laid) {
  std::vector<std::string> all;
  for (const Piece& piece : laid.pieces) all.push_back(piece.mark);
  return all;
}

const Piece& piece(const WallLayout& laid, const std::string& mark) {
  for (const Piece& one : laid.pieces) {
    if (one.mark == mark) return one;
  }
  FAIL("no piece " + mark);
  return laid.pieces.front();
}

void accountCloses(const WallLayout& laid) {
  for (const SheetRun& run : laid.runs) {
    CHECK(run.pieces == run.net + run.laps);
    CHECK(run.net == run.face - run.cut);
    CHECK(run.uncovered == Area());
  }
}

}  // namespace

TEST_CASE("an opening wider than sheets leaves a piece below and a piece above") {
  Job job = examples::freeWall(Length::feet(18));
  job.walls[0].openings = {opening("W1", Length::feet(3), Length::feet(4), Length::feet(12), Length::feet(4))};
  const WallLayout laid = layout(job);
  CHECK(marks(laid) ==
        std::vector<std::string>{"A1", "A2.1", "A2.2", "A3.1", "A3.2", "A4.1", "A4.2", "A5.1", "A5.2", "A6"});
  CHECK(piece(laid, "A3.1").kind == PieceKind::Below);
  CHECK(piece(laid, "A3.2").kind == PieceKind::Above);
  CHECK(piece(laid, "A3.1").top == Length::feet(4));
  CHECK(piece(laid, "A3.2").bottom == Length::feet(8));
  accountCloses(laid);
}

TEST_CASE("an opening inside one sheet is a hole in it") {
  Job job = examples::freeWall(Length::feet(9));
  job.walls[0].openings = {opening("W1", Length::feet(4), Length::feet(4), Length::feet(1), Length::feet(1))};
  const WallLayout laid = layout(job);
  const Piece& holed = piece(laid, "A2");
  REQUIRE(holed.rings.size() == 2);
  CHECK(holed.rings[1].size() == 4);
  CHECK(holed.kind == PieceKind::Notched);
  CHECK(holed.area == (holed.right - holed.left) * Length::feet(12, 1, 48) - Length::feet(1) * Length::feet(1));
  accountCloses(laid);
}

TEST_CASE("an opening that reaches the floor is cut down to the sheet's lower end") {
  Job job = examples::freeWall(Length::feet(9));
  job.walls[0].openings = {opening("D1", Length::feet(4), Length(), Length::feet(1), Length::feet(7))};
  const WallLayout laid = layout(job);
  const Piece& notched = piece(laid, "A2");
  REQUIRE(notched.rings.size() == 1);
  CHECK(notched.rings[0].size() == 8);
  CHECK(laid.runs[0].cut == Length::feet(1) * (Length::feet(7) + Length::inches(1, 48)));
  accountCloses(laid);
}

TEST_CASE("the cut stands off the steel by the clearances: jamb 1/4, head 1/2, sill 0 in") {
  Job job = examples::freeWall(Length::feet(9));
  job.walls[0].openings = {opening("W1", Length::feet(4), Length::feet(4), Length::feet(1), Length::feet(1))};
  job.walls[0].openings[0].clearances = {};
  const WallLayout laid = layout(job);
  CHECK(laid.cuts[0].left == Length::feet(4) - Length::inches(0, 16));
  CHECK(laid.cuts[0].right == Length::feet(5) + Length::inches(0, 16));
  CHECK(laid.cuts[0].bottom == Length::feet(4));
  CHECK(laid.cuts[0].top == Length::feet(5) + Length::inches(0, 32));
}

// Flush start: sheet 1's metal ends at 38-1/4 in, sheet 2's begins at 36 in.
TEST_CASE("a leg that the neighbour covers wholly is cut away with the opening") {
  Job job = examples::freeWall(Length::feet(9));
  SECTION("the opening ends in the lap: the earlier sheet's strip goes") {
    job.walls[0].openings = {opening("W1", Length::inches(12), Length::feet(4), Length::inches(25), Length::feet(2))};
    const WallLayout laid = layout(job);
    CHECK(piece(laid, "A1").rings[0].size() == 8);  // a notch open to its leading edge
    CHECK(piece(laid, "A1").rings.size() == 1);
    CHECK(piece(laid, "A2").rings[0].size() == 8);  // notched by what the opening takes of it
    accountCloses(laid);
  }
  SECTION("the opening begins in the lap: the later sheet's strip goes") {
    job.walls[0].openings = {opening("W1", Length::inches(37), Length::feet(4), Length::inches(20), Length::feet(2))};
    const WallLayout laid = layout(job);
    CHECK(piece(laid, "A2").rings.size() == 1);
    CHECK(piece(laid, "A2").rings[0].size() == 8);
    accountCloses(laid);
  }
  SECTION("between two openings one of the two strips stays") {
    job.walls[0].openings = {
        opening("W1", Length::inches(12), Length::feet(4), Length::inches(25), Length::feet(2)),
        opening("W2", Length::inches(37, 32), Length::feet(4), Length::inches(12), Length::feet(2))};
    accountCloses(layout(job));
  }
}

TEST_CASE("a round pipe: no metal inside the circle, a hair more than the circle cut") {
  Job job = examples::freeWall(Length::feet(9));
  Penetration pipe;
  pipe.id = "P1";
  pipe.place.distance = Length::feet(4, 6);
  pipe.centre = Length::feet(5);
  pipe.width = pipe.height = Length::inches(6);
  pipe.clearance = Length::inches(0, 32);
  job.walls[0].penetrations = {pipe};
  const WallLayout laid = layout(job);
  const Piece& holed = piece(laid, "A2");
  REQUIRE(holed.rings.size() == 2);
  CHECK(holed.rings[1].size() == 24);
  const double circle = 3.14159265358979 * 3.5 * 3.5;
  const double cut = laid.runs[0].cut.inSquareFeet() * 144;
  CHECK(cut > circle);
  CHECK(cut < circle * 1.006);  // 24 tan(7.5 deg) / pi = 1.0058
  for (const FaceVertex& vertex : holed.rings[1]) {
    const double du = (vertex.u - Length::feet(4, 6)).inInches(), dz = (vertex.z - Length::feet(5)).inInches();
    CHECK(du * du + dz * dz >= 3.5 * 3.5);
  }
  accountCloses(laid);
}

TEST_CASE("openings touching, at a corner, cut by the rake, reaching the top") {
  Job job = examples::gable40();
  job.walls[0].openings = {opening("W1", Length(), Length::feet(3), Length::feet(4), Length::feet(4)),
                           opening("W2", Length::feet(4), Length::feet(3), Length::feet(4), Length::feet(4)),
                           opening("W3", Length::feet(10), Length::feet(12), Length::feet(5), Length::feet(5)),
                           opening("D1", Length::feet(30), Length(), Length::feet(8), Length::feet(20))};
  const WallLayout laid = layout(job);
  accountCloses(laid);
  for (const Piece& one : laid.pieces) {
    for (const Cell& cell : one.cells) {
      for (const CutRegion& cut : laid.cuts) {
        const bool inside = cell.left >= cut.left && cell.right <= cut.right &&
                            (cut.reachesFloor || cell.bottomLeft >= cut.bottom) && cell.topLeft <= cut.top;
        CHECK_FALSE(inside);
      }
    }
  }
}

TEST_CASE("a module wholly inside an opening from floor to top is not hung") {
  Job job = examples::freeWall(Length::feet(18));
  job.walls[0].openings = {opening("D1", Length::feet(2), Length(), Length::feet(10), Length::feet(14))};
  const WallLayout laid = layout(job);
  // Sheets 2 and 3 of six lie within 24 .. 144 in; the fourth would keep 2-1/4 in that the fifth covers wholly.
  CHECK(laid.runs[0].modules.size() == 3);
  CHECK(laid.pieces.back().mark == "A3");
  accountCloses(laid);
}

TEST_CASE("bands: each has its own run, numbered on in hanging order") {
  Job job = examples::freeWall(Length::feet(9));
  Band upper = job.walls[0].bands[0];
  upper.from = Length::feet(4);
  upper.gap = Length::inches(0, 16);
  job.walls[0].bands.push_back(upper);
  const WallLayout laid = layout(job);
  REQUIRE(laid.runs.size() == 2);
  CHECK(marks(laid) == std::vector<std::string>{"A1", "A2", "A3", "A4", "A5", "A6"});
  CHECK(piece(laid, "A1").top == Length::feet(4));
  CHECK(piece(laid, "A4").bottom == Length::feet(4, 0, 16));
  CHECK(piece(laid, "A4").kind == PieceKind::Full);
  accountCloses(laid);
}

TEST_CASE("an expansion joint ends one run and starts the next") {
  Job job = examples::freeWall(Length::feet(40));
  job.walls[0].expansionJoints = {Length::feet(15)};
  job.walls[0].hang = Hang::RightToLeft;
  const WallLayout laid = layout(job);
  REQUIRE(laid.runs.size() == 2);
  CHECK(laid.runs[0].left == Length::feet(15));  // hung first: it holds the start corner
  CHECK(laid.pieces.front().right == Length::feet(40));
  CHECK(laid.runs[1].modules.front().metalRight == Length::feet(15));
  accountCloses(laid);
}

// UFGS 07413 3.1.1.1: screws about 2 in from the end of the overlapping sheet; end lap 4 in, common practice.
TEST_CASE("sheets too long lap end over end on a girt's row") {
  Job job = examples::freeWall(Length::feet(9), {{Length(), Length::feet(60)}, {Length::feet(9), Length::feet(60)}});
  Girt girt;
  for (const int feet : {7, 15, 24, 33, 45}) {
    girt.id = "g" + std::to_string(feet);
    girt.height = Length::feet(feet);
    job.walls[0].girts.push_back(girt);
  }
  const WallLayout laid = layout(job);
  REQUIRE(laid.runs[0].lapEnds == std::vector<Length>{Length::feet(33) - Length::inches(2)});
  CHECK(marks(laid) == std::vector<std::string>{"A1.1", "A1.2", "A2.1", "A2.2", "A3.1", "A3.2"});
  CHECK(piece(laid, "A1.1").top == Length::feet(33, 2));
  CHECK(piece(laid, "A1.2").bottom == Length::feet(32, 10));
  CHECK(piece(laid, "A1.1").kind == PieceKind::Full);
  accountCloses(laid);
  job.walls[0].endLaps.order = EndLaps::Order::TierByTier;
  CHECK(marks(layout(job)) == std::vector<std::string>{"A1.1", "A2.1", "A3.1", "A1.2", "A2.2", "A3.2"});
  job.walls[0].endLaps = {};
  job.walls[0].endLaps.where = EndLaps::Where::AtGirts;
  job.walls[0].endLaps.girts = {"g15", "g45"};
  CHECK(layout(job).pieces.size() == 9);
  job.walls[0].endLaps.where = EndLaps::Where::None;
  CHECK(layout(job).pieces.size() == 3);
}

TEST_CASE("trimmed in place, a rake piece gets the allowance; a level one does not") {
  Job job = examples::gable40();
  job.walls[0].rakeCut = RakeCut::InPlace;
  CHECK(layout(job).pieces[0].blankLength == Length::inches(160, 32));
  Job level = examples::freeWall(Length::feet(9));
  level.walls[0].rakeCut = RakeCut::InPlace;
  CHECK(layout(level).pieces[0].blankLength == Length::inches(146));
}
