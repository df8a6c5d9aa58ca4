#include "core/editing/run_edits.h"

#include <algorithm>

#include "core/editing/anchor_places.h"
#include "core/editing/held_edit.h"
#include "core/editing/wall_items.h"
#include "core/layout/hanging_frame.h"

namespace ribwright {
namespace {

constexpr std::string_view kJoints = "expansion_joints", kBands = "bands";

Fault none(const Wall& wall, std::string_view list, std::size_t index, std::size_t count) {
  return {listPlace(wall, list), joined("has no number ", index + 1, "; there are ", count)};
}

std::optional<Fault> offWall(const Job& job, const Wall& wall, Length joint) {
  const auto width = faceWidth(job, wall);
  if (!width) return width.faults().front();
  if (joint > Length() && joint < width.value()) return std::nullopt;
  return Fault{listPlace(wall, kJoints), "would not stand on the wall; keep the joint between its two corners"};
}

// Limits that a band's lower limit must stay between: those of its neighbours, or where the sheets end.
std::optional<Fault> offBand(const Job& job, const Wall& wall, std::size_t index, Length z) {
  const auto face = wallFace(job, wall);
  if (!face) return face.faults().front();
  Length low = face.value().bottom.lowest(Length(), face.value().width);
  Length high = face.value().top.highest(Length(), face.value().width);
  if (index > 1) low = wall.bands[index - 1].from.value_or(low);
  if (index + 1 < wall.bands.size()) high = wall.bands[index + 1].from.value_or(high);
  if (z > low && z < high) return std::nullopt;
  return Fault{listPlace(wall, kBands), "would leave a band no height; keep the limit between the two beside it"};
}

}  // namespace

Outcome<Job> moduleLineMovedTo(const Job& job, const Plan& plan, std::size_t wall, std::size_t run, Length u) {
  const Wall& on = job.walls.at(wall);
  const WallLayout& layout = plan.walls.at(wall)->layout;
  if (run >= layout.runs.size()) return none(on, "runs", run, layout.runs.size());
  const SheetRun& of = layout.runs[run];
  const auto band = static_cast<std::size_t>(of.band);
  const Profile* profile = byId(job.profiles, on.bands.at(band).profile);
  if (!profile) return Fault{listPlace(on, kBands), "has no profile; choose one first"};
  const HangingFrame frame{of.left, of.right, layout.direction.hand};
  return editedWall(job, wall, [&](Wall& next) {
    Start& start = next.bands[band].start ? *next.bands[band].start : next.start;
    start.rule = Start::Rule::Typed;
    start.offset = rest(frame.toHanging(u), profile->cover);
  });
}

Outcome<Job> hungFrom(const Job& job, std::size_t wall, Hang hang) {
  return editedWall(job, wall, [&](Wall& on) { on.hang = hang; });
}

Outcome<Job> jointAdded(const Job& job, std::size_t wall, Length u) {
  if (auto fault = offWall(job, job.walls.at(wall), u)) return *fault;
  return editedWall(job, wall, [&](Wall& on) {
    on.expansionJoints.insert(std::lower_bound(on.expansionJoints.begin(), on.expansionJoints.end(), u), u);
  });
}

Outcome<Job> jointMovedTo(const Job& job, std::size_t wall, std::size_t index, Length u) {
  const Wall& on = job.walls.at(wall);
  if (index >= on.expansionJoints.size()) return none(on, kJoints, index, on.expansionJoints.size());
  if (auto fault = offWall(job, on, u)) return *fault;
  return editedWall(job, wall, [&](Wall& next) { next.expansionJoints[index] = u; });
}

Outcome<Job> jointRemoved(const Job& job, std::size_t wall, std::size_t index) {
  const Wall& on = job.walls.at(wall);
  if (index >= on.expansionJoints.size()) return none(on, kJoints, index, on.expansionJoints.size());
  return editedWall(job, wall, [&](Wall& next) {
    next.expansionJoints.erase(next.expansionJoints.begin() + static_cast<std::ptrdiff_t>(index));
  });
}

Outcome<Job> bandSplitAt(const Job& job, std::size_t wall, Length z) {
  const Wall& on = job.walls.at(wall);
  if (on.bands.empty()) return Fault{listPlace(on, kBands), "has none; state the sheets of the wall first"};
  std::size_t above = 1;
  while (above < on.bands.size() && on.bands[above].from.value_or(z) <= z) ++above;
  Wall split = on;
  Band upper = on.bands[above - 1];
  upper.from = z;
  upper.gap = Length();
  split.bands.insert(split.bands.begin() + static_cast<std::ptrdiff_t>(above), upper);
  if (auto fault = offBand(job, split, above, z)) return *fault;
  return editedWall(job, wall, [&](Wall& next) { next.bands = split.bands; });
}

Outcome<Job> bandLimitMovedTo(const Job& job, std::size_t wall, std::size_t index, Length z) {
  const Wall& on = job.walls.at(wall);
  if (index >= on.bands.size()) return none(on, kBands, index, on.bands.size());
  if (index == 0)
    return Fault{listPlace(on, kBands), "the lowest begins at the base; move the base, or the band above"};
  if (auto fault = offBand(job, on, index, z)) return *fault;
  return editedWall(job, wall, [&](Wall& next) { next.bands[index].from = z; });
}

Outcome<Job> bandRemoved(const Job& job, std::size_t wall, std::size_t index) {
  const Wall& on = job.walls.at(wall);
  if (index >= on.bands.size()) return none(on, kBands, index, on.bands.size());
  if (on.bands.size() == 1) return Fault{listPlace(on, kBands), "has this one alone; a sheeted wall keeps one"};
  return editedWall(job, wall, [&](Wall& next) {
    next.bands.erase(next.bands.begin() + static_cast<std::ptrdiff_t>(index));
    next.bands.front().from.reset();
    if (index == 0) next.bands.front().gap = Length();
  });
}

}  // namespace ribwright
