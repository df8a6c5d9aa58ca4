// What a person types into a cell of the survey: for one edge, at one station.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/editing/reading_text.h"
#include "core/fastening/survey_grid.h"
#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

struct ReadBy {
  std::string by, date;
};

// `text` as parseReading reads it in the job's own units, "=" for the reading left of this one on the same edge; blank
// text strikes the reading out. `wall`: index into Job::walls.
// Faults: text that is no reading; a stick check without name and date, or of the slab edge; an edge that has no id, or
// does not reach to u.
Outcome<Job> enterReading(const Job& job, std::size_t wall, const SurveyLine& line, Length u, std::string_view text,
                          const ReadBy& who);

// What a person reads and may type again; empty: not measured there.
std::string typedText(const Job& job, std::size_t wall, const SurveyLine& line, Length u);

}  // namespace ribwright
