// The opening schedule as a table: out of a job, and back into it from a spreadsheet.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/job/job.h"
#include "core/output/csv.h"
#include "core/units/length_text.h"
#include "core/units/outcome.h"

namespace ribwright {

// A row an opening, wall by wall, all that is stated of it in the words of the job file. from: left corner, right
// corner, or column with its number in `column`. Clearances are blank where the job's own hold. Penetrations are not in
// it.
Table openingTable(const Job& job, UnitSystem units);

struct ReadOpenings {
  Job job;
  std::vector<std::string> added, changed;  // "A/W1", in the order of the table
  std::size_t alike = 0;                    // rows that say what was stated already
};

// The job with the openings of a table's text (readCsv): those whose wall and id it has are changed, others are added
// to their wall, none is taken away. wall and id are needed, for a new opening also distance, width and height; what
// has no column stays as it is stated, what is blank in its column is not stated. Lengths are in the unit of the
// column's name, or have one of their own. Faults, each with line and column, and nothing is taken: a wall, a column of
// the wall or a member that is not there; a word or a length that cannot be read; an opening twice; what the job file
// would not hold.
Outcome<ReadOpenings> withOpeningsOf(const Job& job, std::string_view csv);

}  // namespace ribwright
