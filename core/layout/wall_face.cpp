#include "core/layout/wall_face.h"

#include "core/layout/roof_line.h"
#include "core/layout/whole_root.h"

namespace ribwright {

namespace {

HeightLine sheetTop(const Wall& wall, const HeightLine& steel) {
  // Level and sloped parts may hold down differently; then the change stands at the vertex between them.
  std::vector<FaceVertex> vertices;
  const auto& line = steel.vertices();
  if (line.size() == 1) return steel.raised(-wall.eaveHoldDown);
  const auto hold = [&](const FaceVertex& vertex, Length down) {
    const FaceVertex held{vertex.u, vertex.z - down};
    if (vertices.empty() || vertices.back() != held) vertices.push_back(held);
  };
  for (std::size_t i = 0; i + 1 < line.size(); ++i) {
    const bool upright = line[i].u == line[i + 1].u;
    if (upright && i == 0) hold(line[i], wall.eaveHoldDown);
    if (upright && i + 2 == line.size()) hold(line[i + 1], wall.eaveHoldDown);
    if (upright) continue;
    const Length down = line[i].z == line[i + 1].z ? wall.eaveHoldDown : wall.rakeHoldDown;
    hold(line[i], down);
    hold(line[i + 1], down);
  }
  return HeightLine(std::move(vertices));
}

HeightLine concreteLine(const Base& base) {
  if (base.steps.empty()) return HeightLine::level(Length());
  std::vector<FaceVertex> vertices;
  const bool fromCorner = base.steps.front().u <= Length();
  vertices.push_back({Length(), fromCorner ? base.steps.front().z : Length()});
  for (std::size_t i = fromCorner ? 1 : 0; i < base.steps.size(); ++i) {
    const FacePoint& step = base.steps[i];
    if (step.z == vertices.back().z) continue;
    vertices.push_back({step.u, vertices.back().z});
    vertices.push_back({step.u, step.z});
  }
  return HeightLine(std::move(vertices));
}

Length sheetEndAboveConcrete(const Base& base) {
  switch (base.form) {
    case Base::Form::Overhang:
      return -base.drop;
    case Base::Form::Notch:
      return base.gap - base.depth;
    case Base::Form::BaseTrim:
    case Base::Form::OnWall:
      return base.shelf + base.gap;
  }
  return Length();
}

// The highest vertex on the wall from which the steel falls on a slope to both sides; a step is no slope.
std::optional<Length> ridgeOf(const HeightLine& steel, Length width) {
  const auto& line = steel.vertices();
  std::optional<FaceVertex> ridge;
  for (std::size_t i = 1; i + 1 < line.size(); ++i) {
    const bool inside = line[i].u > Length() && line[i].u < width;
    const bool falls = line[i].z > line[i - 1].z && line[i].z > line[i + 1].z;
    const bool slopes = line[i - 1].u < line[i].u && line[i].u < line[i + 1].u;
    if (inside && falls && slopes && (!ridge || line[i].z > ridge->z)) ridge = line[i];
  }
  return ridge ? std::optional<Length>(ridge->u) : std::nullopt;
}

}  // namespace

std::optional<PlanLine> planLine(const Job& job, const Wall& wall) {
  if (wall.line) return wall.line;
  const auto& outline = job.building.outline;
  if (wall.letter.size() != 1 || wall.letter[0] < 'A' || wall.width) return std::nullopt;
  const auto edge = static_cast<std::size_t>(wall.letter[0] - 'A');
  if (edge >= outline.size() || outline.size() < 3) return std::nullopt;
  return PlanLine{outline[edge], outline[(edge + 1) % outline.size()]};
}

Outcome<WallFace> wallFace(const Job& job, const Wall& wall) {
  const std::string place = "walls." + wall.letter;
  WallFace face;
  face.letter = wall.letter;
  face.line = planLine(job, wall);
  if (face.line) {
    face.width = distance(face.line->from, face.line->to);
  } else if (wall.width) {
    face.width = *wall.width;
  } else {
    return Fault{place, "has no place; give it a plan line, a width, or a letter of the building's outline"};
  }
  if (face.width <= Length()) return Fault{place, "has no width; its two corners are the same point"};
  auto steel = steelLine(job.building, wall, face.width);
  if (!steel) return steel.faults();
  face.steel = std::move(steel).value();
  face.top = sheetTop(wall, face.steel);
  face.concrete = concreteLine(wall.base);
  face.bottom = face.concrete.raised(sheetEndAboveConcrete(wall.base));
  face.ridge = ridgeOf(face.steel, face.width);
  return face;
}

std::vector<Length> columnsOf(const ColumnGrid& columns) {
  if (columns.bays.empty()) return {};
  std::vector<Length> all{columns.offset};
  for (const Length bay : columns.bays) all.push_back(all.back() + bay);
  return all;
}

bool hasColumn(const ColumnGrid& columns, int n) {
  return n >= 1 && static_cast<std::size_t>(n) <= columnsOf(columns).size();
}

std::optional<Length> columnAt(const ColumnGrid& columns, int n) {
  if (n < 1 || static_cast<std::size_t>(n) > columns.bays.size() + 1) return std::nullopt;
  Length u = columns.offset;
  for (int bay = 0; bay + 1 < n; ++bay) u += columns.bays[static_cast<std::size_t>(bay)];
  return u;
}

namespace {

std::optional<Length> anchorPlace(const Wall& wall, Length wallWidth, const Anchor& anchor) {
  switch (anchor.from) {
    case Anchor::From::LeftCorner:
      return anchor.distance;
    case Anchor::From::RightCorner:
      return wallWidth - anchor.distance;
    case Anchor::From::Column:
      if (const auto column = columnAt(wall.columns, anchor.column)) return *column + anchor.distance;
      return std::nullopt;
  }
  return std::nullopt;
}

}  // namespace

std::optional<Length> leftJamb(const Wall& wall, Length wallWidth, const Opening& opening) {
  const auto place = anchorPlace(wall, wallWidth, opening.place);
  if (!place) return std::nullopt;
  if (opening.place.to == Anchor::To::Centre) return *place - half(opening.width);
  return opening.place.from == Anchor::From::RightCorner ? *place - opening.width : *place;
}

std::optional<Length> centreOf(const Wall& wall, Length wallWidth, const Penetration& penetration) {
  return anchorPlace(wall, wallWidth, penetration.place);
}

}  // namespace ribwright
