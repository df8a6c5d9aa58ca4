// What a tile of the perimeter strip, and the plan beside it, show of one wall.
#pragma once

#include <QPolygonF>
#include <QRectF>
#include <QString>
#include <vector>

#include "core/layout/wall_layout.h"
#include "ui/session/session.h"

namespace ribwright {

struct WallState {
  QString letter, name;
  double width = 0, tallest = 0;  // metres; 0: not laid out
  QPolygonF outline;              // metres, from the left corner and the concrete, up
  std::vector<QRectF> openings;   // likewise
  int sheets = 0;
  bool sheeted = false;  // sheets hang on it, in this direction
  Hand hand = Hand::LeftToRight;
  int stops = 0, looks = 0, notes = 0;
  int batches = 0, cleared = 0;  // drill batches, and how many of them may be drilled

  QString title() const;       // "Wall B, right end"
  QString sheetWords() const;  // "14 sheets", "by others"
  QString batchWords() const;  // "held", "5/9 cleared", "cleared"
  // Signs and numbers: "■ 1 ▲ 3 held".
  QString signWords() const;
  // All of it, in sentences.
  QString sentences() const;

  QString cladding;  // instead of a count of sheets: "by others", "open", "not laid out"
};

WallState wallState(const Session& session, std::size_t wall);

}  // namespace ribwright
