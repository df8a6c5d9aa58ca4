#include "core/editing/mending_edits.h"

#include <algorithm>

#include "core/editing/building_edits.h"
#include "core/editing/empty_wall.h"

namespace ribwright {

namespace {

std::optional<std::size_t> wallOf(const Job& job, const std::string& letter) {
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    if (job.walls[i].letter == letter) return i;
  }
  return std::nullopt;
}

// Of two that overlap the one that was stated later.
std::string openingOf(const Finding& finding) {
  if (finding.id != "openings-overlap") return finding.mark;
  for (const auto& [name, value] : finding.values) {
    if (name == "other" && std::holds_alternative<std::string>(value)) return std::get<std::string>(value);
  }
  return {};
}

bool isDisplaced(const Finding& finding) {
  return finding.id == "opening-off-wall" || finding.id == "opening-column-missing" || finding.id == "openings-overlap";
}

}  // namespace

std::optional<MendingEdit> mendingOf(const Job& job, const Finding& finding) {
  const auto wall = wallOf(job, finding.wall);
  if (!wall) return std::nullopt;
  MendingEdit remedy;
  if (isDisplaced(finding)) {
    const std::string id = openingOf(finding);
    remedy.name = {"edit.put-where-it-fits", {{"what", id}}};
    remedy.edit = [wall = *wall, id](const Job& now) { return openingPutWhereItFits(now, wall, id); };
  } else if (finding.id == "no-girts") {
    remedy.name = {"edit.girts", {{"wall", finding.wall}}};
    remedy.edit = [wall = *wall](const Job& now) { return girtsAdded(now, wall); };
  } else {
    return std::nullopt;
  }
  if (!remedy.edit(job)) return std::nullopt;
  return remedy;
}

}  // namespace ribwright
