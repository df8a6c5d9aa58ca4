// Lengths as they stand on a drawing.
#pragma once

#include <string>

#include "core/units/length_text.h"

namespace ribwright {

// To the nearest 1/16 in, or whole millimetre: what a tape reads. A tie goes to the even mark.
Length asTapeReads(Length length, const LengthStyle& style);

// 14' 8-1/2"   or   3750 (the page says that figures are millimetres). To the tape's mark.
std::string dimensionText(Length length, const LengthStyle& style);

// The same for a length to cut or order: to 1/64 in or 0.1 mm where it is no whole mark of the tape.
std::string cutText(Length length, const LengthStyle& style);

}  // namespace ribwright
