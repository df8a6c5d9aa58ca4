// How a wall's start is called.
#pragma once

#include "core/job/building.h"
#include "core/words/words.h"

namespace ribwright {

// Reads on after "Start with": "equal rips at both ends".
Phrase startPhrase(const Start& start, const LengthStyle& style);

}  // namespace ribwright
