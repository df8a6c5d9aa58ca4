// What a selected or hovered thing says of itself: names and values, the ones that are asked for first come first.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/checks/finding.h"
#include "core/drawing/drawing.h"
#include "core/job/job.h"
#include "core/plan/plan.h"
#include "core/words/words.h"

namespace ribwright {

struct Particular {
  std::string name, value;
  bool operator==(const Particular&) const = default;
};

// Empty when the job has no such part. `plan` must be of `job`. Lengths with their unit, to 1/64 in or 0.1 mm where
// they are no whole mark of a tape.
std::vector<Particular> particularsOf(const Job& job, const Plan& plan, const Part& part, const Words& words,
                                      const LengthStyle& style);

// "Sheet B7", "Wall B, right end".
std::string titleOf(const Job& job, const Part& part, const Words& words);

// In one line: the title and what comes first. Empty when the job has no such part.
std::string lineOf(const Job& job, const Plan& plan, const Part& part, const Words& words, const LengthStyle& style);

// The part that a finding points at: by its mark among the sheets, openings, penetrations and girts of its wall.
// Absent: it points at none, or at a whole wall or job.
std::optional<Part> partOf(const Job& job, const Plan& plan, const Finding& finding);

// Each wall's index by its letter.
std::optional<std::size_t> wallIndex(const Job& job, std::string_view letter);

}  // namespace ribwright
