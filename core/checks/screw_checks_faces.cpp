// Screws that meet no steel, or stand too near the end of its screw face: 1.5 d (AISI S100-16) and the drill's drift.
#include <algorithm>

#include "core/checks/refused_places.h"
#include "core/checks/screw_words.h"
#include "core/fastening/chosen_pattern.h"
#include "core/fastening/upright_margin.h"
#include "core/job/by_id.h"

namespace ribwright {
namespace {

constexpr const char* kSource = "AISI S100-16 (1.5 d); common practice (drift)";

Length marginOf(const WallLook& look, const Refusal& refusal) {
  return fromEdge(screwOf(look, refusal)) + look.job.settings.drift;
}

// A jamb's own row lies on its face by itself.
bool isOffFace(const Refusal& refusal) { return refusal.why == Refusal::Why::OffScrewFace && isByOffset(refusal.kind); }

const SupportRow& rowOf(const WallLook& look, const Refusal& refusal) {
  return look.holes.supports.rows.at(static_cast<std::size_t>(refusal.row));
}

const Stretch& stretchOf(const WallLook& look, const Refusal& refusal) {
  return rowOf(look, refusal).stretches.at(static_cast<std::size_t>(refusal.stretch));
}

// Heights of a row on its screw face, and how far outside it lies; along the top all from the steel line.
struct RowOnFace {
  Length margin, outside;
  Length room;  // between the lowest and the highest row that would hold; below 0: there is none
};

RowOnFace rowOnFace(const WallLook& look, const Refusal& refusal) {
  const Stretch& stretch = stretchOf(look, refusal);
  RowOnFace on;
  on.margin = marginOf(look, refusal);
  if (!stretch.known) return on;
  if (rowOf(look, refusal).alongTop)
    on.margin = uprightMargin(on.margin, look.layout.face.steel, stretch.from, stretch.to);
  const Length row = refusal.kind == HoleKind::EndLap ? refusal.z : stretch.row;
  const Length least = stretch.low + on.margin, most = stretch.high - on.margin;
  on.outside = std::max({Length(), least - row, row - most});
  on.room = most - least;
  return on;
}

bool isOffRow(const WallLook& look, const Refusal& refusal) {
  return stretchOf(look, refusal).steel == Stretch::Steel::Own && rowOnFace(look, refusal).outside > Length();
}

const EdgeSupport* edgeSupportOf(const Wall& wall, SupportKind kind) {
  switch (kind) {
    case SupportKind::Base:
      return &wall.baseAngle;
    case SupportKind::Eave:
      return &wall.eavePurlin;
    case SupportKind::Rake:
      return &wall.rakeAngle;
    default:
      return nullptr;
  }
}

std::optional<RefusalKey> underRow(const WallLook& look, const Refusal& refusal) {
  if (!isOffFace(refusal) || !isOffRow(look, refusal)) return std::nullopt;
  return RefusalKey{refusal.kind, rowOf(look, refusal).id, {}};
}

const Refusal& worstOf(const WallLook& look, const RefusalGroup& group) {
  return **std::max_element(group.all.begin(), group.all.end(), [&](const Refusal* a, const Refusal* b) {
    return rowOnFace(look, *a).outside < rowOnFace(look, *b).outside;
  });
}

Finding offRow(const WallLook& look, const RefusalKey& key, const RefusalGroup& group) {
  const Refusal& refusal = worstOf(look, group);
  const Stretch& stretch = stretchOf(look, refusal);
  const RowOnFace on = rowOnFace(look, refusal);
  const EdgeSupport* edge = edgeSupportOf(look.wall, rowOf(look, refusal).kind);
  WordValues values = {{"row", rowWords(look.holes.supports, refusal.kind, refusal.row)},
                       {"steel", stretch.name.empty() ? "" : phrase("screws.steel", {{"name", stretch.name}})},
                       {"from", stretch.from},
                       {"to", stretch.to},
                       {"face", std::max(Length(), stretch.high - stretch.low)},
                       {"need", on.margin * 2},
                       {"margin", on.margin},
                       {"outside", on.outside},
                       {"count", group.count()}};
  const bool canMove = edge && on.room >= Length();
  if (canMove) {
    const bool base = key.kind == HoleKind::Base;
    values.emplace_back("stated", edge->row);
    values.emplace_back("least", edge->bend + on.margin);
    values.emplace_back("most", edge->face - on.margin);
    values.emplace_back("measured", phrase(base ? "screws.above-foot" : "screws.below-line"));
  }
  Finding finding = look.finding(Grade::Stop, canMove ? "row-off-screw-face" : "screw-face-narrow", key.name,
                                 std::move(values), kSource);
  finding.part = kindId(key.kind);
  return finding;
}

// The place where steel ends in a row's way.
struct SteelEnd {
  std::string mark, part;
  WordValue words;
};

SteelEnd flangeEnd(const Stretch& flange) {
  if (flange.steel == Stretch::Steel::Column)
    return {"", "column " + flange.name, phrase("screws.row.column", {{"id", flange.name}})};
  const bool left = flange.steel == Stretch::Steel::LeftJamb;
  return {flange.name, left ? "left jamb" : "right jamb",
          phrase(left ? "screws.row.left-jamb" : "screws.row.right-jamb", {{"id", flange.name}})};
}

SteelEnd steelEnd(const WallLook& look, const Refusal& refusal) {
  const SupportRow& row = rowOf(look, refusal);
  const Stretch& stretch = stretchOf(look, refusal);
  if (row.kind == SupportKind::Head || row.kind == SupportKind::Sill)
    return {row.id, kindId(refusal.kind), rowWords(look.holes.supports, refusal.kind, refusal.row)};
  if (stretch.steel != Stretch::Steel::Own) return flangeEnd(stretch);
  const bool atFrom = stretch.endsAtFrom && refusal.u < stretch.from + marginOf(look, refusal);
  for (const Stretch& other : row.stretches) {
    const bool meets = atFrom ? other.to == stretch.from : other.from == stretch.to;
    if (meets && other.steel != Stretch::Steel::Own) return flangeEnd(other);
  }
  // A key that silences a finding has no more than 300 characters, and girts that lap are many in one name.
  const std::string& mark = stretch.name.size() <= 150 ? stretch.name : row.id;
  return {mark, atFrom ? "left end" : "right end",
          phrase(atFrom ? "screws.end.left" : "screws.end.right", {{"id", stretch.name}})};
}

// How far along the row the nearest steel lies that would hold the screw; to the right above 0.
Length shiftToSteel(const WallLook& look, const Refusal& refusal) {
  const Length margin = marginOf(look, refusal);
  std::optional<Length> shift;
  for (const Stretch& stretch : rowOf(look, refusal).stretches) {
    const bool own = stretch.steel == Stretch::Steel::Own;
    const Length low = own ? stretch.from + (stretch.endsAtFrom ? margin : Length()) : stretch.low + margin;
    const Length high = own ? stretch.to - (stretch.endsAtTo ? margin : Length()) : stretch.high - margin;
    if (low > high) continue;
    const Length by = std::clamp(refusal.u, low, high) - refusal.u;
    if (!shift || between(by, Length()) < between(*shift, Length())) shift = by;
  }
  return shift.value_or(Length());
}

WordValue rowsOf(const WallLook& look, const RefusalGroup& group) {
  std::vector<WordValue> names;
  for (const Refusal* refusal : group.all) {
    const WordValue name = rowWords(look.holes.supports, refusal->kind, refusal->row);
    if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
  }
  return listed(names);
}

Finding offEnd(const WallLook& look, const RefusalGroup& group) {
  const Refusal& first = *group.first;
  SteelEnd end = steelEnd(look, first);
  const WordValue rows = rowsOf(look, group);
  if (rows != end.words) end.words = phrase("screws.end.rows", {{"steel", end.words}, {"rows", rows}});
  const Length shift = shiftToSteel(look, first);
  Finding finding = look.finding(Grade::Look, "screw-off-steel-end", end.mark,
                                 {{"steel", end.words},
                                  {"sheets", sheetsOf(look, group)},
                                  {"count", group.count()},
                                  {"u", first.u},
                                  {"margin", marginOf(look, first)},
                                  {"shift", between(shift, Length())},
                                  {"side", phrase(shift < Length() ? "screws.left" : "screws.right")}},
                                 kSource);
  finding.part = end.part;
  return finding;
}

}  // namespace

void checkScrewFaces(const WallLook& look, std::vector<Finding>& findings) {
  for (const auto& [key, group] : grouped(look, [&](const Refusal& refusal) { return underRow(look, refusal); }))
    findings.push_back(offRow(look, key, group));
  const auto ends = grouped(look, [&](const Refusal& refusal) -> std::optional<RefusalKey> {
    if (!isOffFace(refusal) || isOffRow(look, refusal)) return std::nullopt;
    const SteelEnd end = steelEnd(look, refusal);
    return RefusalKey{HoleKind::Girt, end.part + "|" + end.mark, {}};
  });
  for (const auto& [key, group] : ends) findings.push_back(offEnd(look, group));
}

void checkFacesStated(const WallLook& look, std::vector<Finding>& findings) {
  const bool screwed = std::any_of(look.holes.patterns.begin(), look.holes.patterns.end(),
                                   [](const RunPattern& run) { return !run.pattern.empty() && !run.otherProfile; });
  if (!look.layout.sheeted || !screwed) return;
  std::vector<std::string> unknown;
  for (const Girt& girt : look.wall.girts) {
    if (!byId(look.job.members, girt.member)) unknown.push_back(girt.id);
  }
  if (!unknown.empty()) {
    findings.push_back(look.finding(Grade::Look, "girt-face-unknown", "",
                                    {{"girts", listed(unknown)}, {"count", std::int64_t(unknown.size())}}, ""));
  }
  const bool flush = look.wall.girtSetting == GirtSetting::Flush && !look.wall.girts.empty();
  if (flush && look.wall.columns.flange <= Length())
    findings.push_back(look.finding(Grade::Look, "column-flange-not-stated", "", {}, ""));
}

}  // namespace ribwright
