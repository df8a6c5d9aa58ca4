// Colours of the board, from the palette, so that light and dark both work. Nothing is told by colour alone.
#pragma once

#include <QColor>
#include <QPalette>

#include "core/drawing/board_picture.h"

namespace ribwright {

struct BoardInks {
  QColor ground, sheet, translucent, quiet, steel, line;
  QColor chosen;  // of what is chosen
  QColor of(BoardTone tone) const;
};

BoardInks boardInks(const QPalette& palette);

}  // namespace ribwright
