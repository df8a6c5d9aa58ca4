// The pages of the chosen wall, as they will be printed, side by side to look at closely. Page Up and Page Down turn
// them; a double click shows the page there whole.
#pragma once

#include <vector>

#include "core/drawing/drawing.h"
#include "ui/board/zoomed_board.h"

namespace ribwright {

class ElevationBoard : public ZoomedBoard {
  Q_OBJECT

 public:
  explicit ElevationBoard(QWidget* parent = nullptr);

  // Shows the first page whole.
  void setPages(std::vector<Page> pages);

  int pageCount() const { return static_cast<int>(pages_.size()); }
  int currentPage() const { return current_; }
  // Where a page lies in the widget, in pixels.
  QRectF pageOnScreen(int page) const;

  QSize sizeHint() const override { return {640, 480}; }

 public slots:
  // The current page.
  void fit() override;
  void showPage(int page);

 protected:
  void doubleClicked(const QPointF& pixel) override;
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  std::vector<Page> pages_;
  std::vector<double> lefts_;  // mm, of each page in the row
  int current_ = 0;
};

}  // namespace ribwright
