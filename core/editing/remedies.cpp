#include "core/editing/remedies.h"

#include <algorithm>
#include <map>
#include <optional>

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

using GradeByKey = std::map<std::string, Grade>;

GradeByKey gradesOf(const Plan& plan) {
  GradeByKey grades;
  for (const Finding& finding : plan.findings) grades.emplace(finding.key(), finding.grade);
  return grades;
}

int countMissing(const GradeByKey& those, const GradeByKey& from) {
  return static_cast<int>(
      std::count_if(those.begin(), those.end(), [&](const auto& each) { return !from.contains(each.first); }));
}

// Absent: the finding stays, or a stop would come.
std::optional<OfferedRemedy> tried(const SoughtFor& sought, const GradeByKey& before, OfferedRemedy remedy) {
  const Outcome<Job> made = remedy.edit(sought.job);
  if (!made || made.value() == sought.job) return std::nullopt;
  const GradeByKey after = gradesOf(plan(made.value(), sought.plan));
  const auto stops = [&](const auto& each) {
    const auto was = before.find(each.first);
    return each.second == Grade::Stop && (was == before.end() || was->second != Grade::Stop);
  };
  if (after.contains(sought.finding.key()) || std::any_of(after.begin(), after.end(), stops)) return std::nullopt;
  remedy.othersGone = countMissing(before, after) - 1;
  remedy.othersCome = countMissing(after, before);
  return remedy;
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
  const GradeByKey before = gradesOf(plan);
  std::vector<OfferedRemedy> offered;
  for (const RemedyWay& way : ways) {
    std::optional<OfferedRemedy> mending;
    for (std::size_t i = 0; i < way.size() && !mending; ++i) mending = tried(sought, before, way[i]);
    if (mending) offered.push_back(std::move(*mending));
  }
  std::stable_sort(offered.begin(), offered.end(), [](const OfferedRemedy& a, const OfferedRemedy& b) {
    return a.othersCome - a.othersGone < b.othersCome - b.othersGone;
  });
  return offered;
}

}  // namespace ribwright
