// Fields that only change together: what else changes when one of them does.
#pragma once

#include <string_view>

#include "core/job/job.h"

namespace ribwright {

// `job` is `before` with another value at `path`. A round penetration's width and height are both its diameter; the
// ends of a profile's section stand at its lip and its leg, and what lies at the leg moves with the cover; a pattern
// that was confirmed stays so when nothing but a name in it is another.
void changeTogether(Job& job, const Job& before, std::string_view path);

}  // namespace ribwright
