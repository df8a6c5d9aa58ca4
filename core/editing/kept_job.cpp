#include "core/editing/kept_job.h"

#include <algorithm>
#include <utility>

namespace ribwright {
namespace {

// Without the lists that are kept item by item.
Wall restOf(const Wall& wall) {
  Wall rest = wall;
  rest.girts.clear();
  rest.openings.clear();
  rest.penetrations.clear();
  rest.survey.girts.clear();
  return rest;
}

Job restOf(const Job& job) {
  Job rest = job;
  rest.profiles.clear();
  rest.patterns.clear();
  rest.facts = {};
  rest.walls.clear();
  return rest;
}

template <class Whole>
std::shared_ptr<const Whole> keepRest(Whole rest, const std::shared_ptr<const Whole>& like) {
  return like && *like == rest ? like : std::make_shared<const Whole>(std::move(rest));
}

bool isKeptWall(const Wall& wall, const KeptWall& kept) {
  return isKept(wall.girts, kept.girts) && isKept(wall.openings, kept.openings) &&
         isKept(wall.penetrations, kept.penetrations) && isKept(wall.survey.girts, kept.measured) &&
         restOf(wall) == *kept.rest;
}

std::shared_ptr<const KeptWall> keepWall(const Wall& wall, const KeptJob& like) {
  const auto before = std::find_if(like.walls.begin(), like.walls.end(),
                                   [&](const auto& known) { return known->rest->letter == wall.letter; });
  static const KeptWall none;
  const KeptWall& known = before == like.walls.end() ? none : **before;
  if (known.rest && isKeptWall(wall, known)) return *before;
  return std::make_shared<const KeptWall>(KeptWall{
      keepRest(restOf(wall), known.rest), keepList(wall.girts, known.girts), keepList(wall.openings, known.openings),
      keepList(wall.penetrations, known.penetrations), keepList(wall.survey.girts, known.measured)});
}

Wall wallOf(const KeptWall& kept) {
  Wall wall = *kept.rest;
  wall.girts = listOf(kept.girts);
  wall.openings = listOf(kept.openings);
  wall.penetrations = listOf(kept.penetrations);
  wall.survey.girts = listOf(kept.measured);
  return wall;
}

}  // namespace

KeptJob keep(const Job& job, const KeptJob* like) {
  static const KeptJob none;
  const KeptJob& before = like ? *like : none;
  KeptJob kept{keepRest(restOf(job), before.rest),        keepList(job.profiles, before.profiles),
               keepList(job.patterns, before.patterns),   keepList(job.facts.hung, before.hung),
               keepList(job.facts.orders, before.orders), {}};
  for (const Wall& wall : job.walls) kept.walls.push_back(keepWall(wall, before));
  return kept;
}

Job jobOf(const KeptJob& kept) {
  Job job = *kept.rest;
  job.profiles = listOf(kept.profiles);
  job.patterns = listOf(kept.patterns);
  job.facts.hung = listOf(kept.hung);
  job.facts.orders = listOf(kept.orders);
  for (const auto& wall : kept.walls) job.walls.push_back(wallOf(*wall));
  return job;
}

bool isKept(const Job& job, const KeptJob& kept) {
  return std::equal(job.walls.begin(), job.walls.end(), kept.walls.begin(), kept.walls.end(),
                    [](const Wall& wall, const auto& known) { return isKeptWall(wall, *known); }) &&
         isKept(job.profiles, kept.profiles) && isKept(job.patterns, kept.patterns) &&
         isKept(job.facts.hung, kept.hung) && isKept(job.facts.orders, kept.orders) && restOf(job) == *kept.rest;
}

}  // namespace ribwright
