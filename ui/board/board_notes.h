// Sentences that stand on the board wherever one looks: what is missing, and that screws are not for drilling.
#pragma once

#include <QFont>
#include <QRectF>
#include <QString>
#include <vector>

#include "core/drawing/board_picture.h"
#include "ui/painting/board_inks.h"

class QPainter;

namespace ribwright {

struct BoardNote {
  QRectF plate;  // pixels
  QString words;
};

// `area`: the view.
std::vector<BoardNote> boardNotes(const BoardPicture& picture, double zoom, const QRectF& area, const QFont& font);

void paintNotes(QPainter& painter, const std::vector<BoardNote>& notes, const QFont& font, const BoardInks& inks);

}  // namespace ribwright
