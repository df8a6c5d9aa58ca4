// Layouts written by hand, as small as an order needs them: one run, plain boxes and their cuts.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "core/job/job.h"
#include "core/layout/wall_layout.h"

namespace ribwright {

inline Length inch(std::int64_t whole, std::int64_t sixtyFourths = 0) { return Length::inches(whole, sixtyFourths); }

// 36 in cover, lip 1-1/2, leg 3/4; a section whose developed width is 40 in: the metal's 38-1/4 and 1-3/4 up an upright
// side.
inline Profile ribbed(const std::string& id = "rib-36") {
  Profile profile;
  profile.id = id;
  profile.cover = inch(36);
  profile.over = inch(1, 32);
  profile.under = inch(0, 48);
  profile.section = {
      {-profile.over, Length()}, {inch(10), Length()}, {inch(10), inch(1, 48)}, {inch(36, 48), inch(1, 48)}};
  profile.thickness = Length::nanometres(500'000);
  profile.coatingGramsPerSquareMetre = 275;
  return profile;
}

inline Band band(const std::string& colour, const std::string& profile = "rib-36") {
  Band band;
  band.profile = profile;
  band.colour = colour;
  return band;
}

// Walls by letter, each with one band of one colour.
inline Job jobOf(const std::vector<std::pair<std::string, std::string>>& lettersAndColours) {
  Job job;
  job.profiles = {ribbed()};
  for (const auto& [letter, colour] : lettersAndColours) {
    Wall wall;
    wall.letter = letter;
    wall.bands = {band(colour)};
    job.walls.push_back(wall);
  }
  return job;
}

// An empty wall of one run of `sheets` modules of 36 in from u = 0 (hung right to left: from u = 36 x sheets).
inline WallLayout wallOf(const std::string& letter, int sheets, Hand hand = Hand::LeftToRight) {
  WallLayout wall;
  wall.letter = letter;
  wall.direction.hand = hand;
  wall.sheeted = true;
  SheetRun run;
  for (int i = 0; i < sheets; ++i) {
    const bool rightward = hand == Hand::LeftToRight;
    Module module;
    module.number = i + 1;
    module.startLine = inch(36) * (rightward ? i : sheets - i);
    module.leadLine = inch(36) * (rightward ? i + 1 : sheets - i - 1);
    run.modules.push_back(module);
  }
  wall.runs = {run};
  return wall;
}

inline Ring box(Length left, Length right, Length bottom, Length top) {
  return {{left, bottom}, {left, top}, {right, top}, {right, bottom}};
}

// The next sheet of the wall, whole: full metal width from `bottom`, as long as its blank.
inline Piece& hangWhole(WallLayout& wall, Length length, Length bottom = Length()) {
  const auto number = wall.pieces.size();
  const Module& module = wall.runs.front().modules.at(number);
  const bool rightward = wall.direction.hand == Hand::LeftToRight;
  Piece piece;
  piece.module = static_cast<int>(number);
  piece.mark = wall.letter + std::to_string(module.number);
  piece.hangOrder = module.number;
  piece.left = rightward ? module.startLine - inch(1, 32) : module.leadLine - inch(0, 48);
  piece.right = rightward ? module.leadLine + inch(0, 48) : module.startLine + inch(1, 32);
  piece.bottom = bottom;
  piece.top = bottom + length;
  piece.blankLength = length;
  piece.rings = {box(piece.left, piece.right, piece.bottom, piece.top)};
  return wall.pieces.emplace_back(std::move(piece));
}

// A window-like notch in the leading edge, `wide` from it, between two heights above the piece's lowest end.
inline void notchLeadingEdge(Piece& piece, Hand hand, Length wide, Length low, Length high) {
  const Length b = piece.bottom, t = piece.top, z0 = b + low, z1 = b + high;
  const Length l = piece.left, r = piece.right;
  if (hand == Hand::LeftToRight) {
    piece.rings = {{{l, b}, {l, t}, {r, t}, {r, z1}, {r - wide, z1}, {r - wide, z0}, {r, z0}, {r, b}}};
  } else {
    piece.rings = {{{l, b}, {l, z0}, {l + wide, z0}, {l + wide, z1}, {l, z1}, {l, t}, {r, t}, {r, b}}};
  }
  piece.notched = true;
  piece.kind = PieceKind::Notched;
}

}  // namespace ribwright
