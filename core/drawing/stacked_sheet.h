// What sheets of one stack have in common across their width: edges, ribs and hole offsets, all from the starting edge.
#pragma once

#include <vector>

#include "core/drawing/drill_wall.h"
#include "core/job/section.h"

namespace ribwright {

struct StackedSheet {
  Length width;            // of the widest sheet's metal
  Length length;           // of the longest sheet's blank
  std::vector<Flat> ribs;  // from the starting edge, within the metal
};

// The batch has at least one sheet.
StackedSheet stackedSheet(const DrillWall& wall, const DrillBatch& batch);

// Rows with the same offsets and screw are drilled by one strip.
struct OffsetSet {
  std::vector<Length> offsets;    // rising
  std::int32_t screw = 0;         // index into Job::screws
  std::vector<std::size_t> rows;  // indices into DrillBatch::rows
};

// In the order of their first rows.
std::vector<OffsetSet> offsetSets(const DrillBatch& batch);

// "g1", "base", "eave": short, for beside a row.
std::string rowName(const DrillWall& wall, const BatchRow& row);

// "a", "b" ... "z", "aa" ...
std::string setLetter(std::size_t index);

}  // namespace ribwright
