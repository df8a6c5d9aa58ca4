// Lines of heights as the trade's rules define them, in exact integers: this is the checker's own, nothing of
// core/layout.
//
// Unit: nanometres. Products go through 128 bits.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "tests/fuzz/nanometres.h"

namespace ribwright::fuzz {

// Lower than any wall: an opening that reaches the floor has no lower edge.
inline constexpr Nm kBelowAll = -(Nm(1) << 40);

// A tie goes to the even neighbour; below > 0.
inline Int128 toNearestEven(Int128 above, Int128 below) {
  Int128 down = above / below;
  if (above % below < 0) --down;
  const Int128 twice = 2 * (above - down * below);
  if (twice > below) return down + 1;
  if (twice < below) return down;
  return down % 2 == 0 ? down : down + 1;
}

// A straight part of a line, u0 < u1.
struct Segment {
  Nm u0 = 0, z0 = 0, u1 = 1, z1 = 0;

  bool level() const { return z0 == z1; }
  // The trade's rules, measured from the lower end; goes straight on beyond both ends.
  Nm heightAt(Nm u) const {
    if (level()) return z0;
    const bool rising = z1 > z0;
    const Int128 along = rising ? Int128(u) - u0 : Int128(u1) - u;
    const Int128 rise = rising ? Int128(z1) - z0 : Int128(z0) - z1;
    return (rising ? z0 : z1) + static_cast<Nm>(toNearestEven(rise * along, Int128(u1) - u0));
  }
  // Sign of z minus the true height at u, without any rounding.
  int sideOf(Nm u, Nm z) const {
    const Int128 left = (Int128(z) - z0) * (Int128(u1) - u0);
    const Int128 right = (Int128(z1) - z0) * (Int128(u) - u0);
    return left < right ? -1 : left > right ? 1 : 0;
  }
  // How far a height may be off for one nanometre of u, rounded up, plus the nanometre of heightAt itself.
  Nm slack() const {
    const Int128 rise = z1 > z0 ? Int128(z1) - z0 : Int128(z0) - z1;
    return rise == 0 ? 0 : static_cast<Nm>(2 + rise / (Int128(u1) - u0));
  }
};

// Whether a is the flatter of the two.
inline bool flatter(const Segment& a, const Segment& b) {
  const auto rise = [](const Segment& s) { return s.z1 > s.z0 ? Int128(s.z1) - s.z0 : Int128(s.z0) - s.z1; };
  return rise(a) * (Int128(b.u1) - b.u0) < rise(b) * (Int128(a.u1) - a.u0);
}

// u where two lines cross, rounded half to even from the sloped line's lower end when one of them is level.
inline std::optional<Nm> crossing(const Segment& a, const Segment& b) {
  if (a.level()) return b.level() ? std::nullopt : crossing(b, a);
  const Int128 runA = Int128(a.u1) - a.u0, riseA = Int128(a.z1) - a.z0;
  const Int128 runB = Int128(b.u1) - b.u0, riseB = Int128(b.z1) - b.z0;
  const Nm origin = riseA > 0 ? a.u0 : a.u1, height = riseA > 0 ? a.z0 : a.z1;
  // With u measured from `origin`: height + u riseA / runA = b.z0 + (u + origin - b.u0) riseB / runB.
  Int128 above = (Int128(b.z0) - height) * runB + (Int128(origin) - b.u0) * riseB;
  Int128 below = riseA * runB - riseB * runA;
  if (below == 0) return std::nullopt;
  above *= runA;
  if (below < 0) {
    above = -above;
    below = -below;
  }
  return origin + static_cast<Nm>(toNearestEven(above, below));
}

enum class Side { Left, Right };

// Segments from left to right, each starting where the one before ends; heights may jump there (a step).
struct StatedLine {
  std::vector<Segment> segments;

  static StatedLine level(Nm z) { return {{Segment{0, z, 1, z}}}; }

  const Segment& segmentAt(Nm u, Side side) const {
    for (const Segment& segment : segments) {
      if (side == Side::Left ? u <= segment.u1 : u < segment.u1) return segment;
    }
    return segments.back();
  }
  Nm heightAt(Nm u, Side side) const { return segmentAt(u, side).heightAt(u); }
  // Where it bends or steps.
  std::vector<Nm> joints() const {
    std::vector<Nm> joints;
    for (std::size_t i = 1; i < segments.size(); ++i) joints.push_back(segments[i].u0);
    return joints;
  }
  StatedLine raised(Nm by) const {
    StatedLine line = *this;
    for (Segment& segment : line.segments) {
      segment.z0 += by;
      segment.z1 += by;
    }
    return line;
  }
};

}  // namespace ribwright::fuzz
