// A picture to be looked at closely, and two crosses on it that are set by a click, dragged, or moved by the arrow keys
// a pixel of the picture at a time.
#pragma once

#include <array>
#include <optional>

#include "ui/board/scaled_picture.h"
#include "ui/board/zoomed_board.h"

namespace ribwright {

class MarkedPicture : public ZoomedBoard {
  Q_OBJECT

 public:
  static constexpr int crosses = 2;

  explicit MarkedPicture(QWidget* parent = nullptr);

  // Shown whole; the crosses stay where they are.
  void setPicture(const ScaledPicture& picture);
  const ScaledPicture& picture() const { return picture_; }
  // In pixels of the picture; absent: not set yet.
  const std::optional<QPointF>& cross(int which) const { return at_[static_cast<std::size_t>(which)]; }
  void setCross(int which, const std::optional<QPointF>& place);
  // The one that a click sets and keys move.
  int chosenCross() const { return chosen_; }
  void chooseCross(int which);

  QSize sizeHint() const override { return {720, 520}; }

 public slots:
  void fit() override;

 signals:
  // By a person.
  void crossMoved(int which);
  void crossChosen(int which);

 protected:
  void clicked(const QPointF& pixel, Qt::KeyboardModifiers keys) override;
  bool grabs(const QPointF& pixel, Qt::KeyboardModifiers keys) override;
  void draggedTo(const QPointF& pixel, Qt::KeyboardModifiers keys) override;
  Qt::CursorShape cursorAt(const QPointF& pixel) const override;
  void keyPressEvent(QKeyEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  QRectF pictureRect() const { return {QPointF(), QSizeF(picture_.size())}; }
  QPointF onPicture(const QPointF& place) const;
  std::optional<int> crossAt(const QPointF& pixel) const;
  void move(int which, const QPointF& place);
  bool moveByKey(const QKeyEvent& event);
  void keepInView(const QPointF& place);
  void paintCross(QPainter& painter, int which) const;

  ScaledPicture picture_;
  std::array<std::optional<QPointF>, crosses> at_;
  int chosen_ = 0;
  QPointF grip_;  // from the pointer to the cross that it holds
};

}  // namespace ribwright
