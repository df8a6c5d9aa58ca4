// Hole patterns that walls name or should, rows that a pattern holds twice, laps drilled in two stacks.
#include <algorithm>
#include <set>

#include "core/editing/remedy_ways.h"
#include "core/editing/wall_items.h"

namespace ribwright {
namespace {

bool isForSheetsOf(const ScrewPattern& pattern, const Wall& wall) {
  return std::any_of(wall.bands.begin(), wall.bands.end(), [&](const Band& band) {
    return !band.profile.empty() && (pattern.profile.empty() || pattern.profile == band.profile);
  });
}

// For the wall, or for those of its bands that the pattern is for.
void addPatterns(const SoughtFor& sought, RemedyWays& ways) {
  for (const ScrewPattern& pattern : sought.job.patterns) {
    if (!isForSheetsOf(pattern, sought.stated()) || ways.size() == mostOffered) continue;
    const Phrase name{"offer.pattern", {{"pattern", pattern.id}}};
    RemedyWay way{wallRemedy(name, *sought.wall, [id = pattern.id](Wall& wall) { wall.pattern = id; }),
                  wallRemedy(name, *sought.wall, [id = pattern.id, profile = pattern.profile](Wall& wall) {
                    for (Band& band : wall.bands) {
                      if (profile.empty() || band.profile == profile) band.pattern = id;
                    }
                  })};
    ways.push_back(way);
  }
}

OfferedRemedy patternRemedy(Phrase name, std::string id, std::function<void(ScrewPattern&)> change) {
  return {std::move(name), [id = std::move(id), change = std::move(change)](const Job& job) -> Outcome<Job> {
            Job next = job;
            if (ScrewPattern* pattern = itemToEdit(next.patterns, id)) change(*pattern);
            return next;
          }};
}

void keepFirstRows(ScrewPattern& pattern) {
  std::set<std::pair<SupportKind, Zone>> seen;
  std::erase_if(pattern.rows, [&](const PatternRow& row) { return !seen.emplace(row.support, row.zone).second; });
}

}  // namespace

void addPatternWays(const SoughtFor& sought, RemedyWays& ways) {
  if (sought.is("pattern-row-twice"))
    ways.push_back(
        {patternRemedy({"offer.first-rows", {{"pattern", sought.finding.mark}}}, sought.finding.mark, keepFirstRows)});
  if (!sought.wall) return;
  if (sought.is("no-pattern") || sought.is("pattern-of-other-profile")) addPatterns(sought, ways);
  if (sought.is("lap-holes-apart"))
    ways.push_back(
        {patternRemedy({"offer.upper-sheet-only", {{"pattern", sought.stated().pattern}}}, sought.stated().pattern,
                       [](ScrewPattern& pattern) { pattern.lapHoles = ScrewPattern::LapHoles::UpperSheetOnly; })});
}

}  // namespace ribwright
