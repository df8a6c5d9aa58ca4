// An upright slab of a run's face between two breaks, divided by every line that crosses it, and what the trade's rules
// want in each part. At a break where two lines cross, each takes its own rounded height there, clipped to the face.
#pragma once

#include <vector>

#include "core/layout/wall_layout.h"
#include "tests/fuzz/run_geometry.h"

namespace ribwright::fuzz {

// A trapezoid of one slab.
struct SlabPart {
  Heights low, high;
  // Four times the height of its middle.
  Nm middle() const { return low.sum() + high.sum(); }
  // In half square nanometres.
  Int128 area(const Slab& slab) const { return Int128(high.sum() - low.sum()) * (slab.right - slab.left); }
  bool holds(const SlabPart& other) const { return 2 * low.sum() < other.middle() && other.middle() < 2 * high.sum(); }
};

Cell cellOf(const Slab& slab, const SlabPart& part);
// Through an edge of positive length.
bool adjoin(const Cell& a, const Cell& b);

class SlabParts {
 public:
  // `used`: edges of the cells found there. An end lap divides the slab only where it bounds one of them: where others
  // cover a whole upper sheet, it is not hung, and nothing is cut there.
  SlabParts(const RunGeometry& run, const Slab& slab, const std::vector<Heights>& used);

  // Of the face; `high` is never below `low`.
  Heights low() const { return low_; }
  Heights high() const { return high_; }
  // Where a line passes over the slab, clipped to the face.
  Heights clipped(const StatedLine& line) const;
  // Rising, clipped to the face.
  const std::vector<Heights>& lines() const { return lines_; }
  // Those with an area.
  std::vector<SlabPart> parts() const;
  bool isCut(const SlabPart& part) const;
  bool inRange(std::size_t sheet) const;
  // The tiers of a sheet that have metal in this part.
  std::vector<int> tiers(std::size_t sheet, const SlabPart& part) const;

 private:
  void addSegments();
  Heights across(const StatedLine& line) const;
  Nm heightAt(const Segment& segment, Nm u) const;
  bool between(const StatedLine& lower, const StatedLine& upper, const SlabPart& part) const;

  const RunGeometry& run_;
  Slab slab_;
  std::vector<Segment> segments_;  // all that passes over the slab
  Heights low_, high_;
  std::vector<Heights> lines_;
};

}  // namespace ribwright::fuzz
