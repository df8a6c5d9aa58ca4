// The chosen wall as seen from outside, to look at closely and to pick from: a click chooses what lies there; Tab and
// Shift+Tab go through the sheets in hanging order, with Ctrl they leave the board; Esc lets go.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "core/drawing/board_picture.h"
#include "ui/board/board_hand.h"
#include "ui/board/underlay.h"
#include "ui/board/zoomed_board.h"
#include "ui/painting/board_inks.h"
#include "ui/painting/board_painter.h"

namespace ribwright {

class WallBoard : public ZoomedBoard {
  Q_OBJECT

 public:
  explicit WallBoard(QWidget* parent = nullptr);

  // The same wall again keeps its view; another one is shown whole. Null: nothing.
  void setWall(std::shared_ptr<const BoardPicture> picture);
  // Tells nobody. The last one is the chosen one where only one counts.
  void setChosen(const std::vector<Part>& parts);
  std::optional<Part> chosen() const { return chosen_.empty() ? std::nullopt : std::optional(chosen_.back()); }
  // Lit up for a moment: sheets that an edit changed.
  void setChanged(const std::vector<Part>& parts);
  // Under the wall's lines and words, over its sheets; absent: none.
  void setUnderlay(const std::optional<Underlay>& underlay);
  // Who holds a tool over the board; null: nobody. Not owned.
  void setHand(BoardHand* hand) { hand_ = hand; }
  const BoardView& shownAt() const { return view(); }
  QRectF wallRect() const { return viewRect(); }
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
  // With Ctrl or Shift: to be added to what is chosen, or taken out.
  void partAlsoChosen(const ribwright::Part& part);
  void hovered(const std::optional<ribwright::Part>& part);

 protected:
  QRectF viewRect() const override;  // without the rulers
  void clicked(const QPointF& pixel, Qt::KeyboardModifiers keys) override;
  bool grabs(const QPointF& pixel, Qt::KeyboardModifiers keys) override;
  void draggedTo(const QPointF& pixel, Qt::KeyboardModifiers keys) override;
  void released(const QPointF& pixel, Qt::KeyboardModifiers keys) override;
  Qt::CursorShape cursorAt(const QPointF& pixel) const override;
  void pointedAt(const std::optional<QPointF>& pixel) override;
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  bool focusNextPrevChild(bool next) override;

 private:
  void choose(const std::optional<Part>& part);
  bool chooseNextSheet(int step);
  void setHovered(const std::optional<Part>& part);
  void takeFont();

  std::shared_ptr<const BoardPicture> picture_;
  BoardPainter painter_;
  void paintParts(QPainter& painter, const QRectF& area, const BoardInks& inks);

  std::vector<Part> chosen_, changed_;
  std::optional<Part> hovered_;
  std::optional<Underlay> underlay_;
  BoardHand* hand_ = nullptr;
};

}  // namespace ribwright
