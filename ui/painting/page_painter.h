// One painter for every place a page is shown: screen, PDF, printer.
#pragma once

#include <QPainter>

#include "core/drawing/drawing.h"

namespace ribwright {

// Paints in millimetres of paper from the upper left corner: the caller has scaled and moved the painter so.
// `pixel` is what a pixel on the screen measures in those units, for lines that keep their width at any zoom.
void paintDrawing(QPainter& painter, const Drawing& drawing, double pixel);

}  // namespace ribwright
