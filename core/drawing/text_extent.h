// How much room text takes on paper, from the font's own widths and without a window system. Unit: mm.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/drawing/box.h"
#include "core/drawing/drawing.h"

namespace ribwright {

// The letters of UTF-8 text as they are drawn: a line end or tab becomes a space; a letter that the font has not, and a
// broken byte, becomes an open square, so that nothing is dropped in silence.
std::vector<char32_t> lettersOf(std::string_view words);
std::string drawnWords(std::string_view words);

// 1/2048 em.
int advanceOf(char32_t letter, bool bold);

// Font size (em) that gives capitals of this height.
double emOf(double height);

double widthOf(std::string_view words, double height, bool bold);
double widthOf(const Text& text);

// From the baseline up to the highest and down to the lowest reach of letters.
double ascentOf(double height);
double descentOf(double height);
inline double lineOf(double height) { return ascentOf(height) + descentOf(height); }

// The upright rectangle round the text, turned or not.
Box boxOf(const Text& text);

// Text whose box has its middle at `middle`.
Text textAround(const PaperPoint& middle, double height, bool bold, double turn, std::string words);

// Broken at spaces into lines no wider than `width`; a single word that is wider stands alone on its line.
std::vector<std::string> wrapped(std::string_view words, double height, bool bold, double width);

// As much of the text as fits in `width`, closed with "…" when something is left out.
std::string shortened(std::string_view words, double height, bool bold, double width);

}  // namespace ribwright
