// The pages of the chosen wall, as they will be printed, to look at closely: zoom at the cursor, pan, fit.
#pragma once

#include <QPointF>
#include <QRectF>
#include <QWidget>
#include <vector>

#include "core/drawing/drawing.h"

namespace ribwright {

class ElevationBoard : public QWidget {
  Q_OBJECT

 public:
  explicit ElevationBoard(QWidget* parent = nullptr);

  // Shows the first page whole.
  void setPages(std::vector<Page> pages);

  int pageCount() const { return static_cast<int>(pages_.size()); }
  int currentPage() const { return current_; }
  // Pixels of the widget per millimetre of paper.
  double zoom() const { return zoom_; }
  // Where a page lies in the widget, in pixels.
  QRectF pageOnScreen(int page) const;
  // What point of which paper lies there: millimetres of the row of pages.
  QPointF onPaper(const QPointF& pixel) const { return (pixel - origin_) / zoom_; }

  QSize sizeHint() const override { return {640, 480}; }

 public slots:
  void zoomIn();
  void zoomOut();
  // The current page whole, and kept whole when the window changes.
  void fit();
  void showPage(int page);

 signals:
  void viewChanged();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  // Zooms so that what lies at `pixel` stays there.
  void zoomBy(double factor, const QPointF& pixel);
  void pan(const QPointF& pixels);

  std::vector<Page> pages_;
  std::vector<double> lefts_;  // mm, of each page in the row
  int current_ = 0;
  double zoom_ = 2;
  QPointF origin_;  // pixel of the row's upper left corner
  QPointF grabbed_;
  bool panning_ = false;
  bool fitted_ = true;
};

}  // namespace ribwright
