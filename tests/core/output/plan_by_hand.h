// A plan written by hand: two walls with a few pieces each, as no layout would give them together, so that every column
// of the tables has a figure of its own.
#pragma once

#include <memory>

#include "core/plan/plan.h"

namespace ribwright {

// A rectangle with its lower left corner at (left, bottom).
inline Ring box(Length left, Length right, Length bottom, Length top) {
  return {{left, bottom}, {left, top}, {right, top}, {right, bottom}};
}

// Wall A, 12 ft wide, hung left to right: A1 is full; A2 is a rake sheet over metal from 34-1/2 to 72-3/4 in.
inline WallLayout frontByHand() {
  WallLayout wall;
  wall.letter = "A";
  wall.sheeted = true;
  SheetRun run;
  run.modules.resize(2);
  run.modules[0].number = 1;
  run.modules[1].number = 2;
  wall.runs = {run};

  Piece full;
  full.mark = "A1";
  full.hangOrder = 1;
  full.left = Length();
  full.right = Length::inches(38, 16);
  full.bottom = Length::inches(-1, -48);
  full.top = full.lowEdge = full.highEdge = full.leftEdge = full.rightEdge = Length::feet(12);
  full.peak = Length();
  full.blankLength = Length::inches(146);
  full.kind = PieceKind::Full;
  full.rings = {box(full.left, full.right, full.bottom, full.top)};

  Piece rake;
  rake.mark = "A2";
  rake.module = 1;
  rake.hangOrder = 2;
  rake.left = Length::inches(34, 32);
  rake.right = Length::inches(72, 48);
  rake.bottom = Length::inches(-1, -48);
  rake.top = rake.highEdge = rake.rightEdge = Length::inches(168, 16);
  rake.lowEdge = rake.leftEdge = Length::inches(155, 32);
  rake.peak = rake.right;
  rake.blankLength = Length::inches(170);
  rake.rake = true;
  rake.kind = PieceKind::Rake;
  // As a layout may give it: beginning anywhere.
  rake.rings = {
      {{rake.right, rake.rightEdge}, {rake.right, rake.bottom}, {rake.left, rake.bottom}, {rake.left, rake.leftEdge}}};
  full.area = Area::trapezoid(Length::inches(145, 48), Length::inches(145, 48), Length::inches(38, 16));
  rake.area = Area::trapezoid(Length::inches(157, 16), Length::inches(170), Length::inches(38, 16));
  wall.pieces = {full, rake};
  return wall;
}

// Wall C hung right to left: C1 reaches from u = 100 in to 138-1/4 in, its upper left corner notched and a hole cut in
// it.
inline WallLayout backByHand() {
  WallLayout wall;
  wall.letter = "C";
  wall.sheeted = true;
  wall.direction.hand = Hand::RightToLeft;
  SheetRun run;
  run.modules.resize(1);
  run.modules[0].number = 1;
  wall.runs = {run};

  const auto in = [](std::int64_t whole, std::int64_t sixtyFourths = 0) { return Length::inches(whole, sixtyFourths); };
  Piece notched;
  notched.mark = "C1";
  notched.hangOrder = 1;
  notched.left = in(100);
  notched.right = in(138, 16);
  notched.bottom = in(10);
  notched.top = notched.highEdge = notched.rightEdge = in(130);
  notched.lowEdge = notched.leftEdge = in(90);
  notched.peak = in(138, 16);
  notched.blankLength = in(120);
  notched.rip = notched.notched = true;
  notched.kind = PieceKind::Mixed;
  notched.rings = {{{in(100), in(10)},
                    {in(100), in(90)},
                    {in(120), in(90)},
                    {in(120), in(130)},
                    {in(138, 16), in(130)},
                    {in(138, 16), in(10)}},
                   box(in(110), in(114), in(30), in(36))};
  notched.area = in(38, 16) * in(120) - in(20) * in(40) - in(4) * in(6);
  wall.pieces = {notched};
  return wall;
}

inline std::shared_ptr<const WallPlan> wallPlan(WallLayout layout) {
  WallPlan wall;
  wall.layout = std::move(layout);
  return std::make_shared<const WallPlan>(std::move(wall));
}

inline Plan planByHand() {
  Plan plan;
  plan.walls = {wallPlan(frontByHand()), wallPlan(backByHand())};
  OrderLine steel;
  steel.line = 1;
  steel.profile = "rib-36-1.25-at-12";
  steel.colour = "barn red, dark";
  steel.thickness = Length::nanometres(546'100);  // 0.0215 in
  steel.length = Length::feet(14, 2);
  steel.metalWidth = Length::inches(38, 16);
  steel.marks = {"A1", "A2"};
  steel.coverArea = Length::feet(3) * steel.length * 2;
  steel.kilograms = 45.359237;
  OrderLine light = steel;
  light.line = 2;
  light.translucent = true;
  light.length = Length::feet(10, 0, 8);
  light.marks = {"C1"};
  light.coverArea = Length::feet(3) * light.length;
  light.kilograms = 0;  // not stated
  light.firstSheet = 2;
  plan.order.lines = {steel, light};
  for (const PieceRef& ref : {PieceRef{0, 0}, PieceRef{0, 1}, PieceRef{1, 0}}) {
    const int line = ref.wall, sheet = static_cast<int>(plan.order.sheets.size());
    const Piece& piece =
        plan.walls[static_cast<std::size_t>(ref.wall)]->layout.pieces[static_cast<std::size_t>(ref.piece)];
    Blank blank;
    blank.length = piece.blankLength;
    blank.parts.emplace_back().piece = ref;
    plan.order.blanks.push_back(blank);
    plan.order.sheets.push_back({line, ref, {sheet}, blank.length, {}});
    plan.order.places.push_back({line, sheet, {}});
  }
  plan.order.blankOf = {{0, 1}, {2}};
  plan.order.codes = {{"1a", "1b"}, {"2a"}};
  return plan;
}

}  // namespace ribwright
