// A length as a person may have typed it: what stands in a cell or a field to be typed into.
#pragma once

#include <string>
#include <string_view>

#include "core/units/length_text.h"

namespace ribwright {

// As fineText where that says all of it, else in millimetres: parseLength reads back the same nanometre.
std::string typedLength(Length length, const LengthStyle& style);

// Without blanks and tabs round it.
std::string_view withoutBlanks(std::string_view text);

}  // namespace ribwright
