#include "core/fastening/taken_holes.h"

#include <algorithm>

#include "core/fastening/chosen_pattern.h"

namespace ribwright {
namespace {

bool isNearer(const Hole& a, const Hole& b, Length limit) {
  const Int128 u = (a.u - b.u).nanometres(), z = (a.z - b.z).nanometres(), most = limit.nanometres();
  return u * u + z * z < most * most;
}

bool shareSheet(const Hole& a, const Hole& b) {
  for (int i = 0; i < a.sheets; ++i) {
    for (int j = 0; j < b.sheets; ++j) {
      if (a.pieces[static_cast<std::size_t>(i)] == b.pieces[static_cast<std::size_t>(j)]) return true;
    }
  }
  return false;
}

bool sameRow(const Hole& a, const Hole& b) { return rankOf(a.kind) == rankOf(b.kind) && a.row == b.row; }

}  // namespace

int rankOf(HoleKind kind) {
  switch (kind) {
    case HoleKind::Base:
      return 0;
    case HoleKind::Eave:
    case HoleKind::Rake:
      return 1;
    case HoleKind::Girt:
    case HoleKind::EndLap:
      return 2;
    case HoleKind::Head:
    case HoleKind::Sill:
      return 3;
    case HoleKind::Jamb:
      return 4;
    case HoleKind::Stitch:
      return 5;
  }
  return 5;
}

TakenHoles::Near TakenHoles::nearTo(const Hole& hole, const std::vector<Hole>& holes, const std::vector<Screw>& screws,
                                    const std::vector<std::int32_t>& modules) const {
  const Screw& screw = screws[static_cast<std::size_t>(hole.screw)];
  // No screw of the job keeps holes farther apart than this.
  Length farthest = Length::inches(1);
  for (const Screw& other : screws) farthest = std::max(farthest, apart(screw, other));
  Near near = Near::None;
  for (const std::int32_t module : modules) {
    const Sheet& sheet = sheets_[static_cast<std::size_t>(module)];
    for (const Span& span : sheet.spans) {
      if (hole.z <= span.low - farthest || hole.z >= span.high + farthest) continue;
      for (std::size_t i = span.first; i < span.end; ++i) {
        const Hole& other = holes[static_cast<std::size_t>(sheet.holes[i])];
        const Length limit = apart(screw, screws[static_cast<std::size_t>(other.screw)]);
        if (!isNearer(hole, other, limit) || !shareSheet(hole, other)) continue;
        if (!sameRow(hole, other)) return Near::Other;
        near = Near::SameRow;
      }
    }
  }
  return near;
}

void TakenHoles::take(const Hole& hole, std::int32_t index, const std::vector<std::int32_t>& modules) {
  for (const std::int32_t module : modules) {
    Sheet& sheet = sheets_[static_cast<std::size_t>(module)];
    const bool goesOn =
        !sheet.spans.empty() && sheet.spans.back().kind == hole.kind && sheet.spans.back().row == hole.row;
    if (!goesOn) sheet.spans.push_back({hole.kind, hole.row, hole.z, hole.z, sheet.holes.size(), 0});
    Span& span = sheet.spans.back();
    span.low = std::min(span.low, hole.z);
    span.high = std::max(span.high, hole.z);
    sheet.holes.push_back(index);
    span.end = sheet.holes.size();
  }
}

}  // namespace ribwright
