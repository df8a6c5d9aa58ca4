#include "core/fastening/corner_zone.h"

#include <algorithm>
#include <vector>

#include "core/layout/roof_line.h"
#include "core/layout/whole_root.h"

namespace ribwright {

namespace {

struct Box {
  Length alongX, alongY;
  Length lesser() const { return std::min(alongX, alongY); }
};

// Absent: no outline, or one that goes around nothing.
std::optional<Box> boxOf(const std::vector<PlanPoint>& outline) {
  if (outline.size() < 3) return std::nullopt;
  const auto [left, right] =
      std::minmax_element(outline.begin(), outline.end(), [](auto& a, auto& b) { return a.x < b.x; });
  const auto [near, far] =
      std::minmax_element(outline.begin(), outline.end(), [](auto& a, auto& b) { return a.y < b.y; });
  const Box box{right->x - left->x, far->y - near->y};
  return box.lesser() > Length() ? std::optional<Box>(box) : std::nullopt;
}

// The steel over one wall, from corner to corner.
struct SteelOver {
  HeightLine line;
  Length width;
};

std::vector<SteelOver> steelOfRoof(const Building& building) {
  std::vector<SteelOver> all;
  if (building.roof.kind == Roof::Kind::None) return all;
  for (std::size_t edge = 0; edge < building.outline.size(); ++edge) {
    Wall plain;  // what its own wall may state beside the roof (a parapet) is no roof
    plain.letter = std::string(1, static_cast<char>('A' + edge % 26));
    const Length width = distance(building.outline[edge], building.outline[(edge + 1) % building.outline.size()]);
    auto line = steelLine(building, plain, width);
    if (!line) return {};
    all.push_back({std::move(line).value(), width});
  }
  return all;
}

std::vector<SteelOver> steelFor(const Building& building, const WallFace& face) {
  auto all = steelOfRoof(building);
  if (all.empty() && !face.steel.vertices().empty()) all.push_back({face.steel, face.width});
  return all;
}

Length lowestEnd(const std::vector<SteelOver>& all) {
  std::vector<Length> ends;
  for (const SteelOver& steel : all) {
    ends.push_back(steel.line.heightAt(Length(), Beside::Right));
    ends.push_back(steel.line.heightAt(steel.width, Beside::Left));
  }
  return *std::min_element(ends.begin(), ends.end());
}

Length highestPoint(const std::vector<SteelOver>& all) {
  Length highest = all.front().line.highest(Length(), all.front().width);
  for (const SteelOver& steel : all) highest = std::max(highest, steel.line.highest(Length(), steel.width));
  return highest;
}

// tan 10 degrees = 0.176326980708...; half a nanometre more or less is what a rise was rounded by.
bool slopesTenDegrees(const FaceVertex& a, const FaceVertex& b) {
  const Int128 run = (b.u - a.u).nanometres();
  const Int128 rise = (a.z < b.z ? b.z - a.z : a.z - b.z).nanometres();
  return run > 0 && (2 * rise + 1) * 1'000'000'000'000 >= 2 * run * 176'326'980'708;
}

bool anySlopesTenDegrees(const SteelOver& steel) {
  const auto& line = steel.line.vertices();
  for (std::size_t i = 0; i + 1 < line.size(); ++i) {
    const bool overTheWall = line[i].u < steel.width && line[i + 1].u > Length();
    if (overTheWall && slopesTenDegrees(line[i], line[i + 1])) return true;
  }
  return false;
}

Length roofHeight(const std::vector<SteelOver>& all) {
  const Length eave = lowestEnd(all);
  if (std::none_of(all.begin(), all.end(), anySlopesTenDegrees)) return eave;
  return eave + scaled(highestPoint(all) - eave, 1, 2);
}

Length acrossTheWall(const Box& box, const std::optional<PlanLine>& line) {
  if (line && line->from.y == line->to.y) return box.alongY;
  if (line && line->from.x == line->to.x) return box.alongX;
  return box.lesser();
}

}  // namespace

Length asceEdgeStrip(Length leastDimension, Length height) {
  const Length strip = std::min(scaled(leastDimension, 1, 10), scaled(height, 2, 5));
  return std::max({strip, scaled(leastDimension, 1, 25), Length::feet(3)});
}

EnStrips enStrips(Length b, Length d, Length height) {
  const Length e = std::min(b, 2 * height);
  if (e >= 5 * d) return {d, Length(), Length()};
  const Length a = scaled(e, 1, 5);
  if (e >= d) return {a, d - a, Length()};
  return {a, e - a, d - e};
}

std::optional<Length> cornerZone(const Job& job, const Wall&, const WallFace& face) {
  const CornerZones& zones = job.settings.cornerZones;
  if (zones.rule == CornerZones::Rule::None) return Length();
  if (zones.rule == CornerZones::Rule::Typed) return zones.width;
  const auto box = boxOf(job.building.outline);
  if (!box) return std::nullopt;
  const auto steel = steelFor(job.building, face);
  if (steel.empty()) return std::nullopt;
  if (zones.rule == CornerZones::Rule::Asce7) return asceEdgeStrip(box->lesser(), roofHeight(steel));
  const Length height = highestPoint(steel);
  if (height <= Length() || face.width <= Length()) return std::nullopt;
  return enStrips(acrossTheWall(*box, face.line), face.width, height).a;
}

}  // namespace ribwright
