// What follows for one wall: which way it hangs, its sheets, pieces and cuts. Everything here is in the wall face seen
// from outside (u to the right from the left corner, z up from the top of concrete), in exact lengths.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/layout/height_line.h"
#include "core/layout/wall_face.h"
#include "core/units/area.h"

namespace ribwright {

enum class Hand { LeftToRight, RightToLeft };

// Why a wall hangs as it does.
enum class HandReason { SightPoint, Wind, Default, Typed };

struct HangDirection {
  Hand hand = Hand::LeftToRight;
  HandReason reason = HandReason::Default;
  bool againstRule = false;  // typed, and the rule would say the other hand
  bool operator==(const HangDirection&) const = default;
};

// A trapezoid with upright sides, the smallest part of a wall face.
struct Cell {
  Length left, right;              // u
  Length bottomLeft, bottomRight;  // z
  Length topLeft, topRight;
  Area area() const { return Area::trapezoid(topLeft - bottomLeft, topRight - bottomRight, right - left); }
  bool operator==(const Cell&) const = default;
};

// Closed, clockwise seen from outside, last point not repeated, no vertex on a straight side.
using Ring = std::vector<FaceVertex>;

enum class PieceKind { Full, Rip, Rake, Notched, Above, Below, Mixed };

struct Piece {
  std::string mark;   // "B7"; "B7.1", "B7.2" from the bottom when the sheet is in several pieces
  int run = 0;        // index into WallLayout::runs
  int module = 0;     // index into SheetRun::modules
  int tier = 0;       // 0 lowest; above 0 when the sheet laps end over end
  int hangOrder = 0;  // 1, 2 ... over the wall

  Length left, right;          // extent of the metal in u
  Length bottom, top;          // lowest and highest z
  Length lowEdge, highEdge;    // lowest and highest z of its top edge
  Length leftEdge, rightEdge;  // z of the top edge at its left and right end
  Length peak;                 // u of the top edge's highest point (the one nearest the starting edge)
  Length blankLength;          // what the blank must measure: height + allowance, up to the profile's increment

  bool rip = false, rake = false, notched = false, above = false, below = false;
  PieceKind kind = PieceKind::Full;
  bool startingEdgeFactory = true, leadingEdgeFactory = true, lowerEndFactory = true;

  std::vector<Cell> cells;  // sorted by left, then bottom
  std::vector<Ring> rings;  // first the outer one, then inner ones
  Area area;
};

// One sheet of the run, before openings divide it.
struct Module {
  int number = 0;                // hanging number over the wall: 1, 2 ... as in the mark
  Length startLine;              // u of its module line at the starting side
  Length leadLine;               // u of the next module line
  Length metalLeft, metalRight;  // u of its metal edges, cut to the wall and its reach
  bool hung = false;             // a fact from site
  bool translucent = false;
  bool tiered = false;                           // laps end over end
  bool startRipped = false, leadRipped = false;  // factory edge cut away at that side
};

// One run of sheets: from corner to corner, or to an expansion joint, in one band.
struct SheetRun {
  int band = 0;                // index into Wall::bands
  Length left, right;          // u limits of the run: corners or joints
  Length offset;               // from the start corner to the first module line, 0 <= offset < cover
  Length faceLeft, faceRight;  // u limits of what is sheeted: left and right, grown where metal reaches around a corner
  bool startFollowed = true;   // the start rule had what it goes by; otherwise the run starts flush
  HeightLine bottom, top;      // of the wall
  std::optional<Length> floor, ceiling;  // band limits that clamp bottom and top
  std::vector<Length> lapEnds;           // z of upper sheets' lower ends where sheets lap end over end, rising
  std::vector<Module> modules;           // in hanging order
  // Exact account of this run: pieces = net + laps, net = face - cut, uncovered = net face without a sheet (0 unless
  // facts from site left a gap).
  Area face, cut, net, laps, pieces, uncovered;
};

// An opening's or penetration's cut region: what no sheet may cover.
struct CutRegion {
  std::string id;  // of the opening or penetration
  bool penetration = false;
  bool round = false;  // then lower and upper are its polygon, and no leg beside it is cut away
  bool reachesFloor = false;
  Length left, right;       // u
  Length bottom, top;       // z of its box (bottom means nothing when it reaches the floor)
  HeightLine lower, upper;  // its outline between left and right; level for all but round penetrations
  std::optional<Length> steelLeft, steelRight, steelBottom, steelTop;  // of the opening as stated
};

struct WallLayout {
  std::string letter;
  WallFace face;
  HangDirection direction;
  std::vector<CutRegion> cuts;
  std::vector<SheetRun> runs;
  std::vector<Piece> pieces;  // in hanging order
  bool sheeted = false;
};

// Of the walls of a building, in their order.
using Layouts = std::vector<const WallLayout*>;

}  // namespace ribwright
