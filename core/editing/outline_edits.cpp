#include "core/editing/outline_edits.h"

#include <algorithm>

#include "core/editing/held_edit.h"
#include "core/editing/wall_items.h"

namespace ribwright {
namespace {

constexpr std::string_view kTop = "top", kSteps = "base.steps";

Fault noSuchPoint(const Wall& wall, std::string_view list, std::size_t index, std::size_t count) {
  return {listPlace(wall, list), joined("has no point ", index + 1, "; there are ", count)};
}

void putIn(std::vector<FacePoint>& points, const FacePoint& at) {
  const auto right = std::find_if(points.begin(), points.end(), [&](const FacePoint& one) { return one.u > at.u; });
  points.insert(right, at);
}

void takeOut(std::vector<FacePoint>& points, std::size_t index) {
  points.erase(points.begin() + static_cast<std::ptrdiff_t>(index));
}

}  // namespace

Outcome<Job> topPointAdded(const Job& job, std::size_t wall, FacePoint at) {
  const Wall& on = job.walls.at(wall);
  if (on.top.empty())
    return Fault{listPlace(on, kTop), "follows from the roof; change the roof, or state this wall's own top first"};
  return editedWall(job, wall, [&](Wall& next) { putIn(next.top, at); });
}

Outcome<Job> topPointMovedTo(const Job& job, std::size_t wall, std::size_t index, FacePoint to) {
  const Wall& on = job.walls.at(wall);
  if (index >= on.top.size()) return noSuchPoint(on, kTop, index, on.top.size());
  return editedWall(job, wall, [&](Wall& next) { next.top[index] = to; });
}

Outcome<Job> topPointRemoved(const Job& job, std::size_t wall, std::size_t index) {
  const Wall& on = job.walls.at(wall);
  if (index >= on.top.size()) return noSuchPoint(on, kTop, index, on.top.size());
  if (on.top.size() == 1) return Fault{listPlace(on, kTop), "has this point alone; a stated top keeps at least one"};
  return editedWall(job, wall, [&](Wall& next) { takeOut(next.top, index); });
}

Outcome<Job> baseStepAdded(const Job& job, std::size_t wall, FacePoint at) {
  return editedWall(job, wall, [&](Wall& next) { putIn(next.base.steps, at); });
}

Outcome<Job> baseStepMovedTo(const Job& job, std::size_t wall, std::size_t index, FacePoint to) {
  const Wall& on = job.walls.at(wall);
  if (index >= on.base.steps.size()) return noSuchPoint(on, kSteps, index, on.base.steps.size());
  return editedWall(job, wall, [&](Wall& next) { next.base.steps[index] = to; });
}

Outcome<Job> baseStepRemoved(const Job& job, std::size_t wall, std::size_t index) {
  const Wall& on = job.walls.at(wall);
  if (index >= on.base.steps.size()) return noSuchPoint(on, kSteps, index, on.base.steps.size());
  return editedWall(job, wall, [&](Wall& next) { takeOut(next.base.steps, index); });
}

}  // namespace ribwright
