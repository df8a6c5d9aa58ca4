// A list of lengths to be cut as a table, read back from a spreadsheet; and the plan to cut it by.
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "core/cutting/cutting_list.h"
#include "core/cutting/cutting_plan.h"
#include "core/output/csv.h"
#include "core/units/length_text.h"
#include "core/units/outcome.h"

namespace ribwright {

struct CutLine {
  Length length;
  std::int64_t quantity = 0;
  std::string mark;  // empty where there is no such column
};

// Columns `length` (in `units`, or with a mark of its own; or `length_in`, `length_mm`, where there is no such column),
// `quantity` and, if it is there, `mark` or `marks`; others are passed over, so a sheet order can be read. Faults, each
// with line and column: those of readCsv; a column that is not there; what is no length or no whole number; what is
// less than nothing.
Outcome<std::vector<CutLine>> readCutLines(std::string_view csv, UnitSystem units);

// How the numbers of a cutting list are written.
struct CutFigures {
  std::vector<std::string> columns;  // of one number: {"length", "length_in"}, or {"length"} for bare numbers
  std::function<std::vector<std::string>(std::int64_t)> figures;  // parallel
};
CutFigures lengthFigures(UnitSystem units);  // whole nanometres
CutFigures bareFigures();

// A row a length in each pattern: pattern from 1, how many stock pieces are cut so, the stock; length, how many of it
// come out of each stock piece, mark; and what each stock piece leaves behind the last cut. `marks`: parallel to the
// demands, or empty.
Table cuttingPlanTable(const CuttingList& list, const CuttingPlan& plan, const std::vector<std::string>& marks,
                       const CutFigures& figures);

}  // namespace ribwright
