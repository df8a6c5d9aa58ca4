// The building as a person reads it in fields, and types it anew.
#pragma once

#include <string>

#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

struct BuildingTexts {
  std::string length, width;  // of the box round the outline
  Roof::Kind roof = Roof::Kind::None;
  Roof::Ends ends = Roof::Ends::BD;
  std::string eave;
  std::string rise;  // a slope, or the height of the ridge or of a single slope's higher side; empty: level
  bool operator==(const BuildingTexts&) const = default;
};

// Fault: the job has no outline.
Outcome<BuildingTexts> buildingTexts(const Job& job);

// What was typed anew is read, what was left stays exactly as it is stated. Another kind of roof forgets what only the
// old one had. Faults: place is "length", "width", "eave", "rise", or a wall's or the roof's own.
Outcome<Job> buildingFromTexts(const Job& job, const BuildingTexts& typed);

// The same, and every opening that has no place then goes to the nearest one where it fits; one that fits nowhere
// stays.
Outcome<Job> buildingFromTextsAndFitted(const Job& job, const BuildingTexts& typed);

}  // namespace ribwright
