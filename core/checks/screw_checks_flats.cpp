// Screws that meet no flat which bears on the steel, no crown, or one another.
#include <algorithm>

#include "core/checks/good_places.h"
#include "core/checks/refused_places.h"
#include "core/checks/screw_words.h"
#include "core/fastening/chosen_pattern.h"

namespace ribwright {
namespace {

using Why = Refusal::Why;

std::optional<RefusalKey> byOffset(const WallLook& look, const Refusal& refusal, Why why) {
  if (refusal.why != why || !isByOffset(refusal.kind)) return std::nullopt;
  return RefusalKey{refusal.kind, patternOf(look, refusal), refusal.x};
}

std::string offsetPart(const RefusalKey& key) {
  return kindId(key.kind) + " " + exactText(key.x, UnitSystem::FeetInches);
}

// What all findings of one offset of a pattern name.
WordValues offsetValues(const WallLook& look, const RefusalKey& key, const RefusalGroup& group) {
  return {{"kind", kindWords(key.kind)},
          {"x", key.x},
          {"count", group.count()},
          {"pattern", key.name},
          {"sheet", sheetOf(look, *group.first)}};
}

Finding offFlat(const WallLook& look, const RefusalKey& key, const RefusalGroup& group) {
  const Profile& profile = *runOf(look, *group.first).profile;
  const Screw& screw = screwOf(look, *group.first);
  const auto places = goodPlaces(profile, screw);
  const auto nearest = nearestGoodPlace(places, key.x, look.job.units);
  WordValues values = offsetValues(look, key, group);
  values.emplace_back("washer", screw.washer);
  values.emplace_back("bend", kFromBend);
  if (!nearest) return look.finding(Grade::Stop, "screw-no-flat", key.name, std::move(values), "common practice");
  if (isOnSeat(places, key.x))  // the sheets beside each other were hung off their own cover
    return look.finding(Grade::Look, "screw-off-shifted-lap", key.name, std::move(values), "common practice");
  values.emplace_back("nearest", *nearest);
  values.emplace_back("gap", between(*nearest, key.x));
  return look.finding(Grade::Stop, "screw-off-flat", key.name, std::move(values), "common practice");
}

// The hole of the same row, or of the same side lap, that stands nearest.
const Hole* nearestHole(const WallLook& look, const Refusal& refusal) {
  const Hole* nearest = nullptr;
  Int128 least = 0;
  for (const Hole& hole : look.holes.holes) {
    const bool same = hole.run == refusal.run && hole.row == refusal.row &&
                      (hole.kind == HoleKind::Stitch) == (refusal.kind == HoleKind::Stitch);
    if (!same) continue;
    const Int128 across = (hole.u - refusal.u).nanometres(), up = (hole.z - refusal.z).nanometres();
    const Int128 square = across * across + up * up;
    if (nearest && square >= least) continue;
    nearest = &hole;
    least = square;
  }
  return nearest;
}

Finding tooNear(const WallLook& look, const RefusalKey& key, const RefusalGroup& group) {
  const Refusal& refusal = *group.first;
  const Screw& screw = screwOf(look, refusal);
  const RunLook& run = runOf(look, refusal);
  const Hole* hole = nearestHole(look, refusal);
  const Screw& other = hole ? look.job.screws.at(static_cast<std::size_t>(hole->screw)) : screw;
  const Length across = hole ? run.frame.toHanging(hole->u) - run.frame.toHanging(refusal.u) : Length();
  const Length up = hole ? between(hole->z, refusal.z) : Length();
  WordValues values = offsetValues(look, key, group);
  values.emplace_back("other", rest(key.x + across, run.profile->cover));
  values.emplace_back("gap", std::max(between(across, Length()), up));
  values.emplace_back("limit", apart(screw, other));
  const char* id = isByOffset(key.kind) ? "screws-too-near" : "screws-spaced-too-near";
  return look.finding(Grade::Stop, id, key.name, std::move(values), "AISI S100-16 (3 d); common practice (1 in)");
}

void checkNoCrown(const WallLook& look, std::vector<Finding>& findings) {
  const auto groups = grouped(look, [](const Refusal& refusal) -> std::optional<RefusalKey> {
    const bool offCrown = refusal.why == Why::OffFlat && refusal.kind == HoleKind::Stitch;
    if (refusal.why != Why::NoCrown && !offCrown) return std::nullopt;
    return RefusalKey{HoleKind::Stitch, "run " + std::to_string(refusal.run + 1), {}};
  });
  for (const auto& [key, group] : groups) {
    const RunLook& run = runOf(look, *group.first);
    findings.push_back(look.finding(Grade::Look, "no-crown-at-lap", "",
                                    {{"u", group.first->u},
                                     {"band", bandWords(look.wall, run.run->band)},
                                     {"profile", run.profile->name.empty() ? run.profile->id : run.profile->name}},
                                    "common practice"));
    findings.back().part = look.layout.runs.size() > 1 ? key.name : "";
  }
}

void checkJambsUnderRibs(const WallLook& look, std::vector<Finding>& findings) {
  const auto groups = grouped(look, [&](const Refusal& refusal) -> std::optional<RefusalKey> {
    const bool offFlat = refusal.why == Why::OffFlat && refusal.kind == HoleKind::Jamb;
    if (refusal.why != Why::UnderRib && !offFlat) return std::nullopt;
    const JambFlange& jamb = look.holes.supports.jambs.at(static_cast<std::size_t>(refusal.row));
    return RefusalKey{HoleKind::Jamb, jamb.opening + (jamb.left ? " left" : " right"), {}};
  });
  for (const auto& [key, group] : groups) {
    const JambFlange& jamb = look.holes.supports.jambs.at(static_cast<std::size_t>(group.first->row));
    findings.push_back(look.finding(Grade::Look, "jamb-under-rib", jamb.opening,
                                    {{"row", rowWords(look.holes.supports, HoleKind::Jamb, group.first->row)},
                                     {"from", jamb.low},
                                     {"to", jamb.high}},
                                    "common practice"));
    findings.back().part = jamb.left ? "left jamb" : "right jamb";
  }
}

void checkStackedSheets(const WallLook& look, std::vector<Finding>& findings) {
  const auto groups = grouped(look, [](const Refusal& refusal) -> std::optional<RefusalKey> {
    if (refusal.why != Why::TooManySheets) return std::nullopt;
    return RefusalKey{};
  });
  for (const auto& [key, group] : groups) {
    findings.push_back(look.finding(Grade::Look, "too-many-sheets", "",
                                    {{"count", group.count()},
                                     {"most", std::int64_t(Hole::kMostSheets)},
                                     {"u", group.first->u},
                                     {"z", group.first->z}},
                                    "common practice"));
  }
}

}  // namespace

void checkScrewFlats(const WallLook& look, std::vector<Finding>& findings) {
  const auto onLapEdges = grouped(look, [&](const Refusal& refusal) -> std::optional<RefusalKey> {
    return lapEdgeAt(look, refusal) ? byOffset(look, refusal, Why::NearEdge) : std::nullopt;
  });
  for (const auto& [key, group] :
       grouped(look, [&](const Refusal& refusal) { return byOffset(look, refusal, Why::OffFlat); })) {
    if (onLapEdges.contains(key)) continue;  // where no lap lies; that finding names a good place already
    findings.push_back(offFlat(look, key, group));
    findings.back().part = offsetPart(key);
  }
  checkNoCrown(look, findings);
  checkJambsUnderRibs(look, findings);
}

void checkScrewsApart(const WallLook& look, std::vector<Finding>& findings) {
  const auto groups = grouped(look, [&](const Refusal& refusal) -> std::optional<RefusalKey> {
    if (refusal.why != Why::NearHole) return std::nullopt;
    return RefusalKey{refusal.kind, patternOf(look, refusal), isByOffset(refusal.kind) ? refusal.x : Length()};
  });
  for (const auto& [key, group] : groups) {
    findings.push_back(tooNear(look, key, group));
    findings.back().part = isByOffset(key.kind) ? offsetPart(key) : kindId(key.kind);
  }
  checkStackedSheets(look, findings);
}

}  // namespace ribwright
