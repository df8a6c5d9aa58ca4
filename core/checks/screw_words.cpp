#include "core/checks/screw_words.h"

#include <algorithm>
#include <utility>

namespace ribwright {
namespace {

// In HoleKind's order.
constexpr const char* kindIds[] = {"base", "eave", "rake", "girt", "end-lap", "head", "sill", "jamb", "stitch"};

HoleKind asHole(SupportKind kind) {
  switch (kind) {
    case SupportKind::Base:
      return HoleKind::Base;
    case SupportKind::Girt:
      return HoleKind::Girt;
    case SupportKind::Eave:
      return HoleKind::Eave;
    case SupportKind::Rake:
      return HoleKind::Rake;
    case SupportKind::Jamb:
      return HoleKind::Jamb;
    case SupportKind::Head:
      return HoleKind::Head;
    case SupportKind::Sill:
      return HoleKind::Sill;
    case SupportKind::EndLap:
      return HoleKind::EndLap;
  }
  return HoleKind::Girt;
}

}  // namespace

WordValue phrase(std::string id, WordValues values) { return Phrase{std::move(id), std::move(values)}; }

std::string kindId(HoleKind kind) { return kindIds[static_cast<std::size_t>(kind)]; }

WordValue kindWords(HoleKind kind) { return phrase("screws.kind." + kindId(kind)); }

WordValue kindWords(SupportKind kind, Zone zone) {
  WordValue words = kindWords(asHole(kind));
  return zone == Zone::Field ? words : phrase("screws.in-corner", {{"kind", std::move(words)}});
}

WordValue rowWords(const WallSupports& supports, HoleKind kind, std::int32_t row) {
  if (kind == HoleKind::Stitch) return phrase("screws.row.stitch");
  const auto at = static_cast<std::size_t>(row);
  if (kind == HoleKind::Jamb) {
    const JambFlange& jamb = supports.jambs.at(at);
    return phrase(jamb.left ? "screws.row.left-jamb" : "screws.row.right-jamb", {{"id", jamb.opening}});
  }
  return phrase("screws.row." + kindId(kind), {{"id", supports.rows.at(at).id}});
}

WordValue bandWords(const Wall& wall, int band) {
  if (wall.bands.size() < 2) return "";
  return phrase("screws.band", {{"band", std::int64_t(band + 1)}});
}

std::string bandPart(const Wall& wall, int band) {
  return wall.bands.size() < 2 ? "" : "band " + std::to_string(band + 1);
}

WordValue listed(const std::vector<std::string>& names, std::size_t most) {
  return listed(std::vector<WordValue>(names.begin(), names.end()), most);
}

WordValue listed(const std::vector<WordValue>& names, std::size_t most) {
  if (names.size() == 1) return names.front();
  Phrase list;
  const std::size_t shown = std::min(names.size(), most);
  for (std::size_t i = 0; i < shown; ++i) list.values.emplace_back("", names[i]);
  if (shown == names.size()) return list;
  return phrase("screws.more", {{"names", std::move(list)}, {"count", std::int64_t(names.size() - shown)}});
}

}  // namespace ribwright
