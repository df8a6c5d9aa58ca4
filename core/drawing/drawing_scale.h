// The usual drawing scales of the trade, and the one that a wall is drawn at.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/units/length.h"
#include "core/units/length_text.h"
#include "core/words/words.h"

namespace ribwright {

// One unit on paper is `below` units on the wall.
struct DrawingScale {
  std::int64_t below = 100;
  bool operator==(const DrawingScale&) const = default;
};

// Largest drawing first. Metric: 1:20 to 1:200 (ISO 5455 and common practice); feet and inches: 1/2 in to 1/16 in to
// the foot (common practice). After those come smaller ones, for walls that fit no paper else.
std::vector<DrawingScale> usualScales(UnitSystem units);
std::vector<DrawingScale> smallScales(UnitSystem units);

// "1:50", or "1/4 in = 1 ft (1:48)"; the unit in the words' language.
std::string scaleWords(const DrawingScale& scale, UnitSystem units, const Words& words);

// Millimetres on paper.
inline double onPaper(Length length, const DrawingScale& scale) {
  return length.inMillimetres() / static_cast<double>(scale.below);
}

// The bar that proves a print: 100 mm on paper in metric jobs, 3 in in others, which is a round length on the wall at
// every usual scale.
Length scaleBarOnPaper(UnitSystem units);

}  // namespace ribwright
