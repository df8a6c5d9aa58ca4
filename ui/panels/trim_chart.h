// The sticks that trim is cut from, a bar each: pieces by name, kerfs as gaps, waste hatched, drops plain and said.
#pragma once

#include <QWidget>
#include <vector>

#include "core/takeoff/trim_cuts.h"
#include "core/words/words.h"

namespace ribwright {

class TrimChart : public QWidget {
  Q_OBJECT

 public:
  explicit TrimChart(QWidget* parent = nullptr);

  // `words` outlives the chart.
  void show(const TrimTakeoff& takeoff, const std::vector<TrimBatch>& batches, const Words& words,
            const LengthStyle& style);
  // All parts of this piece are framed; -1: none.
  void choose(int piece);
  int chosen() const { return chosen_; }
  // The middle of the first bar that has a part of the piece; where to scroll.
  int heightOf(int piece) const;
  // The piece at a pixel; -1: none.
  int pieceAt(const QPoint& at) const;

  QSize sizeHint() const override;

 signals:
  void pieceChosen(int piece);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  bool event(QEvent* event) override;

 private:
  // A line of the chart: the heading of a batch, or one of its sticks.
  struct Line {
    int batch = 0, stick = -1;  // stick -1: heading
  };
  int lineHeight() const;
  int labelWidth() const;
  QRectF barOf(std::size_t line) const;
  QRectF partOf(const QRectF& bar, const TrimStick& stick, Length from, Length to) const;
  QString headingOf(const TrimBatch& batch) const;
  QString nameOf(const TrimCut& cut) const;
  void paintStick(QPainter& painter, std::size_t line) const;
  void paintRest(QPainter& painter, const QRectF& bar, const TrimStick& stick) const;

  TrimTakeoff takeoff_;
  std::vector<TrimBatch> batches_;
  std::vector<Line> lines_;
  const Words* words_ = nullptr;
  LengthStyle style_;
  Length longest_;
  int chosen_ = -1;
};

}  // namespace ribwright
