#include "core/editing/sight_edits.h"

#include "core/editing/held_edit.h"
#include "core/job/job_file_joined.h"

namespace ribwright {
namespace {

template <class Edit>
Outcome<Job> editedPoint(const Job& job, std::size_t index, const Edit& edit) {
  if (index >= job.site.sightPoints.size())
    return Fault{"site.sight_points", joined("has no number ", index + 1, "; there are ", job.site.sightPoints.size())};
  Job next = job;
  edit(next.site.sightPoints[index]);
  return ifSiteHeld(std::move(next));
}

}  // namespace

Outcome<Job> sightPointAdded(const Job& job, const SightPoint& point) {
  Job next = job;
  next.site.sightPoints.push_back(point);
  return ifSiteHeld(std::move(next));
}

Outcome<Job> sightPointMovedTo(const Job& job, std::size_t index, PlanPoint to) {
  return editedPoint(job, index, [&](SightPoint& point) { point.at = to; });
}

Outcome<Job> sightPointRenamed(const Job& job, std::size_t index, const std::string& name) {
  return editedPoint(job, index, [&](SightPoint& point) { point.name = name; });
}

Outcome<Job> sightPointWeighted(const Job& job, std::size_t index, int weight) {
  return editedPoint(job, index, [&](SightPoint& point) { point.weight = weight; });
}

Outcome<Job> sightPointRemoved(const Job& job, std::size_t index) {
  auto known = editedPoint(job, index, [](SightPoint&) {});
  if (!known) return known;
  Job next = std::move(known).value();
  next.site.sightPoints.erase(next.site.sightPoints.begin() + static_cast<std::ptrdiff_t>(index));
  return next;
}

}  // namespace ribwright
