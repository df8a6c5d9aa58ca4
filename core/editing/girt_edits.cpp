#include "core/editing/girt_edits.h"

#include <algorithm>
#include <utility>

#include "core/editing/anchor_places.h"
#include "core/editing/girt_survey_edits.h"
#include "core/editing/held_edit.h"
#include "core/editing/next_ids.h"
#include "core/editing/opening_edits.h"
#include "core/editing/wall_items.h"

namespace ribwright {
namespace {

constexpr std::string_view kGirts = "girts";

// Where it stands from and to; the right corner only where that is known.
struct TypedReach {
  Length from;
  std::optional<Length> to;
};

TypedReach reachOf(const Job& job, const Wall& wall, const Girt& girt) {
  TypedReach reach{girt.from.value_or(Length()), girt.to};
  const auto width = faceWidth(job, wall);
  if (!reach.to && width) reach.to = width.value();
  return reach;
}

bool passes(const TypedReach& reach, Length u) { return reach.from < u && (!reach.to || u < *reach.to); }

Outcome<Job> cutOut(const Job& job, std::size_t wall, const Girt& girt, Length left, Length right) {
  const std::string next = nextGirtId(job, wall);
  return editedWall(job, wall, [&](Wall& on) {
    Girt* first = itemToEdit(on.girts, girt.id);
    Girt second = *first;
    second.id = next;
    second.from = right;
    first->to = left;
    on.girts.insert(on.girts.begin() + (first - on.girts.data()) + 1, second);
    splitReadings(on, girt.id, next, left == right ? left : right - Length::nanometres(1));
  });
}

bool isOneLine(const Girt& a, const Girt& b) {
  Girt like = b;
  like.id = a.id;
  like.from = a.from;
  like.to = a.to;
  return a == like;
}

}  // namespace

Girt girtAtHeight(const Job& job, std::size_t wall, Length height) {
  const std::vector<Girt>& girts = job.walls.at(wall).girts;
  const Girt* like = nullptr;
  for (const Girt& girt : girts) {
    const bool below = girt.height <= height;
    const bool nearer = !like || (below ? like->height > height || girt.height > like->height
                                        : like->height > height && girt.height < like->height);
    if (nearer) like = &girt;
  }
  Girt made = like ? *like : Girt{};
  made.id = nextGirtId(job, wall);
  made.height = height;
  made.from = made.to = std::nullopt;
  return made;
}

Outcome<Job> addGirt(const Job& job, std::size_t wall, Girt girt) {
  if (girt.id.empty()) girt.id = nextGirtId(job, wall);
  return editedWall(job, wall, [&](Wall& on) {
    const auto higher =
        std::find_if(on.girts.begin(), on.girts.end(), [&](const Girt& one) { return one.height > girt.height; });
    on.girts.insert(higher, std::move(girt));
  });
}

Outcome<Job> girtMovedTo(const Job& job, std::size_t wall, const std::string& id, Length height) {
  if (!byId(job.walls.at(wall).girts, id)) return notThere(job.walls.at(wall), kGirts, id);
  return editedWall(job, wall, [&](Wall& on) { itemToEdit(on.girts, id)->height = height; });
}

Outcome<Job> girtEndMovedTo(const Job& job, std::size_t wall, const std::string& id, GirtEnd end,
                            const std::optional<Length>& u) {
  const Wall& on = job.walls.at(wall);
  const Girt* girt = byId(on.girts, id);
  if (!girt) return notThere(on, kGirts, id);
  Girt edited = *girt;
  (end == GirtEnd::Left ? edited.from : edited.to) = u;
  const TypedReach reach = reachOf(job, on, edited);
  if (u && reach.to && reach.from >= *reach.to)
    return Fault{itemPlace(on, kGirts, id), "would have no length; keep its left end left of its right end"};
  return editedWall(job, wall, [&](Wall& next) { *itemToEdit(next.girts, id) = edited; });
}

Outcome<Job> girtSplitAt(const Job& job, std::size_t wall, const std::string& id, Length u) {
  const Wall& on = job.walls.at(wall);
  const Girt* girt = byId(on.girts, id);
  if (!girt) return notThere(on, kGirts, id);
  if (!passes(reachOf(job, on, *girt), u))
    return Fault{itemPlace(on, kGirts, id), "does not pass this place; split it between its two ends"};
  return cutOut(job, wall, *girt, u, u);
}

Outcome<Job> girtSplitRound(const Job& job, std::size_t wall, const std::string& id, const std::string& opening) {
  const Wall& on = job.walls.at(wall);
  const Girt* girt = byId(on.girts, id);
  const Opening* round = byId(on.openings, opening);
  if (!girt) return notThere(on, kGirts, id);
  if (!round) return notThere(on, "openings", opening);
  const auto box = openingBox(job, on, *round);
  if (!box) return box.faults();
  const Length left = box.value().left, right = box.value().right;
  const TypedReach reach = reachOf(job, on, *girt);
  if (passes(reach, left) && passes(reach, right)) return cutOut(job, wall, *girt, left, right);
  if (passes(reach, left)) return girtEndMovedTo(job, wall, id, GirtEnd::Right, left);
  if (passes(reach, right)) return girtEndMovedTo(job, wall, id, GirtEnd::Left, right);
  return Fault{itemPlace(on, kGirts, id),
               joined("does not reach past ", opening, "; there is nothing to cut out of it")};
}

Outcome<Job> girtRunThrough(const Job& job, std::size_t wall, const std::string& id) {
  Job next = job;
  Wall& on = next.walls.at(wall);
  const Girt* girt = byId(on.girts, id);
  if (!girt) return notThere(on, kGirts, id);
  std::vector<std::string> others;
  for (const Girt& other : on.girts) {
    if (other.id != id && isOneLine(*girt, other)) others.push_back(other.id);
  }
  for (const std::string& other : others) {
    auto merged = joinedReadings(std::move(on), id, other);
    if (!merged) return merged.faults();
    on = std::move(merged).value();
    std::erase_if(on.girts, [&](const Girt& one) { return one.id == other; });
  }
  Girt* whole = itemToEdit(on.girts, id);
  whole->from = whole->to = std::nullopt;
  return ifWallHeld(std::move(next), wall);
}

Outcome<Job> girtRemoved(const Job& job, std::size_t wall, const std::string& id) {
  if (!byId(job.walls.at(wall).girts, id)) return notThere(job.walls.at(wall), kGirts, id);
  return editedWall(job, wall,
                    [&](Wall& on) { std::erase_if(on.girts, [&](const Girt& one) { return one.id == id; }); });
}

}  // namespace ribwright
