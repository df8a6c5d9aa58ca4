// The numbers of hole patterns, once for each pattern that walls use.
#include <algorithm>
#include <map>

#include "core/checks/job_checks.h"
#include "core/checks/screw_words.h"
#include "core/job/by_id.h"
#include "core/job/pattern_numbers.h"

namespace ribwright {
namespace {

// Where a pattern is used.
struct PatternUse {
  const ScrewPattern* pattern = nullptr;
  std::vector<std::string> walls;        // letters
  std::vector<const Profile*> profiles;  // of the bands that it is for
};

template <class Item>
void addOnce(std::vector<Item>& items, const Item& item) {
  if (std::find(items.begin(), items.end(), item) == items.end()) items.push_back(item);
}

std::vector<PatternUse> usesOf(const Job& job) {
  std::vector<PatternUse> uses;
  for (const ScrewPattern& pattern : job.patterns) {
    PatternUse use{&pattern, {}, {}};
    for (const Wall& wall : job.walls) {
      if (wall.cladding != Cladding::Sheeted) continue;
      for (const Band& band : wall.bands) {
        const Profile* profile = byId(job.profiles, band.profile);
        if (!profile || (band.pattern.empty() ? wall.pattern : band.pattern) != pattern.id) continue;
        addOnce(use.walls, wall.letter);
        if (pattern.profile.empty() || pattern.profile == profile->id) addOnce(use.profiles, profile);
      }
    }
    if (!use.walls.empty()) uses.push_back(std::move(use));
  }
  return uses;
}

Finding finding(Grade grade, std::string id, const PatternUse& use, WordValues values, std::string source) {
  values.emplace_back("pattern", use.pattern->id);
  values.emplace_back("walls", listed(use.walls, 12));
  return {grade, std::move(id), "", use.pattern->id, std::move(values), std::move(source)};
}

void checkConfirmation(const Job& job, const PatternUse& use, std::vector<Finding>& findings) {
  const Confirmed confirmed = confirmedIs(*use.pattern, job.screws);
  const std::string numbers = numbersOf(*use.pattern, job.screws);
  if (confirmed == Confirmed::No) {
    findings.push_back(finding(
        Grade::Look, "pattern-not-confirmed", use,
        {{"example", use.pattern->example ? phrase("screws.example") : ""}, {"numbers", numbers}}, "common practice"));
  }
  if (confirmed == Confirmed::Fallen) {
    const Confirmation& was = *use.pattern->confirmation;
    findings.push_back(finding(Grade::Stop, "confirmation-fallen", use,
                               {{"sheet", was.planSheet}, {"by", was.by}, {"date", was.date}, {"numbers", numbers}},
                               "common practice"));
  }
}

std::string rowPart(const PatternRow& row) {
  // Of a row's words those that never change: its kind by number, its zone.
  return "row " + std::to_string(static_cast<int>(row.support) + 1) + (row.zone == Zone::Corner ? " corner" : "");
}

void checkOffsets(const PatternUse& use, std::vector<Finding>& findings) {
  for (const Profile* profile : use.profiles) {
    std::map<std::string, Finding> byRow;
    for (const PatternRow& row : use.pattern->rows) {
      const auto beyond =
          std::count_if(row.offsets.begin(), row.offsets.end(), [&](Length x) { return x >= profile->cover; });
      if (beyond == 0) continue;
      Finding found = finding(Grade::Stop, "offset-beyond-cover", use,
                              {{"kind", kindWords(row.support, row.zone)},
                               {"x", *std::max_element(row.offsets.begin(), row.offsets.end())},
                               {"count", std::int64_t(beyond)},
                               {"cover", profile->cover},
                               {"profile", profile->id}},
                              "");
      found.part = rowPart(row) + (use.profiles.size() > 1 ? " " + profile->id : "");
      byRow.emplace(found.part, found);
    }
    for (const auto& [part, found] : byRow) findings.push_back(found);
  }
}

// Of two rows for one kind of support and zone the first counts.
void checkRowsTwice(const PatternUse& use, std::vector<Finding>& findings) {
  const auto& rows = use.pattern->rows;
  std::map<std::string, std::int64_t> counts;
  for (const PatternRow& row : rows) {
    if (++counts[rowPart(row)] != 2) continue;
    findings.push_back(
        finding(Grade::Stop, "pattern-row-twice", use, {{"kind", kindWords(row.support, row.zone)}}, ""));
    findings.back().part = rowPart(row);
  }
}

void checkCornerRows(const Job& job, const PatternUse& use, std::vector<Finding>& findings) {
  const CornerZones& zones = job.settings.cornerZones;
  const bool set =
      zones.rule != CornerZones::Rule::None && (zones.rule != CornerZones::Rule::Typed || zones.width > Length());
  const auto& rows = use.pattern->rows;
  const bool stated =
      std::any_of(rows.begin(), rows.end(), [](const PatternRow& row) { return row.zone == Zone::Corner; });
  if (!set || stated) return;
  const char* source = zones.rule == CornerZones::Rule::Asce7    ? "ASCE 7"
                       : zones.rule == CornerZones::Rule::En1991 ? "EN 1991-1-4"
                                                                 : "";
  findings.push_back(finding(Grade::Look, "corner-pattern-missing", use, {}, source));
}

}  // namespace

void checkPatternNumbers(const Job& job, std::vector<Finding>& findings) {
  for (const PatternUse& use : usesOf(job)) {
    checkConfirmation(job, use, findings);
    checkOffsets(use, findings);
    checkRowsTwice(use, findings);
    checkCornerRows(job, use, findings);
  }
}

}  // namespace ribwright
