// A widget that shows something larger than itself: zoom at the cursor, pan, fit.
//
// Wheel, pinch, + and - zoom; dragging with the left or the middle button and the arrow keys move; 0 or a double click
// fits.
#pragma once

#include <QPointF>
#include <QRectF>
#include <QWidget>
#include <optional>

#include "ui/painting/board_view.h"

class QPainter;

namespace ribwright {

class ZoomedBoard : public QWidget {
  Q_OBJECT

 public:
  // Pixels of the widget per millimetre of what is shown.
  double zoom() const { return view_.zoom; }
  // Millimetres of what is shown, y down, and the pixel where they are seen.
  QPointF onShown(const QPointF& pixel) const { return (pixel - view_.origin) / view_.zoom; }
  QPointF onScreen(const QPointF& place) const { return view_.origin + place * view_.zoom; }

 public slots:
  void zoomIn();
  void zoomOut();
  // All of it, and kept whole when the widget changes.
  virtual void fit() = 0;

 signals:
  void viewChanged();

 protected:
  struct ZoomLimits {
    double least, most;
  };
  ZoomedBoard(const ZoomLimits& limits, Qt::CursorShape cursor, QWidget* parent);

  const BoardView& view() const { return view_; }
  bool isFitted() const { return fitted_; }
  void setView(const BoardView& view, bool fitted);
  // The part of the widget that shows it.
  virtual QRectF viewRect() const { return QRectF(rect()); }
  // With the left button, and not dragged.
  virtual void clicked(const QPointF&, Qt::KeyboardModifiers) {}
  // The left button went down: true takes it until draggedTo() and released(), instead of moving the view.
  virtual bool grabs(const QPointF&, Qt::KeyboardModifiers) { return false; }
  virtual void draggedTo(const QPointF&, Qt::KeyboardModifiers) {}
  virtual void released(const QPointF&, Qt::KeyboardModifiers) {}
  virtual void doubleClicked(const QPointF&) { fit(); }
  // No button is held; absent: the cursor is not over it.
  virtual void pointedAt(const std::optional<QPointF>&) {}
  // Where nothing is dragged.
  virtual Qt::CursorShape cursorAt(const QPointF&) const { return cursor_; }
  // A frame when the keys go here; painted last.
  void paintFocus(QPainter& painter) const;

  bool event(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void leaveEvent(QEvent* event) override;
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

  ZoomLimits limits_;
  Qt::CursorShape cursor_;
  BoardView view_;
  Qt::MouseButton held_ = Qt::NoButton;
  QPointF pressed_, grabbed_;
  bool dragging_ = false;
  bool grabbing_ = false;  // the button is taken
  bool fitted_ = true;
};

}  // namespace ribwright
