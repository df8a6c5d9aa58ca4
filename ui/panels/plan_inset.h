// A small plan of the building: its walls with their letters, which way each hangs, where it is seen from, and north.
// A wall that is clicked here is chosen everywhere; a sight point is dragged, and the laps turn as it goes.
#pragma once

#include <QWidget>

#include "ui/panels/plan_picture.h"
#include "ui/session/session.h"

namespace ribwright {

class PlanInset : public QWidget {
  Q_OBJECT

 public:
  explicit PlanInset(Session& session, QWidget* parent = nullptr);

  // Where a wall's line lies in the widget: pixels.
  QLineF wallOnScreen(std::size_t wall) const { return picture_.walls[wall].line; }
  const PlanPicture& picture() const { return picture_; }

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return sizeHint(); }

 protected:
  bool event(QEvent* event) override;
  void changeEvent(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void place();
  double reach() const { return fontMetrics().height(); }
  QString hintAt(const QPointF& point) const;
  void paintWalls(QPainter& painter) const;
  void paintSights(QPainter& painter) const;
  void paintNorth(QPainter& painter) const;

  Session& session_;
  void dragSight(const QPointF& pixel);
  Outcome<Job> sightMoved(const QPointF& pixel) const;
  std::string sightEdit() const;

  PlanPicture picture_;
  int dragged_ = -1;  // index of the sight point in the hand; -1: none
  QPointF pressedAt_;
  bool moved_ = false;  // since it was taken
};

}  // namespace ribwright
