#include <catch2/catch.hpp>

#include "core/layout/start_offset.h"
#include "example_walls.h"
#include "laid_wall.h"

using namespace ribwright;

TEST_CASE("module line on the corner: a wall of n covers is n uncut sheets") {
  Job job = examples::freeWall(Length::feet(30));
  job.walls[0].start.rule = Start::Rule::ModuleLine;
  job.walls[0].reachLeft = job.walls[0].reachRight = Length::inches(1, 32);
  const WallLayout laid = layout(job);
  REQUIRE(laid.pieces.size() == 10);
  for (const Piece& piece : laid.pieces) CHECK(piece.kind == PieceKind::Full);
  CHECK(laid.pieces[0].left == -Length::inches(1, 32));
  CHECK(laid.pieces[9].right == Length::feet(30, 0, 48));
}

TEST_CASE("without reach the lip is cut at the corner") {
  Job job = examples::freeWall(Length::feet(30));
  job.walls[0].start.rule = Start::Rule::ModuleLine;
  CHECK(layout(job).pieces[0].kind == PieceKind::Rip);
}

TEST_CASE("equal rips: as many full sheets as leave each rip at least half a cover") {
  // 40 ft = 480 in = 12 x 36 + 48: two rips of 24 in.
  CHECK(equalRipsOffset(Length::feet(40), Length::inches(36)) == Length::inches(24));
  // 36 ft is 12 covers: 11 full and two rips of 18 in.
  CHECK(equalRipsOffset(Length::feet(36), Length::inches(36)) == Length::inches(18));
  Job job = examples::freeWall(Length::feet(40));
  job.walls[0].start.rule = Start::Rule::EqualRips;
  const WallLayout laid = layout(job);
  CHECK(laid.runs[0].modules.front().leadLine == Length::inches(24));
  CHECK(laid.runs[0].modules.back().startLine == Length::inches(480 - 24));
}

TEST_CASE("seam on the ridge and sheet on the ridge") {
  Job job = examples::gable40();
  job.walls[0].start.rule = Start::Rule::SeamOnRidge;
  const auto has = [](const WallLayout& laid, Length line) {
    for (const Module& module : laid.runs[0].modules) {
      if (module.startLine == line) return true;
    }
    return false;
  };
  CHECK(has(layout(job), Length::feet(20)));
  job.walls[0].start.rule = Start::Rule::SheetOnRidge;
  CHECK(has(layout(job), Length::feet(18, 6)));
}

TEST_CASE("hung right to left the run is the mirror of left to right") {
  Job job = examples::gable40();
  const WallLayout rightward = layout(job);
  job.walls[0].hang = Hang::RightToLeft;
  const WallLayout leftward = layout(job);
  REQUIRE(leftward.pieces.size() == rightward.pieces.size());
  for (std::size_t i = 0; i < leftward.pieces.size(); ++i) {
    CHECK(leftward.pieces[i].right == Length::feet(40) - rightward.pieces[i].left);
    CHECK(leftward.pieces[i].leftEdge == rightward.pieces[i].rightEdge);
    CHECK(leftward.pieces[i].blankLength == rightward.pieces[i].blankLength);
  }
}

TEST_CASE("seam beside a jamb: lip and leg end beyond the cut, no leg is left") {
  Job job = examples::freeWall(Length::feet(40));
  Opening door;
  door.id = "D1";
  door.kind = Opening::Kind::OverheadDoor;
  door.width = Length::feet(10);
  door.height = Length::feet(10);
  door.place.distance = Length::feet(14, 3);
  job.walls[0].openings = {door};
  job.walls[0].start = {Start::Rule::SeamAtJamb, {}, "D1", Start::Side::Left};
  const WallLayout laid = layout(job);
  const Length cut = Length::feet(14, 3) - Length::inches(0, 16);
  bool edgeOnCut = false;
  for (const Module& module : laid.runs[0].modules) edgeOnCut = edgeOnCut || module.metalLeft == cut;
  CHECK(edgeOnCut);
  job.walls[0].start.side = Start::Side::Right;
  const WallLayout other = layout(job);
  bool legOnCut = false;
  for (const Module& module : other.runs[0].modules)
    legOnCut = legOnCut || module.metalRight == Length::feet(24, 3, 16);
  CHECK(legOnCut);
}

TEST_CASE("a start with nothing to go by is flush and says so") {
  Job job = examples::freeWall(Length::feet(40));
  job.walls[0].start.rule = Start::Rule::SeamOnRidge;
  const WallLayout laid = layout(job);
  CHECK_FALSE(laid.runs[0].startFollowed);
  CHECK(laid.runs[0].offset == Length::inches(1, 32));
}

TEST_CASE("best of search is no worse than any start that has a name") {
  Job job = examples::freeWall(Length::feet(41));
  Opening window;
  window.id = "W1";
  window.width = Length::feet(6);
  window.height = Length::feet(4);
  window.sill = Length::feet(3);
  window.place.distance = Length::feet(9, 1);
  job.walls[0].openings = {window};
  const auto seamsNear = [&](const WallLayout& laid) {
    int near = 0;
    for (const Module& module : laid.runs[0].modules) {
      const Length before = laid.cuts[0].left - module.leadLine, after = module.leadLine - laid.cuts[0].right;
      near += before >= Length() && before < Length::inches(3);
      near += after >= Length() && after < Length::inches(3);
    }
    return near;
  };
  job.walls[0].start.rule = Start::Rule::BestOfSearch;
  const WallLayout best = layout(job);
  CHECK(seamsNear(best) == 0);
  for (const Start::Rule rule : {Start::Rule::Flush, Start::Rule::EqualRips}) {
    job.walls[0].start.rule = rule;
    const WallLayout other = layout(job);
    CHECK((seamsNear(other) > 0 || best.pieces.size() <= other.pieces.size()));
  }
}

TEST_CASE("a module whose metal adds no uncovered face is not hung") {
  // 36 in + leg 3/4 + lip 1-1/2: one flush sheet covers 38-1/4 in, so a wall of 38-1/4 needs one sheet, a hair more
  // needs two.
  CHECK(layout(examples::freeWall(Length::inches(38, 16))).pieces.size() == 1);
  CHECK(layout(examples::freeWall(Length::inches(38, 17))).pieces.size() == 2);
}

TEST_CASE("the run goes on from the last hung sheet's measured leading edge") {
  Job job = examples::freeWall(Length::feet(30));
  // Three sheets hung, each gained 1/8 in: the third's edge should be at 38-1/4 + 72 = 110-1/4 in.
  job.facts.hung = {{"A1", Length::inches(38, 24), "", ""},
                    {"A2", Length::inches(74, 32), "", ""},
                    {"A3", Length::inches(110, 40), "", ""}};
  const WallLayout laid = layout(job);
  CHECK(laid.runs[0].modules[2].hung);
  CHECK(laid.runs[0].modules[2].metalRight == Length::inches(110, 40));
  CHECK(laid.runs[0].modules[3].startLine == Length::inches(110, 40) - Length::inches(0, 48));
  CHECK_FALSE(laid.runs[0].modules[3].hung);
  CHECK(laid.pieces[2].mark == "A3");
}

TEST_CASE("a gap between hung sheets is seen") {
  Job job = examples::freeWall(Length::feet(30));
  job.facts.hung = {{"A1", Length::inches(38), "", ""}, {"A2", Length::inches(80), "", ""}};
  CHECK(layout(job).runs[0].uncovered > Area());
}

TEST_CASE("a measurement off the wall leaves the face open, and nothing is made up") {
  Job job = examples::freeWall(Length::feet(30));
  job.facts.hung = {{"A1", Length::feet(300), "", ""}};
  const WallLayout laid = layout(job);
  CHECK(laid.pieces.empty());
  CHECK(laid.runs[0].uncovered == laid.runs[0].net);
  CHECK(laid.runs[0].net == Length::feet(30) * Length::feet(12, 1, 48));
}

TEST_CASE("between two hung sheets of consecutive numbers nothing comes, and numbers stay") {
  Job job = examples::freeWall(Length::feet(40));
  Opening door;
  door.id = "D1";
  door.width = Length::feet(12);
  door.height = Length::feet(14);
  door.place.distance = Length::feet(9);
  job.walls[0].openings = {door};
  // Sheets inside the door, floor to top, have no number: A3 stands before it, A4 behind it.
  const WallLayout planned = layout(job);
  const Module& behind = planned.runs[0].modules[3];
  job.facts.hung = {{"A3", planned.runs[0].modules[2].metalRight - Length::inches(4), "", ""},
                    {"A4", behind.metalRight, "", ""}};
  const WallLayout laid = layout(job);
  REQUIRE(laid.runs[0].modules.size() >= 4);
  CHECK(laid.runs[0].modules[3].number == 4);
  CHECK(laid.runs[0].modules[3].metalRight == behind.metalRight);
}
