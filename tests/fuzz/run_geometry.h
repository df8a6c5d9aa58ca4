// One run as the trade's rules describe it, ready to be asked what covers a place: face, cuts, sheets, legs cut away,
// end laps.
#pragma once

#include <optional>
#include <vector>

#include "tests/fuzz/stated_run.h"

namespace ribwright::fuzz {

// The heights of a line at both sides of an upright slab.
struct Heights {
  Nm left = 0, right = 0;
  Nm sum() const { return left + right; }
  bool operator==(const Heights&) const = default;
};

struct Slab {
  Nm left = 0, right = 0;
  const Segment& over(const StatedLine& line) const { return line.segmentAt(left, Side::Right); }
  Heights across(const StatedLine& line) const { return {over(line).heightAt(left), over(line).heightAt(right)}; }
};

// One of the lengths that a sheet is divided into where it laps end over end: all of its metal from z to z.
struct Tier {
  int number = 0;
  Nm from = kBelowAll, to = -kBelowAll;
};

// A sheet of the run, its metal in u.
struct SheetMetal {
  Nm left = 0, right = 0;
  std::vector<Tier> tiers;  // rising
};

// Where a sheet has no metal though no opening is there: a leg beside an opening that the neighbour covers wholly.
struct LegCutAway {
  std::size_t sheet = 0;
  Nm left = 0, right = 0;
  StatedLine lower, upper;
};

struct RunGeometry {
  const StatedFace* face = nullptr;
  Nm left = 0, right = 0;  // of what is sheeted, in u
  std::optional<Nm> floor, ceiling;
  std::vector<StatedCut> cuts;
  std::vector<SheetMetal> sheets;  // in hanging order
  std::vector<LegCutAway> legs;
  std::vector<Nm> lapEnds;
  Nm lap = 0;
};

// Legs in the laps between consecutive sheets.
std::vector<LegCutAway> legsCutAway(const RunGeometry& run, Hand hand);

// Every u at which a line of the run bends, steps, begins, ends or crosses another. A crossing that lies within a
// nanometre of one of `found` is taken to be that one.
std::vector<Nm> breaksOf(const RunGeometry& run, const std::vector<Nm>& found);

}  // namespace ribwright::fuzz
