// What the board gives to whoever holds a tool over it: pointer and keys, before it looks at them itself.
#pragma once

#include <QPoint>
#include <QPointF>
#include <Qt>
#include <optional>

#include "core/drawing/drawing.h"

class QKeyEvent;

namespace ribwright {

struct HandPicture;

class BoardHand {
 public:
  virtual ~BoardHand() = default;

  // The left button went down; true: it is the hand's until it is let go, and does not move the view.
  virtual bool takes(const QPointF& pixel, Qt::KeyboardModifiers keys) = 0;
  // The pointer moved: with what was taken, or freely.
  virtual void movedTo(const QPointF& pixel, Qt::KeyboardModifiers keys) = 0;
  virtual void letGo(const QPointF& pixel, Qt::KeyboardModifiers keys) = 0;
  // The left button went down and up without a drag, on something that was not taken. True: the hand did something.
  virtual bool clickedAt(const QPointF& pixel, Qt::KeyboardModifiers keys) = 0;
  // True: the key was the hand's.
  virtual bool keyPressed(const QKeyEvent& event) = 0;
  // A menu is asked for at a pixel; without one, by key for what is chosen.
  virtual void menuAsked(const std::optional<QPointF>& pixel, const QPoint& onScreen) = 0;
  virtual Qt::CursorShape cursorAt(const QPointF& pixel) const = 0;
  // Null: nothing to see.
  virtual const HandPicture* picture() const = 0;
};

}  // namespace ribwright
