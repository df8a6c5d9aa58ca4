// Tables read back from comma-separated values, RFC 4180, as spreadsheets write them: a byte-order mark in front, LF
// alone for a line end and `;` between fields (where the decimal sign is a comma) are understood; empty lines are
// passed over.
#pragma once

#include <string_view>

#include "core/output/csv.h"
#include "core/units/outcome.h"

namespace ribwright {

struct ReadTable {
  Table table;
  std::vector<int> lines;  // parallel to the table's rows: the line of the file at which each begins, from 1
  char decimalSign = '.';  // ',' where fields are separated by ';'
};

// Faults: text that is no sound UTF-8; no names of columns; a quote that is not closed, or stands within a field; a row with more or fewer fields
// than there are columns. Each names its line.
Outcome<ReadTable> readCsv(std::string_view text);

}  // namespace ribwright
