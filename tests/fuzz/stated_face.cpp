// The trade's rules: the line of the steel, the top and the bottom of the sheets.
#include <algorithm>

#include "tests/fuzz/stated_wall.h"

namespace ribwright::fuzz {
namespace {

Nm distance(const PlanPoint& a, const PlanPoint& b) {
  const Int128 x = Int128(nm(b.x)) - nm(a.x), y = Int128(nm(b.y)) - nm(a.y);
  const Int128 square = x * x + y * y;
  Int128 low = 0, high = Int128(1) << 50;
  while (low < high) {
    const Int128 middle = (low + high + 1) / 2;
    (middle * middle <= square ? low : high) = middle * middle <= square ? middle : middle - 1;
  }
  // To the nearest nanometre.
  return static_cast<Nm>(square - low * low > low ? low + 1 : low);
}

// The index of the outline's edge, A the first; absent when the letter is a free wall's.
std::optional<std::size_t> outlineEdge(const Job& job, const Wall& wall) {
  if (wall.line || wall.letter.size() != 1) return std::nullopt;
  const auto edge = static_cast<std::size_t>(wall.letter.front() - 'A');
  if (edge >= job.building.outline.size()) return std::nullopt;
  return edge;
}

std::optional<PlanLine> lineOf(const Job& job, const Wall& wall) {
  if (wall.line) return wall.line;
  const auto edge = outlineEdge(job, wall);
  if (!edge) return std::nullopt;
  const auto& outline = job.building.outline;
  return PlanLine{outline[*edge], outline[(*edge + 1) % outline.size()]};
}

Nm riseOf(const Slope& slope, Nm level) {
  if (slope.as == Slope::As::Angle) return nm(riseOver(slope, Length::nanometres(level)));
  return static_cast<Nm>(toNearestEven(Int128(nm(slope.rise)) * level, nm(slope.run)));
}

// The roof's section from its first side to the other, `span` apart.
StatedLine roofSection(const Roof& roof, Nm span) {
  const Nm eave = nm(roof.eave);
  if (roof.kind == Roof::Kind::Level) return {{Segment{0, eave, span, eave}}};
  if (roof.kind == Roof::Kind::SingleSlope) {
    const Nm far = roof.farEave ? nm(*roof.farEave) : eave + riseOf(*roof.slope, span);
    return {{Segment{0, eave, span, far}}};
  }
  const Nm at = roof.ridgeAt ? nm(*roof.ridgeAt) : nm(half(Length::nanometres(span)));
  const Nm ridge = roof.ridgeHeight ? nm(*roof.ridgeHeight) : eave + riseOf(*roof.slope, at);
  Nm far = 0;
  if (roof.farEave) {
    far = nm(*roof.farEave);
  } else if (roof.farSlope) {
    far = ridge - riseOf(*roof.farSlope, span - at);
  } else if (roof.slope) {
    far = ridge - riseOf(*roof.slope, span - at);
  } else {
    far = ridge - static_cast<Nm>(toNearestEven(Int128(ridge - eave) * (span - at), at));
  }
  return {{Segment{0, eave, at, ridge}, Segment{at, ridge, span, far}}};
}

StatedLine reversed(const StatedLine& line, Nm span) {
  StatedLine turned;
  for (auto it = line.segments.rbegin(); it != line.segments.rend(); ++it) {
    turned.segments.push_back({span - it->u1, it->z1, span - it->u0, it->z0});
  }
  return turned;
}

StatedLine roofOver(const Job& job, std::size_t edge) {
  const Roof& roof = job.building.roof;
  const auto& outline = job.building.outline;
  // With ends BD the first side is A: B runs away from it and D comes back. With ends AC the first side is D: A runs
  // away.
  const bool endsBD = roof.ends == Roof::Ends::BD;
  const bool isEnd = (edge % 2 == 1) == endsBD;
  const std::size_t along = endsBD ? 1 : 0;  // an edge that runs from the first side to the other
  const Nm span = distance(outline[along], outline[along + 1]);
  const StatedLine section = roofSection(roof, span);
  if (isEnd) return edge == along ? section : reversed(section, span);
  const bool first = edge == (endsBD ? 0U : 3U);
  return StatedLine::level(first ? section.segments.front().z0 : section.segments.back().z1);
}

StatedLine typedTop(const std::vector<FacePoint>& points) {
  StatedLine line;
  if (points.size() == 1) return StatedLine::level(nm(points.front().z));
  for (std::size_t i = 0; i + 1 < points.size(); ++i) {
    const FacePoint &a = points[i], &b = points[i + 1];
    if (a.u < b.u) line.segments.push_back({nm(a.u), nm(a.z), nm(b.u), nm(b.z)});
  }
  return line;
}

StatedLine concreteLine(const Base& base, Nm width) {
  StatedLine line;
  Nm from = 0, z = 0;
  for (const FacePoint& step : base.steps) {
    if (nm(step.u) > from) {
      line.segments.push_back({from, z, nm(step.u), z});
      from = nm(step.u);
    }
    z = nm(step.z);
  }
  line.segments.push_back({from, z, std::max(width, from + 1), z});
  return line;
}

// Sheet end above the concrete.
Nm sheetEnd(const Base& base) {
  switch (base.form) {
    case Base::Form::Overhang:
      return -nm(base.drop);
    case Base::Form::Notch:
      return nm(base.gap) - nm(base.depth);
    case Base::Form::BaseTrim:
    case Base::Form::OnWall:
      return nm(base.shelf) + nm(base.gap);
  }
  return 0;
}

// u of the highest inner vertex from which the steel falls on a slope to both sides; a step is no ridge.
std::optional<Nm> ridgeOf(const StatedLine& steel) {
  std::optional<Nm> ridge, height;
  for (std::size_t i = 1; i < steel.segments.size(); ++i) {
    const Segment &before = steel.segments[i - 1], &after = steel.segments[i];
    const bool falls = before.z0 < before.z1 && before.z1 == after.z0 && after.z1 < after.z0;
    if (!falls || (height && *height >= after.z0)) continue;
    ridge = after.u0;
    height = after.z0;
  }
  return ridge;
}

}  // namespace

StatedFace statedFace(const Job& job, const Wall& wall) {
  StatedFace face;
  face.line = lineOf(job, wall);
  face.width = face.line ? distance(face.line->from, face.line->to) : nm(*wall.width);
  const auto edge = outlineEdge(job, wall);
  face.steel = wall.top.empty() ? roofOver(job, edge.value_or(0)) : typedTop(wall.top);
  face.top = face.steel;
  for (Segment& segment : face.top.segments) {
    const Nm down = nm(segment.level() ? wall.eaveHoldDown : wall.rakeHoldDown);
    segment.z0 -= down;
    segment.z1 -= down;
  }
  face.concrete = concreteLine(wall.base, face.width);
  face.bottom = face.concrete.raised(sheetEnd(wall.base));
  face.ridge = ridgeOf(face.steel);
  return face;
}

}  // namespace ribwright::fuzz
