#include "core/output/support_words.h"

namespace ribwright {
namespace {

std::string named(const char* what, const std::string& name) {
  std::string words = what;
  if (!name.empty()) words.append(" ").append(name);
  return words;
}

std::string steelWords(const Stretch& stretch) {
  switch (stretch.steel) {
    case Stretch::Steel::Own:
      return named("girt", stretch.name);
    case Stretch::Steel::Column:
      return named("column", stretch.name);
    case Stretch::Steel::LeftJamb:
      return named("left jamb", stretch.name);
    case Stretch::Steel::RightJamb:
      return named("right jamb", stretch.name);
  }
  return "";
}

std::string jambWords(const JambFlange& jamb) { return named(jamb.left ? "left jamb" : "right jamb", jamb.opening); }

}  // namespace

std::string supportWords(const WallSupports& supports, const Hole& hole) {
  const auto row = static_cast<std::size_t>(hole.row);
  switch (hole.kind) {
    case HoleKind::Base:
      return "base";
    case HoleKind::Eave:
      return "eave";
    case HoleKind::Rake:
      return "rake";
    case HoleKind::Girt:
      return steelWords(supports.rows.at(row).stretches.at(static_cast<std::size_t>(hole.stretch)));
    case HoleKind::EndLap:
      return named("end lap", supports.rows.at(row).id);
    case HoleKind::Head:
      return named("head", supports.rows.at(row).id);
    case HoleKind::Sill:
      return named("sill", supports.rows.at(row).id);
    case HoleKind::Jamb:
      return jambWords(supports.jambs.at(row));
    case HoleKind::Stitch:
      return "stitch";
  }
  return "";
}

}  // namespace ribwright
