#include "core/checks/screw_words.h"

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

std::string said(const std::string& id, const WordValues& values) { return Words::of("en").say(id, values, {}); }

std::string kindId(HoleKind kind) { return kindIds[static_cast<std::size_t>(kind)]; }

std::string kindWords(HoleKind kind) { return said("screws.kind." + kindId(kind)); }

std::string kindWords(SupportKind kind, Zone zone) {
  const std::string words = kindWords(asHole(kind));
  return zone == Zone::Field ? words : said("screws.in-corner", {{"kind", words}});
}

std::string rowWords(const WallSupports& supports, HoleKind kind, std::int32_t row) {
  if (kind == HoleKind::Stitch) return said("screws.row.stitch");
  const auto at = static_cast<std::size_t>(row);
  if (kind == HoleKind::Jamb) {
    const JambFlange& jamb = supports.jambs.at(at);
    return said(jamb.left ? "screws.row.left-jamb" : "screws.row.right-jamb", {{"id", jamb.opening}});
  }
  return said("screws.row." + kindId(kind), {{"id", supports.rows.at(at).id}});
}

std::string bandWords(const Wall& wall, int band) {
  if (wall.bands.size() < 2) return "";
  return said("screws.band", {{"band", std::int64_t(band + 1)}});
}

std::string bandPart(const Wall& wall, int band) {
  return wall.bands.size() < 2 ? "" : "band " + std::to_string(band + 1);
}

std::string listed(const std::vector<std::string>& names, std::size_t most) {
  std::string all;
  const std::size_t shown = names.size() <= most ? names.size() : most;
  for (std::size_t i = 0; i < shown; ++i) all.append(i == 0 ? "" : ", ").append(names[i]);
  if (shown == names.size()) return all;
  return said("screws.more", {{"names", all}, {"count", std::int64_t(names.size() - shown)}});
}

}  // namespace ribwright
