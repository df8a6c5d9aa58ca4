#include <catch2/catch.hpp>

#include <algorithm>

#include "core/takeoff/cut_shape.h"
#include "core/takeoff/sheet_order.h"
#include "walls_by_hand.h"

namespace ribwright {
namespace {

using Codes = std::vector<std::string>;

Codes codesOf(const WallLayout& wall) { return sheetOrder(jobOf({{wall.letter, "sand"}}), {&wall}).codes.front(); }

// The sheet's top follows a slope of its whole width: `atStart` below its top at the starting edge, level with it at
// the other.
void rakeTop(Piece& piece, Hand hand, Length atStart) {
  const Length low = piece.top - atStart;
  const bool rightward = hand == Hand::LeftToRight;
  piece.rings = {{{piece.left, piece.bottom},
                  {piece.left, rightward ? low : piece.top},
                  {piece.right, rightward ? piece.top : low},
                  {piece.right, piece.bottom}}};
  piece.rake = true;
  piece.kind = PieceKind::Rake;
}

TEST_CASE("Plain sheets bear the number of their line and nothing more") {
  WallLayout wall = wallOf("A", 3);
  for (const int length : {120, 144, 120}) hangWhole(wall, inch(length));
  CHECK(codesOf(wall) == Codes{"2", "1", "2"});
}

TEST_CASE("A sheet that is shorter than its blank is cut") {
  WallLayout wall = wallOf("A", 2);
  hangWhole(wall, inch(119, 32)).blankLength = inch(120);
  hangWhole(wall, inch(120));
  CHECK(codesOf(wall) == Codes{"1a", "1"});
}

TEST_CASE("Sheets cut alike share a code; letters follow the hanging order") {
  WallLayout wall = wallOf("A", 5);
  const Hand hand = Hand::LeftToRight;
  for (int i = 0; i < 5; ++i) hangWhole(wall, inch(120));
  notchLeadingEdge(wall.pieces[1], hand, inch(6), inch(30), inch(60));
  notchLeadingEdge(wall.pieces[2], hand, inch(8), inch(30), inch(60));
  notchLeadingEdge(wall.pieces[4], hand, inch(6), inch(30), inch(60));
  CHECK(codesOf(wall) == Codes{"1", "1a", "1b", "1", "1a"});
}

TEST_CASE("Shapes are compared to the nanometre") {
  WallLayout wall = wallOf("A", 2);
  for (int i = 0; i < 2; ++i)
    notchLeadingEdge(hangWhole(wall, inch(120)), Hand::LeftToRight, inch(6), inch(30), inch(60));
  wall.pieces[1].rings[0][4].z += Length::nanometres(1);
  CHECK(codesOf(wall) == Codes{"1a", "1b"});
}

TEST_CASE("A shape is taken from the piece's lowest end, wherever it hangs") {
  WallLayout wall = wallOf("A", 2);
  notchLeadingEdge(hangWhole(wall, inch(120)), Hand::LeftToRight, inch(6), inch(30), inch(60));
  notchLeadingEdge(hangWhole(wall, inch(120), inch(17)), Hand::LeftToRight, inch(6), inch(30), inch(60));
  CHECK(codesOf(wall) == Codes{"1a", "1a"});
}

// A wall hung right to left shows its sheets turned end for end: a notch 30 to 60 in up is then 60 to 90 in up of 120.
TEST_CASE("Sheets hung in opposite hands share a code when one serves for the other, and only then") {
  const Job job = jobOf({{"A", "sand"}, {"C", "sand"}});
  WallLayout rightward = wallOf("A", 3, Hand::LeftToRight), leftward = wallOf("C", 4, Hand::RightToLeft);
  const auto notch = [](Piece& piece, Hand hand, int low, int high) {
    notchLeadingEdge(piece, hand, inch(6), inch(low), inch(high));
  };
  for (int i = 0; i < 3; ++i) hangWhole(rightward, inch(120));
  notch(rightward.pieces[0], Hand::LeftToRight, 30, 60);
  notch(rightward.pieces[1], Hand::LeftToRight, 45, 75);
  rakeTop(rightward.pieces[2], Hand::LeftToRight, inch(12));
  for (int i = 0; i < 4; ++i) hangWhole(leftward, inch(120));
  notch(leftward.pieces[0], Hand::RightToLeft, 60, 90);
  notch(leftward.pieces[1], Hand::RightToLeft, 45, 75);
  rakeTop(leftward.pieces[2], Hand::RightToLeft, inch(12));
  notch(leftward.pieces[3], Hand::RightToLeft, 30, 60);
  const SheetOrder order = sheetOrder(job, {&rightward, &leftward});
  CHECK(order.codes == std::vector<Codes>{{"1a", "1b", "1c"}, {"1a", "1b", "1d", "1e"}});
}

// A start rip keeps the leg edge, an end rip the lip edge: of one size they are still not the same sheet.
TEST_CASE("Rips of one width that keep different edges are different shapes") {
  WallLayout wall = wallOf("A", 3);
  Piece& startRip = hangWhole(wall, inch(120));
  startRip.left = startRip.right - inch(12);
  startRip.rings = {box(startRip.left, startRip.right, startRip.bottom, startRip.top)};
  startRip.kind = PieceKind::Rip;
  hangWhole(wall, inch(120));
  Piece& endRip = hangWhole(wall, inch(120));
  endRip.right = endRip.left + inch(12);
  endRip.rings = {box(endRip.left, endRip.right, endRip.bottom, endRip.top)};
  endRip.kind = PieceKind::Rip;
  CHECK(codesOf(wall) == Codes{"1a", "1", "1b"});
}

TEST_CASE("A ring is the same ring wherever it begins, and holes are the same in any order") {
  WallLayout wall = wallOf("A", 1);
  Piece piece = hangWhole(wall, inch(120));
  piece.rings.push_back(box(inch(5), inch(7), inch(20), inch(22)));
  piece.rings.push_back(box(inch(15), inch(17), inch(50), inch(52)));
  const Module& module = wall.runs[0].modules[0];
  const CutShape shape = cutShape(piece, module, Hand::LeftToRight);
  Piece turned = piece;
  std::rotate(turned.rings[0].begin(), turned.rings[0].begin() + 2, turned.rings[0].end());
  std::rotate(turned.rings[2].begin(), turned.rings[2].begin() + 1, turned.rings[2].end());
  std::swap(turned.rings[1], turned.rings[2]);
  CHECK(cutShape(turned, module, Hand::LeftToRight) == shape);
  turned.rings[1][0].u += Length::nanometres(1);
  CHECK_FALSE(cutShape(turned, module, Hand::LeftToRight) == shape);
}

// A ring may touch itself: passing its least corner twice, it is still the same wherever it begins.
TEST_CASE("A ring that passes its first corner twice is the same from either pass") {
  WallLayout wall = wallOf("A", 1);
  Piece piece = hangWhole(wall, inch(120));
  piece.bottom = Length();
  const FaceVertex pinch{inch(0), inch(50)};
  piece.rings = {
      {pinch, {inch(10), inch(60)}, {inch(20), inch(50)}, pinch, {inch(20), inch(40)}, {inch(10), inch(30)}}};
  Piece turned = piece;
  std::rotate(turned.rings[0].begin(), turned.rings[0].begin() + 3, turned.rings[0].end());
  const Module& module = wall.runs[0].modules[0];
  CHECK(cutShape(piece, module, Hand::LeftToRight) == cutShape(turned, module, Hand::LeftToRight));
}

TEST_CASE("Letters begin anew in each line") {
  WallLayout wall = wallOf("A", 3);
  for (const int length : {120, 144, 144}) {
    notchLeadingEdge(hangWhole(wall, inch(length)), Hand::LeftToRight, inch(length, length), inch(30), inch(60));
  }
  notchLeadingEdge(wall.pieces[2], Hand::LeftToRight, inch(3), inch(30), inch(60));
  CHECK(codesOf(wall) == Codes{"2a", "1a", "1b"});
}

// z is followed by aa, az by ba, zz by aaa.
TEST_CASE("After z the letters go on with aa") {
  constexpr int shapes = 26 + 26 * 26 + 1;
  WallLayout wall = wallOf("A", shapes);
  for (int i = 0; i < shapes; ++i) {
    notchLeadingEdge(hangWhole(wall, inch(120)), Hand::LeftToRight, inch(1, i), inch(30), inch(60));
  }
  const Codes codes = codesOf(wall);
  CHECK(codes[0] == "1a");
  CHECK(codes[25] == "1z");
  CHECK(codes[26] == "1aa");
  CHECK(codes[51] == "1az");
  CHECK(codes[52] == "1ba");
  CHECK(codes[26 + 26 * 26 - 1] == "1zz");
  CHECK(codes[26 + 26 * 26] == "1aaa");
}

TEST_CASE("The same layouts give the same order") {
  const Job job = jobOf({{"A", "sand"}});
  WallLayout wall = wallOf("A", 12);
  for (int i = 0; i < 12; ++i) {
    notchLeadingEdge(hangWhole(wall, inch(120 + i % 3)), Hand::LeftToRight, inch(1 + i % 4), inch(30), inch(60));
  }
  const SheetOrder first = sheetOrder(job, {&wall}), second = sheetOrder(job, {&wall});
  CHECK(first.codes == second.codes);
  CHECK(first.codes.front() == Codes{"3a", "2a", "1a", "3b", "2b", "1b", "3c", "2c", "1c", "3d", "2d", "1d"});
}

}  // namespace
}  // namespace ribwright
