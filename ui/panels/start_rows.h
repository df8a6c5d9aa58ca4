// Starts compared, as the cells of a table.
#pragma once

#include <QString>
#include <vector>

#include "core/plan/compared_starts.h"
#include "core/words/words.h"

namespace ribwright {

struct StartCell {
  QString words;
  double sorted = 0;  // what the column is sorted by
  bool best = false;  // no other start has less in this column
};

struct StartRow {
  Start start;
  bool stands = false;
  std::vector<StartCell> cells;  // parallel to startColumns()
};

QStringList startColumns();
// In the order of the ranks.
std::vector<StartRow> startRows(const std::vector<ComparedStart>& starts, const Words& words, const LengthStyle& style);

}  // namespace ribwright
