// Which edge or line of a girt its height is of, in words.
#pragma once

#include "core/job/supports.h"

namespace ribwright {

// Id of the words: "its web", "its bottom" ...
const char* typedById(Girt::TypedBy by);

}  // namespace ribwright
