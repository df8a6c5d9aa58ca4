// Ways to write a label of the board. Unit: capitals (heights of a capital letter).
#pragma once

#include <string>
#include <vector>

#include "core/drawing/board_picture.h"

namespace ribwright {

inline constexpr double boardLine = 1.65;    // from baseline to baseline
inline constexpr double besideWords = 0.45;  // free room left and right of words, and
inline constexpr double overWords = 0.25;    // over and under them, beyond the reach of their letters

// With its extent.
BoardForm boardForm(std::vector<std::vector<BoardWords>> lines, bool upward = false);

// A mark and what is said of it: on two lines, upward on one, the mark alone, level and upward.
std::vector<BoardForm> markForms(const std::string& mark, const std::string& more);

// One line, then shorter ones instead of it.
std::vector<BoardForm> lineForms(const std::vector<std::string>& ways);

}  // namespace ribwright
