#include "core/editing/remedies.h"

#include <algorithm>
#include <set>

#include "core/editing/held_edit.h"
#include "core/editing/remedy_ways.h"

namespace ribwright {
namespace {

const WordValue* valueOf(const WordValues& values, std::string_view name) {
  for (const auto& [key, value] : values) {
    if (key == name) return &value;
    const auto* inner = std::get_if<Phrase>(&value);
    if (const WordValue* found = inner ? valueOf(inner->values, name) : nullptr) return found;
  }
  return nullptr;
}

template <class Kind>
std::optional<Kind> heldBy(const Finding& finding, std::string_view name) {
  const WordValue* value = valueOf(finding.values, name);
  const Kind* kept = value ? std::get_if<Kind>(value) : nullptr;
  return kept ? std::optional(*kept) : std::nullopt;
}

std::set<std::string> stopsOf(const Plan& plan) {
  std::set<std::string> keys;
  for (const Finding& finding : plan.findings) {
    if (finding.grade == Grade::Stop) keys.insert(finding.key());
  }
  return keys;
}

bool mends(const SoughtFor& sought, const OfferedRemedy& remedy) {
  const Outcome<Job> made = remedy.edit(sought.job);
  if (!made || made.value() == sought.job) return false;
  const Plan next = plan(made.value(), sought.plan);
  const std::string key = sought.finding.key();
  const std::set<std::string> stops = stopsOf(sought.plan);
  return std::none_of(next.findings.begin(), next.findings.end(), [&](const Finding& found) {
    return found.key() == key || (found.grade == Grade::Stop && !stops.contains(found.key()));
  });
}

std::optional<std::size_t> wallOf(const Job& job, const Plan& plan, const Finding& finding) {
  for (std::size_t i = 0; i < job.walls.size() && i < plan.walls.size(); ++i) {
    if (job.walls[i].letter == finding.wall) return i;
  }
  return std::nullopt;
}

}  // namespace

std::optional<Length> SoughtFor::length(std::string_view name) const { return heldBy<Length>(finding, name); }

std::optional<std::int64_t> SoughtFor::number(std::string_view name) const {
  return heldBy<std::int64_t>(finding, name);
}

std::string SoughtFor::text(std::string_view name) const {
  return heldBy<std::string>(finding, name).value_or(std::string());
}

OfferedRemedy wallRemedy(Phrase name, std::size_t wall, std::function<void(Wall&)> change) {
  return {std::move(name), [wall, change = std::move(change)](const Job& job) -> Outcome<Job> {
            if (wall >= job.walls.size()) return Fault{"", "the wall is not there any more"};
            return editedWall(job, wall, change);
          }};
}

std::vector<OfferedRemedy> remediesFor(const Job& job, const Plan& plan, const Finding& finding) {
  const SoughtFor sought{job, plan, finding, wallOf(job, plan, finding)};
  RemedyWays ways;
  for (const auto add : {addStartWays, addOpeningWays, addSupportWays, addStatementWays, addPatternWays})
    add(sought, ways);
  std::vector<OfferedRemedy> offered;
  for (const RemedyWay& way : ways) {
    const auto mending =
        std::find_if(way.begin(), way.end(), [&](const OfferedRemedy& remedy) { return mends(sought, remedy); });
    if (mending != way.end()) offered.push_back(*mending);
  }
  return offered;
}

}  // namespace ribwright
