// Every size of paper.
#pragma once

#include "core/drawing/paper.h"

namespace ribwright {

inline constexpr PaperSize papers[] = {PaperSize::Letter, PaperSize::Tabloid, PaperSize::A4, PaperSize::A3};

}  // namespace ribwright
