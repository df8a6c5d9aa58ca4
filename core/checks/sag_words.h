// How a girt's sag was worked out, in words: phrases under "sag.".
#pragma once

#include "core/fastening/girt_sag.h"
#include "core/words/words.h"

namespace ribwright {

Phrase takenWords(const GirtSag& sag);

}  // namespace ribwright
