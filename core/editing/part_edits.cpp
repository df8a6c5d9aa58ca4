#include "core/editing/part_edits.h"

#include <algorithm>
#include <functional>
#include <utility>

#include "core/editing/column_edits.h"
#include "core/editing/girt_edits.h"
#include "core/editing/held_edit.h"
#include "core/editing/opening_edits.h"
#include "core/editing/penetration_edits.h"
#include "core/editing/wall_items.h"
#include "core/editing/wall_parts.h"
#include "core/editing/wall_things.h"
#include "core/layout/wall_face.h"

namespace ribwright {
namespace {

std::vector<Part> eachOnce(const std::vector<Part>& parts) {
  std::vector<Part> once;
  for (const Part& part : parts) {
    if (std::find(once.begin(), once.end(), part) == once.end()) once.push_back(part);
  }
  return once;
}

// Numbers of the chosen columns of a wall, the highest first.
std::vector<int> columnsIn(const Wall& wall, const std::vector<Part>& parts) {
  std::vector<int> numbers;
  for (const Part& part : parts) {
    const auto number =
        part.kind == Part::Kind::Column && part.wall == wall.letter ? columnOf(wall, part) : std::nullopt;
    if (number) numbers.push_back(*number);
  }
  std::sort(numbers.begin(), numbers.end(), std::greater<>());
  return numbers;
}

// The rest, without columns.
std::vector<Part> withoutColumns(std::vector<Part> parts) {
  std::erase_if(parts, [](const Part& part) { return part.kind == Part::Kind::Column; });
  return parts;
}

bool isEditable(const Wall& wall, const Part& part) {
  switch (part.kind) {
    case Part::Kind::Opening:
      return byId(wall.openings, part.id);
    case Part::Kind::Penetration:
      return byId(wall.penetrations, part.id);
    case Part::Kind::Girt:
      return girtOf(wall, part);
    case Part::Kind::Column:
      return columnOf(wall, part).has_value();
    case Part::Kind::Face:
    case Part::Kind::Piece:
    case Part::Kind::Screw:
    case Part::Kind::Batch:
      break;
  }
  return false;
}

std::vector<Fault> faultsOfParts(const Job& job, const std::vector<Part>& parts) {
  std::vector<Fault> faults;
  for (const Part& part : parts) {
    const Wall* wall = byLetter(job.walls, part.wall);
    if (wall && isEditable(*wall, part)) continue;
    const bool gone = part.kind == Part::Kind::Column || !wall;
    faults.push_back(
        gone ? Fault{joined("walls.", part.wall, ".", part.id), "is not there; choose what stands on a wall"}
             : cannotEdit(part));
  }
  return faults;
}

// Goes on from a job by one edit after the other, until one of them is a fault.
class Steps {
 public:
  explicit Steps(Job job) : now_(std::move(job)) {}
  template <class Edit>
  void go(const Edit& edit) {
    if (now_) now_ = edit(now_.value());
  }
  Outcome<Job> now() && { return std::move(now_); }

 private:
  Outcome<Job> now_;
};

Outcome<Job> removedFrom(const Job& job, std::size_t wall, const Part& part) {
  if (part.kind == Part::Kind::Opening) return openingRemoved(job, wall, part.id);
  if (part.kind == Part::Kind::Penetration) return penetrationRemoved(job, wall, part.id);
  return girtRemoved(job, wall, girtOf(job.walls[wall], part)->id);
}

Outcome<Job> columnsMovedBy(const Job& job, std::size_t wall, const std::vector<int>& numbers, Length du) {
  std::vector<Length> places = columnsOf(job.walls[wall].columns);
  for (const int number : numbers) places[static_cast<std::size_t>(number) - 1] += du;
  return columnsMovedTo(job, wall, places, Anchored::Follow);
}

// From where it stands in `first` to that far from there, wherever it has gone since with its column.
Outcome<Job> movedFrom(const Job& first, const Job& job, std::size_t wall, const Part& part, Length du, Length dz) {
  const Wall& on = first.walls[wall];
  if (part.kind == Part::Kind::Opening) {
    const auto box = openingBox(first, on, *byId(on.openings, part.id));
    if (!box) return box.faults();
    return openingMovedTo(job, wall, part.id, box.value().left + du, box.value().bottom + dz);
  }
  if (part.kind == Part::Kind::Penetration) {
    const Penetration& penetration = *byId(on.penetrations, part.id);
    const auto box = penetrationBox(first, on, penetration);
    if (!box) return box.faults();
    const Length u = box.value().left + half(penetration.width);
    return penetrationMovedTo(job, wall, part.id, {u + du, penetration.centre + dz});
  }
  const Girt girt = movedBy({{}, {}, {*girtOf(on, part)}}, {du, dz}).girts.front();
  return editedWall(job, wall, [&](Wall& next) { *itemToEdit(next.girts, girt.id) = girt; });
}

bool wouldLieOn(const Girt& girt, const FacePoint& by) { return by.z == Length() && !girt.from && !girt.to; }

}  // namespace

Outcome<Job> partsRemoved(const Job& job, const std::vector<Part>& parts) {
  const std::vector<Part> once = eachOnce(parts);
  if (auto faults = faultsOfParts(job, once); !faults.empty()) return faults;
  Steps steps(job);
  for (const Part& part : withoutColumns(once))
    steps.go([&](const Job& now) { return removedFrom(now, *indexOfWall(now, part.wall), part); });
  for (std::size_t wall = 0; wall < job.walls.size(); ++wall) {
    for (const int number : columnsIn(job.walls[wall], once))
      steps.go([&](const Job& now) { return columnRemoved(now, wall, number, Anchored::Stay); });
  }
  return std::move(steps).now();
}

Outcome<Job> partsMoved(const Job& job, const std::vector<Part>& parts, Length du, Length dz) {
  const std::vector<Part> once = eachOnce(parts);
  if (auto faults = faultsOfParts(job, once); !faults.empty()) return faults;
  Steps steps(job);
  for (std::size_t wall = 0; wall < job.walls.size(); ++wall) {
    const std::vector<int> numbers = columnsIn(job.walls[wall], once);
    if (!numbers.empty()) steps.go([&](const Job& now) { return columnsMovedBy(now, wall, numbers, du); });
  }
  for (const Part& part : withoutColumns(once))
    steps.go([&](const Job& now) { return movedFrom(job, now, *indexOfWall(now, part.wall), part, du, dz); });
  return std::move(steps).now();
}

Outcome<MadeParts> partsCopied(const Job& job, const std::vector<Part>& parts, FacePoint by) {
  MadeParts made{job, {}};
  for (const Part& part : parts) {
    if (!byLetter(job.walls, part.wall)) return cannotEdit(part);
  }
  for (std::size_t wall = 0; wall < job.walls.size(); ++wall) {
    auto things = thingsOf(job.walls[wall], parts);
    if (!things) return things.faults();
    for (const Girt& girt : things.value().girts) {
      if (wouldLieOn(girt, by))
        return Fault{itemPlace(job.walls[wall], "girts", girt.id),
                     "runs from corner to corner; its copy would lie on it; copy it upward or downward"};
    }
    auto more = withThings(made.job, wall, movedBy(std::move(things).value(), by));
    if (!more) return more.faults();
    made.job = std::move(more.value().job);
    made.parts.insert(made.parts.end(), more.value().parts.begin(), more.value().parts.end());
  }
  return made;
}

}  // namespace ribwright
