#include "core/editing/typed_fields.h"

#include "core/editing/anchor_places.h"
#include "core/editing/field_path.h"
#include "core/editing/field_text.h"
#include "core/editing/held_job.h"
#include "core/editing/job_fields.h"
#include "core/editing/stated_field.h"
#include "core/job/by_id.h"
#include "core/job/length_style.h"
#include "core/layout/wall_face.h"

namespace ribwright {
namespace {

// An anchor of a wall's opening, or of its penetration, which has no width here: its centre is what is placed.
struct Placed {
  const Wall* wall = nullptr;
  std::size_t wallIndex = 0, index = 0;
  bool isOpening = false;
  Length width;
  Anchor anchor;
};

std::optional<Placed> placedAt(const Job& job, std::string_view path) {
  const std::string bare = withoutIndices(path);
  const bool opening = bare.starts_with("walls.openings.place."), hole = bare.starts_with("walls.penetrations.place.");
  const std::string_view key = keyOf(path);
  const auto at = indicesOf(path);
  if ((!opening && !hole) || (key != "from" && key != "column" && key != "to") || at.size() != 2) return std::nullopt;
  if (at[0] >= job.walls.size()) return std::nullopt;
  Placed placed;
  placed.wall = &job.walls[at[0]];
  placed.wallIndex = at[0], placed.index = at[1];
  placed.isOpening = opening;
  if (placed.index >= (opening ? placed.wall->openings.size() : placed.wall->penetrations.size())) return std::nullopt;
  if (opening) {
    placed.width = placed.wall->openings[placed.index].width;
    placed.anchor = placed.wall->openings[placed.index].place;
  } else {
    placed.anchor = placed.wall->penetrations[placed.index].place;
  }
  return placed;
}

Anchor& anchorIn(Job& job, const Placed& placed) {
  Wall& wall = job.walls[placed.wallIndex];
  return placed.isOpening ? wall.openings[placed.index].place : wall.penetrations[placed.index].place;
}

// The anchor as it is stated anew, its distance still the old one.
std::optional<Anchor> restated(const Placed& placed, std::string_view key, std::string_view text, Length left) {
  Anchor anchor = placed.anchor;
  if (key == "to") anchor.to = text == "centre" ? Anchor::To::Centre : Anchor::To::NearJamb;
  if (key == "column") {
    const auto number = readWhole(text);
    if (!number || anchor.from != Anchor::From::Column) return std::nullopt;
    anchor.column = number.value();
  }
  if (key == "from") {
    anchor.from = text == "column"         ? Anchor::From::Column
                  : text == "right corner" ? Anchor::From::RightCorner
                                           : Anchor::From::LeftCorner;
    if (anchor.from != Anchor::From::Column) anchor.column = 0;
    if (anchor.from == Anchor::From::Column && !hasColumn(placed.wall->columns, anchor.column))
      anchor.column = anchorNear(*placed.wall, anchoredEdge(anchor, placed.width, left)).column;
  }
  return anchor;
}

// Null: where it stands now, or would stand, is not known.
std::optional<Anchor> sameSpot(const Job& job, const Placed& placed, std::string_view key, std::string_view text) {
  const auto stands = anchoredPlace(job, *placed.wall, placed.anchor);
  if (!stands) return std::nullopt;
  const Length left = placed.isOpening ? leftOf(placed.anchor, placed.width, stands.value()) : stands.value();
  const auto anchor = restated(placed, key, text, left);
  if (!anchor) return std::nullopt;
  const Length to = placed.isOpening ? anchoredEdge(*anchor, placed.width, left) : left;
  const auto moved = anchoredAt(job, *placed.wall, *anchor, to);
  return moved ? std::optional(moved.value()) : std::nullopt;
}

const Wall* wallAt(const Job& job, std::string_view path) {
  const auto at = indicesOf(path);
  return path.starts_with("walls[") && !at.empty() && at[0] < job.walls.size() ? &job.walls[at[0]] : nullptr;
}

std::string clearanceOf(const Job& job, std::string_view key, const LengthStyle& style) {
  if (key == "jamb") return typedLength(job.settings.jambClearance, style);
  return typedLength(key == "head" ? job.settings.headClearance : job.settings.sillClearance, style);
}

}  // namespace

Outcome<Job> withTypedField(const Job& job, std::string_view path, std::string_view text) {
  const auto placed = placedAt(job, path);
  auto plain = withField(job, path, text);
  if (!placed) return plain;
  const auto anchor = sameSpot(job, *placed, keyOf(path), text);
  const bool isChoice = keyOf(path) == "from" && text == "column";  // refused as it is: no column is stated yet
  if (!anchor || (!plain && !isChoice)) return plain;
  Job next = job;
  anchorIn(next, *placed) = *anchor;
  return ifJobHeld(std::move(next), job);
}

bool namesThings(std::string_view owner, std::string_view key) {
  if (owner == "sheet_lot") return false;  // as it was called when it was ordered
  if (owner == "screw" || owner == "confirmation") return false;
  return key == "profile" || key == "pattern" || key == "member" || key == "screw" || key == "stitch_screw" ||
         (owner == "start" && key == "opening") || (owner == "girt_survey" && key == "girt");
}

std::vector<std::string> namesFor(const Job& job, std::string_view path) {
  const std::string_view key = keyOf(path);
  if (key == "profile") return idsOf(job.profiles);
  if (key == "pattern") return idsOf(job.patterns);
  if (key == "trim") return idsOf(job.trims);
  if (key == "member") return idsOf(job.members);
  if (key == "screw" || key == "stitch_screw") return idsOf(job.screws);
  const Wall* wall = wallAt(job, path);
  if (!wall) return {};
  if (key == "opening") return idsOf(wall->openings);
  std::vector<std::string> ids = idsOf(wall->girts);
  ids.emplace_back("eave");
  return ids;
}

std::string heldInstead(const Job& job, std::string_view path) {
  const LengthStyle style = styleOf(job);
  const std::string bare = withoutIndices(path);
  const Wall* wall = wallAt(job, path);
  if (!wall) return {};
  if (bare.starts_with("walls.openings.clearances.")) return clearanceOf(job, keyOf(path), style);
  const auto at = indicesOf(path);
  if (bare != "walls.bands.thickness" || at.size() < 2 || at[1] >= wall->bands.size()) return {};
  const Profile* profile = byId(job.profiles, wall->bands[at[1]].profile);
  return profile ? typedLength(profile->thickness, style) : std::string();
}

}  // namespace ribwright
