#include "core/editing/trim_edits.h"

#include <algorithm>

#include "core/editing/new_item_ways.h"
#include "core/job/by_id.h"
#include "core/job/trim_file.h"

namespace ribwright {
namespace {

std::string firstColour(const Job& job) {
  for (const Wall& wall : job.walls) {
    if (wall.cladding == Cladding::Sheeted && !wall.bands.empty()) return wall.bands.front().colour;
  }
  return {};
}

// Rules of the set that speak of what none of the job's do.
std::vector<TrimRule> rulesMissing(const Job& job, const TrimSet& set) {
  std::vector<TrimRule> missing;
  std::copy_if(set.rules.begin(), set.rules.end(), std::back_inserter(missing), [&](const TrimRule& rule) {
    return std::none_of(job.trimRules.begin(), job.trimRules.end(),
                        [&](const TrimRule& stated) { return stated.where == rule.where; });
  });
  return missing;
}

}  // namespace

Outcome<Job> takeShippedTrim(const Job& job) {
  const TrimSet& set = shippedTrim(job.units);
  const std::vector<TrimRule> missing = rulesMissing(job, set);
  if (missing.empty()) return Fault{"trim rules", "the job has rules for all that the shipped ones speak of"};
  Job next = job;
  const std::string colour = firstColour(job);
  for (const Trim& trim : set.trims) {
    const bool named =
        std::any_of(missing.begin(), missing.end(), [&](const TrimRule& rule) { return rule.trim == trim.id; });
    if (!named || byId(job.trims, trim.id)) continue;
    next.trims.push_back(trim);
    next.trims.back().colour = colour;
  }
  for (TrimRule rule : missing) {
    rule.id = new_items::freeName(next.trimRules, rule.id, &TrimRule::id);
    next.trimRules.push_back(std::move(rule));
  }
  return next;
}

}  // namespace ribwright
