// Rulers beside the board: u from the left corner along the top, heights from the top of concrete up the side.
#pragma once

#include <QFont>
#include <QPalette>
#include <QRectF>

#include "core/units/length_text.h"
#include "ui/painting/board_view.h"

class QPainter;

namespace ribwright {

// Thickness in pixels.
double rulerSize(const QFont& font);

// Along the upper and the left side of `whole`.
void paintRulers(QPainter& painter, const QRectF& whole, const BoardView& view, const LengthStyle& style,
                 const QFont& font, const QPalette& palette);

}  // namespace ribwright
