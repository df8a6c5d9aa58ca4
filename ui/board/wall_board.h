// The chosen wall as seen from outside, to look at closely and to pick from: a click chooses what lies there; Tab and
// Shift+Tab go through the sheets in hanging order, with Ctrl they leave the board; Esc lets go.
#pragma once

#include <memory>
#include <optional>

#include "core/drawing/board_picture.h"
#include "ui/board/zoomed_board.h"
#include "ui/painting/board_painter.h"

namespace ribwright {

class WallBoard : public ZoomedBoard {
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

  // What lies under a pixel.
  std::optional<Part> partAt(const QPointF& pixel) const;

  QSize sizeHint() const override { return {900, 480}; }

 public slots:
  void fit() override;

 signals:
  void partChosen(const std::optional<ribwright::Part>& part);
  void hovered(const std::optional<ribwright::Part>& part);

 protected:
  QRectF viewRect() const override;  // without the rulers
  void clicked(const QPointF& pixel) override;
  void pointedAt(const std::optional<QPointF>& pixel) override;
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  bool focusNextPrevChild(bool next) override;

 private:
  void choose(const std::optional<Part>& part);
  bool chooseNextSheet(int step);
  void setHovered(const std::optional<Part>& part);
  void takeFont();

  std::shared_ptr<const BoardPicture> picture_;
  BoardPainter painter_;
  std::optional<Part> chosen_, hovered_;
};

}  // namespace ribwright
