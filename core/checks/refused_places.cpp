#include "core/checks/refused_places.h"

#include <set>

#include "core/checks/screw_words.h"
#include "core/fastening/chosen_pattern.h"

namespace ribwright {
namespace {

// A piece that is not known comes last.
bool isBefore(const Refusal& a, const Refusal& b) {
  if ((a.piece < 0) != (b.piece < 0)) return a.piece >= 0;
  return a.piece < b.piece;
}

}  // namespace

RefusalGroups grouped(const WallLook& look, const std::function<std::optional<RefusalKey>(const Refusal&)>& under) {
  RefusalGroups groups;
  for (const Refusal& refusal : look.holes.refusals) {
    const auto key = under(refusal);
    if (!key) continue;
    RefusalGroup& group = groups[*key];
    if (!group.first || isBefore(refusal, *group.first)) group.first = &refusal;
    group.all.push_back(&refusal);
  }
  return groups;
}

const RunLook& runOf(const WallLook& look, const Refusal& refusal) {
  return look.runs.at(static_cast<std::size_t>(refusal.run));
}

const Screw& screwOf(const WallLook& look, const Refusal& refusal) {
  return look.job.screws.at(static_cast<std::size_t>(refusal.screw));
}

const std::string& patternOf(const WallLook& look, const Refusal& refusal) {
  return look.holes.patterns.at(static_cast<std::size_t>(refusal.run)).pattern;
}

std::optional<Length> lapEdgeAt(const WallLook& look, const Refusal& refusal) {
  if (refusal.why != Refusal::Why::NearEdge || !isByOffset(refusal.kind)) return std::nullopt;
  const RunLook& run = runOf(look, refusal);
  const Profile& profile = *run.profile;
  const Length clear = fromEdge(screwOf(look, refusal));
  const int module = refusal.piece < 0 ? -1 : look.layout.pieces.at(static_cast<std::size_t>(refusal.piece)).module;
  const bool first = module == 0, last = module + 1 == static_cast<int>(run.run->modules.size());
  struct Edge {
    Length at;
    bool there;
  };
  for (const Edge& edge : {Edge{-profile.over, true}, Edge{profile.under, !first},
                           Edge{profile.cover - profile.over, !last}, Edge{profile.cover + profile.under, true}}) {
    if (edge.there && between(edge.at, refusal.x) < clear) return edge.at;
  }
  return std::nullopt;
}

std::string sheetOf(const WallLook& look, const Refusal& refusal) {
  return refusal.piece < 0 ? "" : look.layout.pieces.at(static_cast<std::size_t>(refusal.piece)).mark;
}

WordValue sheetsOf(const WallLook& look, const RefusalGroup& group) {
  std::set<std::int32_t> pieces;  // in hanging order
  for (const Refusal* refusal : group.all) {
    if (refusal->piece >= 0) pieces.insert(refusal->piece);
  }
  std::vector<std::string> marks;
  for (const std::int32_t piece : pieces) marks.push_back(look.layout.pieces.at(static_cast<std::size_t>(piece)).mark);
  return phrase(marks.size() == 1 ? "screws.sheet" : "screws.sheets", {{"marks", listed(marks)}});
}

bool isByOffset(HoleKind kind) { return kind != HoleKind::Jamb && kind != HoleKind::Stitch; }

Length between(Length a, Length b) { return a < b ? b - a : a - b; }

}  // namespace ribwright
