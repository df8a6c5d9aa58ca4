// What is stated of a wall's openings, penetrations, girts and bands, as a table to be typed into.
//
// `wall` is an index into Job::walls. A row is an index into the list; lengths are read and shown in the job's units,
// choices in the words of the job file. What names a thing by its id follows when it is called otherwise.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/editing/stated_field.h"
#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

enum class StatedList { Openings, Penetrations, Girts, Bands };

struct StatedColumn {
  std::string_view name;  // "jamb_trim"
  CellForm form;
  bool needed;
};
const std::vector<StatedColumn>& statedColumns(StatedList list);

std::size_t statedCount(const Wall& wall, StatedList list);
std::string statedText(const Job& job, std::size_t wall, StatedList list, std::size_t row, std::size_t column);
// Empty: anything may be typed there.
std::vector<std::string> statedChoices(const Job& job, std::size_t wall, StatedList list, std::size_t column);

struct TypedCell {
  std::size_t row, column;
  std::string text;  // blank: as when nothing is stated
};
struct CellFault {
  std::size_t row, column;
  std::string message;
  bool operator==(const CellFault&) const = default;
};
struct EnteredCells {
  Job job;  // as it was where there are faults
  std::vector<CellFault> faults;
};

// All of them or none. Rows past the last are new ones, each of which needs all its needed columns; without an id it is
// given the next. New girts and bands are put in by their height, other things at the end.
EnteredCells enterCells(const Job& job, std::size_t wall, StatedList list, const std::vector<TypedCell>& cells);

// Faults: a band that is the only one.
Outcome<Job> withoutRows(const Job& job, std::size_t wall, StatedList list, std::vector<std::size_t> rows);

}  // namespace ribwright
