// The papers of a packet, lying (landscape). Unit: millimetres.
#pragma once

#include <optional>
#include <string_view>

#include "core/units/length_text.h"

namespace ribwright {

enum class PaperSize { Letter, Tabloid, A4, A3 };

struct PaperExtent {
  double width, height;  // width > height
};

// ANSI A and B (11 x 8-1/2 in, 17 x 11 in), ISO 216 A4 and A3.
PaperExtent extentOf(PaperSize paper);

// Letter for feet and inches, A4 for millimetres (common practice).
PaperSize customaryPaper(UnitSystem units);

// "letter", "tabloid", "a4", "a3"; nothing for any other word.
std::optional<PaperSize> paperNamed(std::string_view name);
std::string_view nameOf(PaperSize paper);

}  // namespace ribwright
