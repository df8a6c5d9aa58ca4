#include "core/editing/paste_place.h"

#include <algorithm>
#include <vector>

#include "core/editing/anchor_places.h"
#include "core/editing/opening_edits.h"
#include "core/editing/penetration_edits.h"
#include "core/job/job_file_joined.h"
#include "core/layout/wall_face.h"

namespace ribwright {
namespace {

// Boxes of the wall's openings, then of its penetrations, from the given ones on; those without a place are left out.
std::vector<FaceBox> boxesFrom(const Job& job, const Wall& wall, std::size_t opening, std::size_t penetration) {
  std::vector<FaceBox> boxes;
  for (std::size_t i = opening; i < wall.openings.size(); ++i) {
    if (const auto box = openingBox(job, wall, wall.openings[i])) boxes.push_back(box.value());
  }
  for (std::size_t i = penetration; i < wall.penetrations.size(); ++i) {
    if (const auto box = penetrationBox(job, wall, wall.penetrations[i])) boxes.push_back(box.value());
  }
  return boxes;
}

bool overlap(const FaceBox& a, const FaceBox& b) {
  return a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top;
}

bool anyOverlap(const std::vector<FaceBox>& added, const std::vector<FaceBox>& old) {
  return std::any_of(added.begin(), added.end(), [&](const FaceBox& box) {
    return std::any_of(old.begin(), old.end(), [&](const FaceBox& other) { return overlap(box, other); });
  });
}

struct Reach {
  Length left, right;
};

Reach reachOf(const std::vector<FaceBox>& boxes) {
  Reach reach{boxes.front().left, boxes.front().right};
  for (const FaceBox& box : boxes) reach = {std::min(reach.left, box.left), std::max(reach.right, box.right)};
  return reach;
}

// How far from the column at its left to each other column of the wall.
std::vector<Length> stepsByColumns(const ColumnGrid& columns, const Reach& reach) {
  if (columns.bays.empty()) return {};
  const int count = static_cast<int>(columns.bays.size()) + 1;
  int here = 1;
  while (here < count && *columnAt(columns, here + 1) <= reach.left) ++here;
  std::vector<Length> steps;
  for (int n = here + 1; n <= count; ++n) steps.push_back(*columnAt(columns, n) - *columnAt(columns, here));
  for (int n = here - 1; n >= 1; --n) steps.push_back(*columnAt(columns, n) - *columnAt(columns, here));
  return steps;
}

std::vector<Length> stepsByWidth(Length width, const Reach& reach) {
  const Length step = reach.right - reach.left + Length::feet(1);
  std::vector<Length> steps;
  for (Length u = step; reach.right + u <= width; u += step) steps.push_back(u);
  for (Length u = step; reach.left - u >= Length(); u += step) steps.push_back(-u);
  return steps;
}

Outcome<MadeParts> firstFree(const Job& job, std::size_t wall, const CopiedParts& copied, const MadeParts& asCopied) {
  const Wall &before = job.walls[wall], &after = asCopied.job.walls[wall];
  const auto old = boxesFrom(job, before, 0, 0);
  const auto added = boxesFrom(asCopied.job, after, before.openings.size(), before.penetrations.size());
  const auto width = faceWidth(job, before);
  if (!width || added.empty() || !anyOverlap(added, old)) return asCopied;
  const Reach reach = reachOf(added);
  std::vector<Length> steps = stepsByColumns(before.columns, reach);
  for (const Length step : stepsByWidth(width.value(), reach)) steps.push_back(step);
  for (const Length step : steps) {
    if (reach.left + step < Length() || reach.right + step > width.value()) continue;
    const auto moved = pasted(job, wall, copied, {step, Length()});
    if (!moved) continue;
    const Wall& there = moved.value().job.walls[wall];
    if (!anyOverlap(boxesFrom(moved.value().job, there, before.openings.size(), before.penetrations.size()), old))
      return moved;
  }
  return asCopied;
}

bool onOneAnother(const Girt& a, const Girt& b) {
  const auto ends = [](const std::optional<Length>& from, const std::optional<Length>& to) {
    return !from || !to || *from < *to;
  };
  return a.height == b.height && a.typedBy == b.typedBy && ends(a.from, b.to) && ends(b.from, a.to);
}

std::vector<Fault> girtsOnGirts(const Wall& before, const CopiedParts& copied) {
  std::vector<Fault> faults;
  for (const Girt& girt : copied.girts) {
    const auto other = std::find_if(before.girts.begin(), before.girts.end(),
                                    [&](const Girt& there) { return onOneAnother(girt, there); });
    if (other == before.girts.end()) continue;
    faults.push_back({joined("walls.", before.letter), joined("girt ", girt.id, " would lie on girt ", other->id,
                                                              "; copy without it, or move that one")});
  }
  return faults;
}

}  // namespace

Outcome<MadeParts> pastedWhereFree(const Job& job, std::size_t wall, const CopiedParts& copied) {
  const std::vector<Fault> faults = girtsOnGirts(job.walls.at(wall), copied);
  if (!faults.empty()) return faults;
  const auto asCopied = pasted(job, wall, copied);
  if (!asCopied) return asCopied;
  return firstFree(job, wall, copied, asCopied.value());
}

}  // namespace ribwright
