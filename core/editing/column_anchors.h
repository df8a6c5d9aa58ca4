// What is anchored from columns, carried over from one grid of columns to another.
#pragma once

#include <functional>

#include "core/job/building.h"

namespace ribwright {

// Every anchor of an opening or penetration of the wall that is measured from a column, one after the other.
void forEachColumnAnchor(Wall& wall, const std::function<void(Anchor&)>& edit);

// To the same place, measured from this column of the grid. Its own column and the new one must be there.
void restate(Anchor& anchor, const ColumnGrid& was, const ColumnGrid& is, int column);

// Number of the column nearest to u, the left one of two as near.
int nearestColumn(const ColumnGrid& columns, Length u);

}  // namespace ribwright
