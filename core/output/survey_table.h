// What was measured, as a table: out of a job, and back into it from a spreadsheet.
#pragma once

#include <string_view>

#include "core/job/job.h"
#include "core/output/csv.h"
#include "core/units/length_text.h"
#include "core/units/outcome.h"

namespace ribwright {

// wall,line,u_in,height_in,within_in,by,date: a row a reading, wall by wall. line: a girt's id, "eave", or "slab";
// height above the chalk line, of the slab edge its z. within: of a stick check.
Table surveyTable(const Job& job, UnitSystem units);

// The job with the readings of a table's text (readCsv) in place of those it had of the same edges; edges that the
// table does not name keep theirs. Columns may stand in any order, others are passed over; lengths are in the unit of
// the column's name, or have one of their own (88-1/2"). Faults, each with line and column, and nothing is taken: a
// column is missing; a wall or girt that the job has not; a length that cannot be read; two readings at one station; a
// stick check without name and date, of less than nothing, or of the slab edge.
Outcome<Job> withSurveyOf(const Job& job, std::string_view csv);

}  // namespace ribwright
