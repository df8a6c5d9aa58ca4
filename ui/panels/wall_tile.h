// One wall of the perimeter strip: its outline as wide as the tile, its letter and name, which way it hangs, how many
// sheets, and what wants a look.
#pragma once

#include <QAbstractButton>

#include "ui/panels/wall_state.h"

namespace ribwright {

class WallTile : public QAbstractButton {
  Q_OBJECT

 public:
  explicit WallTile(QWidget* parent = nullptr);

  // `tallest`: metres, of the strip's tallest wall: heights of all tiles are to one scale.
  void setState(const WallState& state, double tallest);
  const WallState& state() const { return state_; }

  // The least at which no word but the wall's name is cut.
  QSize minimumSizeHint() const override;
  QSize sizeHint() const override;

 signals:
  // To the next wall (1), the one before (-1), the last (many) or the first (-many).
  void stepAsked(int by);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QRect inside() const;
  void paintOutline(QPainter& painter, const QRect& room) const;
  void paintWords(QPainter& painter, const QRect& room) const;
  void paintArrow(QPainter& painter, const QRectF& room) const;
  int arrowWidth() const;

  WallState state_;
  double tallest_ = 1;
};

}  // namespace ribwright
