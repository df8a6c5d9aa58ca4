// What an opening is called: ids of words.
#pragma once

#include "core/job/opening.h"

namespace ribwright {

const char* openingKindId(Opening::Kind kind);

}  // namespace ribwright
