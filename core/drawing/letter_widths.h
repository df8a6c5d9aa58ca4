// How far each letter of the paper's one font advances, in 1/2048 of its em. The font is Liberation Sans (SIL OFL 1.1)
// in resources/fonts; the table is written from it by resources/fonts/letter_widths.py, and a test compares the two.
#pragma once

#include <array>
#include <cstdint>

namespace ribwright {

// Letters `first` to `last` have their widths at `at` and after.
struct LetterRun {
  char32_t first, last;
  int at;
};

extern const std::array<LetterRun, 61> letterRuns;  // rising
extern const std::array<std::uint16_t, 1187> regularWidths;
extern const std::array<std::uint16_t, 1187> boldWidths;

constexpr int unitsOfEm = 2048;
constexpr int unitsOfCapital = 1409;  // height of a capital letter
constexpr int unitsOfDescent = 434;   // lowest reach below the baseline
constexpr int unitsOfAscent = 1491;   // highest reach of letters without an accent above a capital

}  // namespace ribwright
