#include "tests/fuzz/moved.h"

#include <algorithm>

#include "tests/fuzz/stated_zone.h"

namespace ribwright::fuzz {
namespace {

std::vector<FacePoint> pointsOf(const StatedLine& line, Length width) {
  std::vector<FacePoint> points;
  for (const Segment& segment : line.segments) {
    const bool last = &segment == &line.segments.back();
    const FacePoint from{at(segment.u0), at(segment.z0)};
    if (points.empty() || points.back() != from) points.push_back(from);
    points.push_back({last && segment.level() ? width : at(segment.u1), at(segment.z1)});
  }
  return points;
}

void turnStart(Start& start) { start.side = start.side == Start::Side::Left ? Start::Side::Right : Start::Side::Left; }

void raise(std::optional<Length>& z, Length by) {
  if (z) *z += by;
}

// Girts go from the other corner, columns are counted from it.
void turnSteel(Wall& wall, Length width) {
  for (Girt& girt : wall.girts) {
    const std::optional<Length> from = girt.from;
    girt.from = girt.to ? std::optional(width - *girt.to) : std::nullopt;
    girt.to = from ? std::optional(width - *from) : std::nullopt;
  }
  ColumnGrid& columns = wall.columns;
  Length last = columns.offset;
  for (const Length bay : columns.bays) last += bay;
  columns.offset = width - last;
  std::reverse(columns.bays.begin(), columns.bays.end());
}

// Stations go from the other corner.
void turnSurvey(WallSurvey& survey, Length width) {
  for (GirtSurvey& girt : survey.girts) {
    std::reverse(girt.readings.begin(), girt.readings.end());
    for (GirtReading& reading : girt.readings) reading.u = width - reading.u;
  }
  std::reverse(survey.slab.begin(), survey.slab.end());
  for (SlabReading& reading : survey.slab) reading.u = width - reading.u;
}

// Level runs of concrete as steps, the first from the left corner.
std::vector<FacePoint> stepsOf(const Base& base) {
  std::vector<FacePoint> steps = base.steps;
  if (steps.empty() || steps.front().u > Length()) steps.insert(steps.begin(), FacePoint{});
  return steps;
}

HeightLine turned(const HeightLine& line, Length width) {
  std::vector<FaceVertex> vertices(line.vertices().rbegin(), line.vertices().rend());
  for (FaceVertex& vertex : vertices) vertex.u = width - vertex.u;
  return vertices.empty() ? HeightLine() : HeightLine(vertices);
}

HeightLine lifted(const HeightLine& line, Length by) {
  std::vector<FaceVertex> vertices = line.vertices();
  for (FaceVertex& vertex : vertices) vertex.z += by;
  return vertices.empty() ? HeightLine() : HeightLine(vertices);
}

}  // namespace

void turnLimits(Length& left, Length& right, Length width) {
  const Length was = left;
  left = width - right;
  right = width - was;
}

Job freed(const Job& job, const Wall& wall, Hand hand) {
  Job one = job;
  const StatedFace face = statedFace(job, wall);
  Wall free = wall;
  free.line.reset();
  free.width = at(face.width);
  free.top = pointsOf(face.steel, at(face.width));
  free.hang = hand == Hand::LeftToRight ? Hang::LeftToRight : Hang::RightToLeft;
  for (Opening& opening : free.openings) {
    opening.place = {Anchor::From::LeftCorner, 0, at(statedJamb(wall, face.width, opening)), Anchor::To::NearJamb};
  }
  for (Penetration& hole : free.penetrations) {
    hole.place = {Anchor::From::LeftCorner, 0, at(statedCentre(wall, face.width, hole)), Anchor::To::NearJamb};
  }
  // Away from its building a wall cannot reckon its corner zone.
  if (const auto zone = statedZone(job, wall, face)) one.settings.cornerZones = {CornerZones::Rule::Typed, at(*zone)};
  one.building = Building();
  one.site = Site();
  one.walls = {free};
  return one;
}

Job mirrored(const Job& job) {
  Job turnedJob = job;
  Wall& wall = turnedJob.walls.front();
  const Length width = *wall.width;
  std::reverse(wall.top.begin(), wall.top.end());
  for (FacePoint& point : wall.top) point.u = width - point.u;
  std::vector<FacePoint> steps = stepsOf(wall.base);
  for (std::size_t i = 0; i < steps.size(); ++i) {
    steps[i].u = i + 1 < steps.size() ? width - steps[i + 1].u : Length();
  }
  std::reverse(steps.begin(), steps.end());
  wall.base.steps = steps;
  std::swap(wall.reachLeft, wall.reachRight);
  std::reverse(wall.expansionJoints.begin(), wall.expansionJoints.end());
  for (Length& joint : wall.expansionJoints) joint = width - joint;
  wall.hang = wall.hang == Hang::LeftToRight ? Hang::RightToLeft : Hang::LeftToRight;
  turnStart(wall.start);
  for (Band& band : wall.bands) {
    if (band.start) turnStart(*band.start);
  }
  for (Opening& opening : wall.openings) opening.place.from = Anchor::From::RightCorner;
  for (Penetration& hole : wall.penetrations) hole.place.from = Anchor::From::RightCorner;
  turnSteel(wall, width);
  turnSurvey(wall.survey, width);
  for (HungSheet& hung : turnedJob.facts.hung) hung.leadingEdge = width - hung.leadingEdge;
  return turnedJob;
}

Job raised(const Job& job, Length by) {
  Job up = job;
  Wall& wall = up.walls.front();
  for (FacePoint& point : wall.top) point.z += by;
  wall.base.steps = stepsOf(wall.base);
  for (FacePoint& step : wall.base.steps) step.z += by;
  raise(wall.base.grade, by);
  for (Band& band : wall.bands) raise(band.from, by);
  for (Girt& girt : wall.girts) girt.height += by;
  for (Opening& opening : wall.openings) opening.sill += by;
  for (Penetration& hole : wall.penetrations) hole.centre += by;
  raise(wall.survey.chalkLine, by);
  for (SlabReading& reading : wall.survey.slab) reading.z += by;
  return up;
}

Job movedInPlan(const Job& job, Length x, Length y) {
  Job moved = job;
  const auto move = [&](PlanPoint& point) { point = {point.x + x, point.y + y}; };
  for (PlanPoint& point : moved.building.outline) move(point);
  for (SightPoint& sight : moved.site.sightPoints) move(sight.at);
  for (Wall& wall : moved.walls) {
    if (!wall.line) continue;
    move(wall.line->from);
    move(wall.line->to);
  }
  return moved;
}

WallLayout mirrored(const WallLayout& layout) {
  WallLayout m = layout;
  const Length width = m.face.width;
  for (HeightLine* line : {&m.face.steel, &m.face.top, &m.face.bottom, &m.face.concrete}) *line = turned(*line, width);
  if (m.face.ridge) m.face.ridge = width - *m.face.ridge;
  m.direction.hand = m.direction.hand == Hand::LeftToRight ? Hand::RightToLeft : Hand::LeftToRight;
  for (CutRegion& cut : m.cuts) {
    turnLimits(cut.left, cut.right, width);
    cut.lower = turned(cut.lower, width);
    cut.upper = turned(cut.upper, width);
    if (cut.steelLeft && cut.steelRight) turnLimits(*cut.steelLeft, *cut.steelRight, width);
  }
  for (SheetRun& run : m.runs) {
    turnLimits(run.left, run.right, width);
    turnLimits(run.faceLeft, run.faceRight, width);
    for (Module& module : run.modules) {
      module.startLine = width - module.startLine;
      module.leadLine = width - module.leadLine;
      turnLimits(module.metalLeft, module.metalRight, width);
    }
  }
  for (Piece& piece : m.pieces) {
    turnLimits(piece.left, piece.right, width);
    std::swap(piece.leftEdge, piece.rightEdge);
    piece.peak = width - piece.peak;
    for (Cell& cell : piece.cells) {
      turnLimits(cell.left, cell.right, width);
      std::swap(cell.bottomLeft, cell.bottomRight);
      std::swap(cell.topLeft, cell.topRight);
    }
    for (Ring& ring : piece.rings) {
      std::reverse(ring.begin(), ring.end());
      for (FaceVertex& vertex : ring) vertex.u = width - vertex.u;
    }
  }
  return m;
}

WallLayout raised(const WallLayout& layout, Length by) {
  WallLayout up = layout;
  for (HeightLine* line : {&up.face.steel, &up.face.top, &up.face.bottom, &up.face.concrete}) *line = lifted(*line, by);
  for (CutRegion& cut : up.cuts) {
    cut.bottom += by;
    cut.top += by;
    cut.lower = lifted(cut.lower, by);
    cut.upper = lifted(cut.upper, by);
    raise(cut.steelBottom, by);
    raise(cut.steelTop, by);
  }
  for (SheetRun& run : up.runs) {
    raise(run.floor, by);
    raise(run.ceiling, by);
    for (Length& end : run.lapEnds) end += by;
  }
  for (Piece& piece : up.pieces) {
    for (Length* z : {&piece.bottom, &piece.top, &piece.lowEdge, &piece.highEdge, &piece.leftEdge, &piece.rightEdge})
      *z += by;
    for (Cell& cell : piece.cells) {
      for (Length* z : {&cell.bottomLeft, &cell.bottomRight, &cell.topLeft, &cell.topRight}) *z += by;
    }
    for (Ring& ring : piece.rings) {
      for (FaceVertex& vertex : ring) vertex.z += by;
    }
  }
  return up;
}

WallLayout inFixedOrder(WallLayout layout) {
  const auto before = [](const FaceVertex& a, const FaceVertex& b) { return a.u != b.u ? a.u < b.u : a.z < b.z; };
  for (Piece& piece : layout.pieces) {
    std::sort(piece.cells.begin(), piece.cells.end(), [](const Cell& a, const Cell& b) {
      return a.left != b.left ? a.left < b.left : a.bottomLeft + a.bottomRight < b.bottomLeft + b.bottomRight;
    });
    for (Ring& ring : piece.rings) {
      std::rotate(ring.begin(), std::min_element(ring.begin(), ring.end(), before), ring.end());
    }
    if (piece.rings.empty()) continue;
    std::sort(piece.rings.begin() + 1, piece.rings.end(),
              [&](const Ring& a, const Ring& b) { return before(a.front(), b.front()); });
  }
  return layout;
}

}  // namespace ribwright::fuzz
