// Short pieces end to end in sheets of the shortest length made.
#pragma once

#include <vector>

#include "core/units/length.h"

namespace ribwright {

// Which of `needed` lie together in one sheet of `sheet`, a kerf between each two: lists of two or more indices, each
// rising. The fewest sheets in all (core/cutting/stock_cutter.h, within a fixed little work); of lengths that are equal
// the first ones go into the first lists. What is longer than `sheet` is in none.
std::vector<std::vector<std::size_t>> gangs(const std::vector<Length>& needed, Length sheet, Length kerf);

}  // namespace ribwright
