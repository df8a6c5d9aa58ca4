// The chosen wall as seen from outside, to look at closely and to pick from: zoom at the cursor, pan, fit.
//
// Wheel, pinch, + and - zoom; dragging and the arrow keys move; 0 or a double click shows the whole wall; a click
// chooses what lies there; Tab and Shift+Tab go through the sheets in hanging order; Esc lets go.
#pragma once

#include <QPointF>
#include <QRectF>
#include <QWidget>
#include <memory>
#include <optional>

#include "core/drawing/board_picture.h"
#include "ui/painting/board_painter.h"

namespace ribwright {

class WallBoard : public QWidget {
  Q_OBJECT

 public:
  explicit WallBoard(QWidget* parent = nullptr);

  // The same wall again keeps its view; another one is shown whole. Null: nothing.
  void setWall(std::shared_ptr<const BoardPicture> picture);
  // Tells nobody.
  void setChosen(const std::optional<Part>& part);
  const std::optional<Part>& chosen() const { return chosen_; }
  // Brings the part into view, nearer if it would be too small to see.
  void show(const Part& part);
  using QWidget::show;

  // Pixels of the widget per millimetre of wall.
  double zoom() const { return view_.zoom; }
  // Millimetres on the face, y down, and the pixel where they are seen.
  QPointF onWall(const QPointF& pixel) const { return (pixel - view_.origin) / view_.zoom; }
  QPointF onScreen(const QPointF& place) const { return view_.origin + place * view_.zoom; }
  // What lies under a pixel.
  std::optional<Part> partAt(const QPointF& pixel) const;

  QSize sizeHint() const override { return {900, 480}; }

 public slots:
  void zoomIn();
  void zoomOut();
  // The whole wall, and kept whole when the window changes.
  void fit();

 signals:
  void partChosen(const std::optional<ribwright::Part>& part);
  void hovered(const std::optional<ribwright::Part>& part);
  void viewChanged();

 protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  bool focusNextPrevChild(bool next) override;

 private:
  QRectF viewRect() const;  // without the rulers
  void setView(const BoardView& view, bool fitted);
  void zoomBy(double factor, const QPointF& pixel);
  void pan(const QPointF& pixels);
  void choose(const std::optional<Part>& part);
  bool chooseNextSheet(int step);
  void setHovered(const std::optional<Part>& part);
  bool panByKey(int key);
  void takeFont();

  std::shared_ptr<const BoardPicture> picture_;
  BoardView view_;
  BoardPainter painter_;
  std::optional<Part> chosen_, hovered_;
  Qt::MouseButton held_ = Qt::NoButton;
  QPointF pressed_, grabbed_;
  bool dragging_ = false;
  bool fitted_ = true;
};

}  // namespace ribwright
