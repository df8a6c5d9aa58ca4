#include "ui/board/board_notes.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace ribwright {

namespace {

constexpr double offEdge = 8, inPlate = 6;  // pixels

QRectF plateRound(const QString& words, const QFont& font, double widest) {
  const QRectF bounds = QFontMetricsF(font).boundingRect(QRectF(0, 0, widest, 1e6), Qt::TextWordWrap, words);
  return {0, 0, std::ceil(bounds.width()) + 2 * inPlate + 2, std::ceil(bounds.height()) + 2 * inPlate};
}

}  // namespace

std::vector<BoardNote> boardNotes(const BoardPicture& picture, double zoom, const QRectF& area, const QFont& font) {
  std::vector<BoardNote> notes;
  const double widest = std::max(60.0, std::min(area.width() - 40, 50 * QFontMetricsF(font).averageCharWidth()));
  if (!picture.note.empty()) {
    const QString words = QString::fromStdString(picture.note);
    QRectF plate = plateRound(words, font, widest);
    plate.moveCenter(area.center());
    if (picture.face.width() > 0) plate.moveTop(area.top() + offEdge);
    notes.push_back({plate, words});
  }
  const bool screws = std::any_of(picture.screws.begin(), picture.screws.end(),
                                  [&](const BoardMarks& layer) { return layer.zoom.shows(zoom); });
  if (screws) {
    const QString words = QString::fromStdString(picture.held);
    QRectF plate = plateRound(words, font, widest);
    plate.moveBottomRight(area.bottomRight() - QPointF(offEdge, offEdge));
    notes.push_back({plate, words});
  }
  return notes;
}

void paintNotes(QPainter& painter, const std::vector<BoardNote>& notes, const QFont& font, const BoardInks& inks) {
  painter.setFont(font);
  painter.setBrush(inks.ground);
  for (const BoardNote& note : notes) {
    painter.setPen(QPen(inks.line, 1));
    painter.drawRect(note.plate.adjusted(0.5, 0.5, -0.5, -0.5));
    painter.drawText(note.plate, Qt::AlignCenter | Qt::TextWordWrap, note.words);
  }
}

}  // namespace ribwright
