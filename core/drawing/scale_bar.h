// The bar that shows the scale and proves the print.
#pragma once

#include "core/drawing/drawing_scale.h"
#include "core/drawing/sketch.h"
#include "core/words/words.h"

namespace ribwright {

// Its left end and lower edge lie at `at`; its length on paper is scaleBarOnPaper, in four equal parts.
void drawScaleBar(Sketch& sketch, const Words& words, const LengthStyle& style, const DrawingScale& scale,
                  const PaperPoint& at);

}  // namespace ribwright
