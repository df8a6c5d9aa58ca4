// Walls whose screws all hold, and what is found when one number of them is changed.
//
// Sheets of 36 in cover: lip 1-1/2, leg 3/4 in; pans from 1 to 11, 13 to 23 and 25 to 35 in from the module line.
// Screws of 1/4 in with a washer of 1/2 in: 3/8 in from metal edges, 1/2 in from the ends of a screw face, 5/16 in from
// bends.
#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include "../layout/example_walls.h"
#include "core/job/pattern_numbers.h"
#include "core/plan/plan.h"

namespace ribwright::examples {

constexpr Length inches(std::int64_t whole, std::int64_t sixtyFourths = 0) {
  return Length::inches(whole, sixtyFourths);
}

inline void confirm(Job& job) {
  for (ScrewPattern& pattern : job.patterns) {
    pattern.example = false;
    pattern.confirmation = Confirmation{"S-4", "N. Example", "2026-03-02", numbersOf(pattern, job.screws)};
  }
}

// Screws at 6, 18 and 30 in on every kind of support, and zed girts at 4 and 8 ft where the wall has none.
inline Job screwed(Job job) {
  job.members.push_back({"Z8x2.5x0.068", Member::Shape::Zed, Length::inches(8), Length::inches(2, 32),
                         Length::inches(0, 48), Length::nanometres(1'727'200), Length::inches(0, 12)});
  job.screws.push_back(
      {"1/4x1", Length::inches(0, 16), Length::inches(0, 32), Length::inches(1), Length::inches(0, 8)});
  ScrewPattern pattern;
  pattern.id = "thirds";
  pattern.profile = job.profiles[0].id;
  for (const SupportKind kind : {SupportKind::Base, SupportKind::Girt, SupportKind::Eave, SupportKind::Rake,
                                 SupportKind::Jamb, SupportKind::Head, SupportKind::Sill, SupportKind::EndLap}) {
    PatternRow row;
    row.support = kind;
    row.offsets = {Length::inches(6), Length::inches(18), Length::inches(30)};
    row.screw = "1/4x1";
    pattern.rows.push_back(row);
  }
  job.patterns.push_back(pattern);
  Wall& wall = job.walls[0];
  wall.pattern = pattern.id;
  for (const int feet : {4, 8}) {
    Girt girt;
    girt.id = std::string("g").append(std::to_string(feet));
    girt.height = Length::feet(feet);
    girt.member = "Z8x2.5x0.068";
    wall.girts.push_back(girt);
  }
  job.settings.cornerTrimLeg = Length::nanometres(1);
  confirm(job);
  return job;
}

// 40 ft wide and 12 ft high, of which nothing is to be found.
// Its girts are measured, and stand where they were planned.
inline Job quietWall() {
  Job job = screwed(freeWall(Length::feet(40)));
  Wall& wall = job.walls[0];
  for (const Girt& girt : wall.girts) {
    const Length height = girt.height + wall.base.drop;
    wall.survey.girts.push_back({girt.id, {{Length(), height, {}, "", ""}, {Length::feet(40), height, {}, "", ""}}});
  }
  return job;
}

inline PatternRow& rowOf(Job& job, SupportKind kind) {
  auto& rows = job.patterns[0].rows;
  return *std::find_if(rows.begin(), rows.end(), [kind](const PatternRow& row) { return row.support == kind; });
}

// With the pattern's new numbers confirmed: of them alone nothing is to be found.
inline std::vector<Finding> foundOf(Job job, const std::string& id) {
  confirm(job);
  std::vector<Finding> found;
  for (const Finding& finding : plan(job).findings) {
    if (finding.id == id) found.push_back(finding);
  }
  return found;
}

inline std::vector<std::string> idsOf(Job job) {
  confirm(job);
  std::vector<std::string> ids;
  for (const Finding& finding : plan(job).findings) ids.push_back(finding.id);
  return ids;
}

template <class Value>
Value valueOf(const Finding& finding, const std::string& name) {
  for (const auto& [key, value] : finding.values) {
    if (key == name) return std::get<Value>(value);
  }
  throw std::out_of_range(name);
}
// A name, or a phrase as it is said in English.
inline std::string wordsOf(const Finding& finding, const std::string& name) {
  for (const auto& [key, value] : finding.values) {
    if (key != name) continue;
    const Phrase* phrase = std::get_if<Phrase>(&value);
    return phrase ? Words::of("en").say(*phrase, {}) : std::get<std::string>(value);
  }
  throw std::out_of_range(name);
}
inline Length lengthOf(const Finding& finding, const std::string& name) { return valueOf<Length>(finding, name); }
inline std::int64_t countOf(const Finding& finding) { return valueOf<std::int64_t>(finding, "count"); }

// "screws.right": what stands for a word that is missing.
inline bool saysAnId(const std::string& said) {
  const std::string start = "screws.";
  for (std::size_t at = said.find(start); at != std::string::npos; at = said.find(start, at + 1)) {
    const std::size_t next = at + start.size();
    if (next < said.size() && said[next] >= 'a' && said[next] <= 'z') return true;
  }
  return false;
}

// Place, reason and remedy have words, and every value that they name; no word is missing within them.
inline bool saysAll(const Finding& finding) {
  const Words& words = Words::of("en");
  for (const char* part : {".where", ".why", ".do"}) {
    const std::string id = std::string("finding.").append(finding.id).append(part);
    const std::string said = words.say(id, finding.said(), {});
    if (!words.knows(id) || said.find('{') != std::string::npos || saysAnId(said)) return false;
  }
  return true;
}

}  // namespace ribwright::examples
