// Paints a board's picture in a view: gathers what is seen, and draws that.
#pragma once

#include <QPainter>
#include <QRectF>
#include <vector>

#include "core/drawing/board_picture.h"
#include "ui/painting/board_inks.h"
#include "ui/painting/board_view.h"
#include "ui/painting/label_glyphs.h"
#include "ui/painting/seen_board.h"

namespace ribwright {

class BoardPainter {
 public:
  // Before the first painting, and whenever the picture or the height of capitals (pixels) changes.
  void reset(double capital) { glyphs_.reset(capital); }
  double capital() const { return glyphs_.capital(); }

  // Of what lies in `area`; words keep off `barred`. Valid until the next call.
  const SeenBoard& gather(const BoardPicture& picture, const BoardView& view, const QRectF& area, const BoardInks& inks,
                          const std::vector<QRectF>& barred = {});

  void paint(QPainter& painter, const BoardPicture& picture, const BoardView& view, const QRectF& area,
             const BoardInks& inks, const std::vector<QRectF>& barred = {}) {
    draw(painter, gather(picture, view, area, inks, barred));
  }

 private:
  LabelGlyphs glyphs_;
  SeenBoard seen_;
};

}  // namespace ribwright
