#include "core/layout/crossing.h"

namespace ribwright {

Straight straightAt(const HeightLine& line, Length u, Beside side) {
  const auto& vertices = line.vertices();
  const Length z = line.heightAt(u, side);
  if (line.isLevelAt(u, side)) return {{u, z}, {u, z}};
  const auto segment = static_cast<std::size_t>(line.segmentAt(u, side));
  return {vertices[segment], vertices[segment + 1]};
}

bool isFlatter(const Straight& one, const Straight& other) {
  if (one.level() || other.level()) return one.level();
  const auto size = [](Length length) { return Int128(absolute(length).nanometres()); };
  return size(one.b.z - one.a.z) * size(other.b.u - other.a.u) <= size(other.b.z - other.a.z) * size(one.b.u - one.a.u);
}

std::optional<Length> crossing(const Straight& one, const Straight& other) {
  if (one.level() && other.level()) return std::nullopt;
  const Straight& sloped = one.level() ? other : one;
  const Straight& line = one.level() ? one : other;
  const FaceVertex& low = sloped.a.z < sloped.b.z ? sloped.a : sloped.b;
  const FaceVertex& high = sloped.a.z < sloped.b.z ? sloped.b : sloped.a;
  const Int128 rise = (high.z - low.z).nanometres(), run = (high.u - low.u).nanometres();
  Int128 above = 0, below = 0;
  if (line.level()) {
    above = Int128((line.a.z - low.z).nanometres()) * run;
    below = rise;
  } else {
    const Int128 otherRise = (line.b.z - line.a.z).nanometres(), otherRun = (line.b.u - line.a.u).nanometres();
    above = run * (Int128((line.a.z - low.z).nanometres()) * otherRun + otherRise * (low.u - line.a.u).nanometres());
    below = rise * otherRun - otherRise * run;
  }
  if (below == 0) return std::nullopt;
  return low.u + Length::nanometres(static_cast<std::int64_t>(roundHalfEven(above, below)));
}

}  // namespace ribwright
