// Screws nearer than 1.5 d to a metal edge (AISI S100-16): of the side lap, where the pattern is at fault on every
// sheet, or of a cut, a rake or a sheet's end, where the sheet is.
#include <cmath>

#include "core/checks/good_places.h"
#include "core/checks/refused_places.h"
#include "core/checks/screw_words.h"
#include "core/fastening/chosen_pattern.h"

namespace ribwright {
namespace {

Finding onLapEdge(const WallLook& look, const RefusalKey& key, const RefusalGroup& group) {
  const Screw& screw = screwOf(look, *group.first);
  const Length edge = *lapEdgeAt(look, *group.first);
  const auto nearest = nearestGoodPlace(goodPlaces(*runOf(look, *group.first).profile, screw), key.x, look.job.units);
  WordValues values = {{"kind", kindWords(key.kind)},
                       {"x", key.x},
                       {"count", group.count()},
                       {"pattern", key.name},
                       {"sheet", sheetOf(look, *group.first)},
                       {"edge", edge},
                       {"gap", between(edge, key.x)},
                       {"limit", fromEdge(screw)},
                       {"washer", screw.washer},
                       {"bend", kFromBend}};
  if (nearest) values.emplace_back("nearest", *nearest);
  Finding finding = look.finding(Grade::Stop, nearest ? "screw-on-lap-edge" : "screw-no-flat", key.name,
                                 std::move(values), "AISI S100-16");
  finding.part = kindId(key.kind) + " " + exactText(key.x, UnitSystem::FeetInches);
  return finding;
}

// In millimetres, to say how near a screw lies; what is refused was decided exactly.
double distanceTo(const FaceVertex& a, const FaceVertex& b, Length u, Length z) {
  const double ax = (a.u - u).inMillimetres(), ay = (a.z - z).inMillimetres();
  const double dx = (b.u - a.u).inMillimetres(), dy = (b.z - a.z).inMillimetres();
  const double square = dx * dx + dy * dy;
  const double along = square > 0 ? std::min(1.0, std::max(0.0, -(ax * dx + ay * dy) / square)) : 0.0;
  return std::hypot(ax + along * dx, ay + along * dy);
}

struct NearestEdge {
  Length distance;
  const char* direction = "screws.edge.upright";
};

// Of any sheet of the run; farther than `limit` none is looked for.
NearestEdge nearestEdge(const WallLook& look, const Refusal& refusal, Length limit) {
  NearestEdge nearest;
  double least = limit.inMillimetres();
  for (const Piece& piece : look.layout.pieces) {
    const bool near = piece.run == refusal.run && piece.left - limit <= refusal.u && refusal.u <= piece.right + limit;
    if (!near) continue;
    for (const Ring& ring : piece.rings) {
      for (std::size_t i = 0; i < ring.size(); ++i) {
        const FaceVertex &a = ring[i], &b = ring[(i + 1) % ring.size()];
        const double distance = distanceTo(a, b, refusal.u, refusal.z);
        if (distance >= least) continue;
        least = distance;
        nearest.direction = a.u == b.u   ? "screws.edge.upright"
                            : a.z == b.z ? "screws.edge.level"
                                         : "screws.edge.sloped";
      }
    }
  }
  nearest.distance = Length::nanometres(static_cast<std::int64_t>(least * 1e6));
  return nearest;
}

std::string markOf(const WallLook& look, const Refusal& refusal) {
  if (refusal.kind == HoleKind::Stitch) return "";
  const auto row = static_cast<std::size_t>(refusal.row);
  return refusal.kind == HoleKind::Jamb ? look.holes.supports.jambs.at(row).opening
                                        : look.holes.supports.rows.at(row).id;
}

std::string partOf(const WallLook& look, const Refusal& refusal) {
  const std::string kind = kindId(refusal.kind);
  if (refusal.kind != HoleKind::Jamb) return kind;
  return look.holes.supports.jambs.at(static_cast<std::size_t>(refusal.row)).left ? "left jamb" : "right jamb";
}

Finding nearCut(const WallLook& look, const RefusalGroup& group) {
  const Refusal& first = *group.first;
  const Length clear = fromEdge(screwOf(look, first));
  const NearestEdge edge = nearestEdge(look, first, clear);
  Finding finding = look.finding(Grade::Look, "screw-near-cut", markOf(look, first),
                                 {{"row", rowWords(look.holes.supports, first.kind, first.row)},
                                  {"count", group.count()},
                                  {"sheets", sheetsOf(look, group)},
                                  {"u", first.u},
                                  {"z", first.z},
                                  {"gap", edge.distance},
                                  {"edge", phrase(edge.direction)},
                                  {"limit", clear}},
                                 "AISI S100-16");
  finding.part = partOf(look, first);
  return finding;
}

std::optional<RefusalKey> underLapEdge(const WallLook& look, const Refusal& refusal) {
  if (!lapEdgeAt(look, refusal)) return std::nullopt;
  return RefusalKey{refusal.kind, patternOf(look, refusal), refusal.x};
}

std::optional<RefusalKey> underCut(const WallLook& look, const Refusal& refusal) {
  if (refusal.why != Refusal::Why::NearEdge || lapEdgeAt(look, refusal)) return std::nullopt;
  return RefusalKey{refusal.kind, markOf(look, refusal) + "|" + partOf(look, refusal), {}};
}

}  // namespace

void checkScrewEdges(const WallLook& look, std::vector<Finding>& findings) {
  for (const auto& [key, group] : grouped(look, [&](const Refusal& refusal) { return underLapEdge(look, refusal); }))
    findings.push_back(onLapEdge(look, key, group));
  for (const auto& [key, group] : grouped(look, [&](const Refusal& refusal) { return underCut(look, refusal); }))
    findings.push_back(nearCut(look, group));
}

}  // namespace ribwright
