// Ways in which a finding may be mended, not tried yet.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/editing/remedies.h"

namespace ribwright {

constexpr std::size_t mostOffered = 3;  // of one kind

// Edits that do the same, the one that changes least first: the first that mends is offered.
using RemedyWay = std::vector<OfferedRemedy>;

// What a remedy is sought for. Of a finding of the whole job `wall` is absent.
struct SoughtFor {
  const Job& job;
  const Plan& plan;
  const Finding& finding;
  std::optional<std::size_t> wall;  // index into Job::walls

  const Wall& stated() const { return job.walls[*wall]; }
  const WallPlan& planned() const { return *plan.walls[*wall]; }
  bool is(std::string_view id) const { return finding.id == id; }
  // A value of the finding; absent: it has none of that name and kind.
  std::optional<Length> length(std::string_view name) const;
  std::optional<std::int64_t> number(std::string_view name) const;
  std::string text(std::string_view name) const;
};

using RemedyWays = std::vector<RemedyWay>;

// Of where sheets start: seams, rips, legs and ribs beside jambs and corners.
void addStartWays(const SoughtFor& sought, RemedyWays& ways);
// Of openings and penetrations.
void addOpeningWays(const SoughtFor& sought, RemedyWays& ways);
// Of girts, bands and end laps.
void addSupportWays(const SoughtFor& sought, RemedyWays& ways);
// Of other things that are stated of a wall, its corners, the site and facts from it.
void addStatementWays(const SoughtFor& sought, RemedyWays& ways);
// Of which hole patterns are named, and what they hold twice.
void addPatternWays(const SoughtFor& sought, RemedyWays& ways);

// An edit of one wall, held by the file's own rules.
OfferedRemedy wallRemedy(Phrase name, std::size_t wall, std::function<void(Wall&)> change);

}  // namespace ribwright
