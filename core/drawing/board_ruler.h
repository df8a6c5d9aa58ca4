// Round steps for the rulers beside the board.
#pragma once

#include <string>

#include "core/units/length.h"
#include "core/units/length_text.h"

namespace ribwright {

struct RulerSteps {
  Length labelled;  // from figure to figure
  Length marked;    // from tick to tick; divides `labelled`
};

// The finest steps whose figures stand at least `figures` pixels apart and whose ticks at least `ticks`.
RulerSteps rulerSteps(UnitSystem units, double zoom, double figures, double ticks);

std::string rulerFigure(Length place, const LengthStyle& style);

}  // namespace ribwright
