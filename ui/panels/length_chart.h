// How much less steel is bought the more lengths may be ordered of a class: a step for each number of lengths, the
// chosen one marked. A click or the arrow keys choose another.
#pragma once

#include <QWidget>
#include <functional>
#include <vector>

#include "core/takeoff/length_tradeoff.h"

namespace ribwright {

class LengthChart : public QWidget {
  Q_OBJECT

 public:
  explicit LengthChart(QWidget* parent = nullptr);

  // `choices`: for at most 1, 2 ... lengths; `most`: how many may be, 0: any number. `say`: an amount of steel.
  void setChoices(std::vector<LengthChoice> choices, int most, std::function<QString(Length)> say);
  int count() const { return static_cast<int>(choices_.size()); }
  // Middle of a number's step, in pixels.
  QPoint placeOf(int lengths) const;

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 signals:
  // That many lengths, at least 1; the greatest number of all: any number (0).
  void picked(int lengths);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QRect plot() const;
  int current() const;  // 1 ...
  void pick(int lengths);
  void drawAxes(QPainter& painter, const QRect& area) const;
  void drawSteps(QPainter& painter, const QRect& area) const;
  int heightOf(Length bought, const QRect& area) const;

  std::vector<LengthChoice> choices_;
  int most_ = 0;
  std::function<QString(Length)> say_;
};

}  // namespace ribwright
