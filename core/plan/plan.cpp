#include "core/plan/plan.h"

#include <algorithm>

#include "core/checks/delivery_checks.h"
#include "core/checks/findings_of.h"
#include "core/checks/order_checks.h"
#include "core/checks/trim_checks.h"
#include "core/layout/lay_out_wall.h"

namespace ribwright {

namespace {

// All that a wall's layout, holes and checks read, and nothing else: equal reads give an equal wall.
Job readsOf(const Job& job, const Wall& wall) {
  Job reads;
  reads.units = job.units;
  reads.site = job.site;
  reads.building = job.building;
  reads.building.name.clear();
  reads.settings = job.settings;
  for (const Profile& profile : job.profiles) {
    const bool used =
        std::any_of(wall.bands.begin(), wall.bands.end(), [&](const Band& band) { return band.profile == profile.id; });
    if (used) reads.profiles.push_back(profile);
  }
  reads.members = job.members;
  reads.screws = job.screws;
  for (const ScrewPattern& pattern : job.patterns) {
    const bool used = pattern.id == wall.pattern || std::any_of(wall.bands.begin(), wall.bands.end(),
                                                                [&](const Band& b) { return b.pattern == pattern.id; });
    if (used) reads.patterns.push_back(pattern);
  }
  reads.walls = {wall};
  for (const HungSheet& hung : job.facts.hung) {
    if (hung.mark.starts_with(wall.letter)) reads.facts.hung.push_back(hung);
  }
  return reads;
}

std::shared_ptr<const WallPlan> planWall(Job reads) {
  auto made = std::make_shared<WallPlan>();
  made->reads = std::move(reads);
  const Wall& wall = made->reads.walls.front();
  auto layout = layOutWall(made->reads, wall);
  if (layout) {
    made->layout = std::move(layout).value();
    made->holes = holesOf(made->reads, wall, made->layout);
    made->batches = drillBatches(made->reads, wall, made->layout, made->holes);
    made->findings = findingsOf(made->reads, wall, made->layout, made->holes, made->batches);
    holdForStops(made->batches, made->layout, stopsThatHold(made->findings));
  } else {
    made->layout.letter = wall.letter;
    for (const Fault& fault : layout.faults()) made->findings.push_back(notLaidOut(wall, fault));
  }
  return made;
}

std::shared_ptr<const WallPlan> found(const Plan& previous, const Job& reads) {
  for (const auto& wall : previous.walls) {
    if (wall->reads == reads) return wall;
  }
  return nullptr;
}

std::vector<Finding> gathered(const Job& job, const Plan& plan) {
  std::vector<Finding> all = findingsOfJob(job);
  checkTrims(job, plan.layouts(), all);
  for (const auto& wall : plan.walls) all.insert(all.end(), wall->findings.begin(), wall->findings.end());
  const auto ofOrder = findingsOfOrder(job, plan.layouts(), plan.order);
  all.insert(all.end(), ofOrder.begin(), ofOrder.end());
  const auto ofDeliveries = findingsOfDeliveries(job, plan.layouts(), plan.order);
  all.insert(all.end(), ofDeliveries.begin(), ofDeliveries.end());
  std::erase_if(all, [&](const Finding& finding) {
    return std::any_of(job.silenced.begin(), job.silenced.end(),
                       [&](const SilencedFinding& s) { return s.key == finding.key(); });
  });
  std::stable_sort(all.begin(), all.end(), [](const Finding& a, const Finding& b) { return a.grade < b.grade; });
  return all;
}

}  // namespace

bool Plan::hasStop() const {
  return std::any_of(findings.begin(), findings.end(),
                     [](const Finding& finding) { return finding.grade == Grade::Stop; });
}

std::vector<const WallLayout*> Plan::layouts() const {
  std::vector<const WallLayout*> all;
  for (const auto& wall : walls) all.push_back(&wall->layout);
  return all;
}

Plan plan(const Job& job) { return plan(job, Plan{}); }

Plan plan(const Job& job, const Plan& previous) {
  Plan made;
  for (const Wall& wall : job.walls) {
    Job reads = readsOf(job, wall);
    auto known = found(previous, reads);
    made.walls.push_back(known ? known : planWall(std::move(reads)));
  }
  made.order = sheetOrder(job, made.layouts());
  made.findings = gathered(job, made);
  return made;
}

}  // namespace ribwright
