// Every place where supports, pattern and sheets ask for a screw, in the order in which they are taken.
#pragma once

#include <vector>

#include "tests/fuzz/screwed_wall.h"

namespace ribwright::fuzz {

struct AskedPlace {
  HoleKind kind = HoleKind::Girt;
  int row = -1, stretch = -1, screw = 0, run = 0;
  int module = 0;  // whose pattern asks
  Nm u = 0, z = 0, x = 0;
  bool inPlace = false, corner = false;
  Nm slack = 0;  // how far z may be off: it was measured from a sloped edge
};

HoleKind holeKind(SupportKind kind);
// In HoleKind's order, eave and rake alike, girt and end lap alike, head and sill alike.
int rankOf(HoleKind kind);

// On rows of steel: one rank after the other, run by run, row by row, module by module, x rising.
std::vector<AskedPlace> steelPlaces(const ScrewedWall& wall);

// z of the end lap that a module has on one of the stretch's girts.
std::optional<Nm> lapOn(const ScrewedWall& wall, const Stretch& stretch, const ScrewedModule& module);

// u of what the cut beside a jamb leaves of its flange to the sheets.
Span flangeBesideCut(const ScrewedWall& wall, const JambFlange& jamb);

// Jamb rows of one run; `noSeat`: jambs on which the run's sheets have no flat.
struct JambPlaces {
  std::vector<AskedPlace> places;
  std::vector<int> noSeat;
};
JambPlaces jambPlaces(const ScrewedWall& wall, const ScrewedRun& run);

// A lap between two modules, and the line on it where both have a crown.
struct LapLine {
  int later = 0;  // module; the earlier one is the one before
  Nm u = 0;
  std::vector<Stand> stands;  // where both have metal
};
struct LapLines {
  std::vector<LapLine> lines;
  bool noCrown = false;       // some lap has no crown flat through both sheets
  bool noCrownThere = false;  // and both have metal at one height beside its middle
};
LapLines lapLines(const ScrewedWall& wall, const ScrewedRun& run);

}  // namespace ribwright::fuzz
