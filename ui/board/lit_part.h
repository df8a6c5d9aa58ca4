// How a part of the wall is lit up: told by its outline and hatching, not by colour alone.
#pragma once

#include <QColor>
#include <QRectF>

#include "core/drawing/board_picture.h"
#include "ui/painting/board_view.h"

class QPainter;

namespace ribwright {

enum class Lit { Hovered, Chosen, Changed };  // a thin outline; a thick one and hatching; a broken one and dots

// Nothing when the wall has no such part. `area`: the view, pixels; `capital`: as in BoardPainter.
void paintLit(QPainter& painter, const BoardPicture& picture, const Part& part, Lit lit, const BoardView& view,
              const QRectF& area, double capital, const QColor& colour);

}  // namespace ribwright
