// The tool in the hand over the board: turns pointer and keys into drags, shows what would come of them, and enters
// them into the session as one edit each.
//
// Choose: a click chooses; a drag on an opening or hole, on a chosen girt or column, or on a grip moves it; Shift and
// drag chooses all in a frame; elsewhere the view moves. Drawing: press and drag, or click, and again for the other
// corner. Ctrl suspends snapping. Letters and signs typed meanwhile are lengths. Esc goes one step back.
#pragma once

#include <QObject>
#include <memory>
#include <optional>

#include "core/editing/grips.h"
#include "ui/board/board_hand.h"
#include "ui/board/hand_picture.h"
#include "ui/session/session.h"
#include "ui/tools/part_menu.h"
#include "ui/tools/tool_kind.h"
#include "ui/tools/typed_field.h"
#include "ui/tools/wall_drag.h"

namespace ribwright {

class WallBoard;

class BoardTools : public QObject, public BoardHand {
  Q_OBJECT

 public:
  BoardTools(Session& session, WallBoard* board);

  ToolKind tool() const { return tool_; }
  void take(ToolKind tool);
  // The tool of a letter; false: it is none's.
  bool takeByLetter(const QKeyEvent& event);
  // One step back: what is typed, the drag, the tool. False: nothing was in hand.
  bool stepBack();
  // A drag is under way: not a moment to save beside the window.
  bool isDragging() const { return drag_ != nullptr && !hovering_; }

  bool takes(const QPointF& pixel, Qt::KeyboardModifiers keys) override;
  void movedTo(const QPointF& pixel, Qt::KeyboardModifiers keys) override;
  void letGo(const QPointF& pixel, Qt::KeyboardModifiers keys) override;
  bool clickedAt(const QPointF& pixel, Qt::KeyboardModifiers keys) override;
  bool keyPressed(const QKeyEvent& event) override;
  void menuAsked(const std::optional<QPointF>& pixel, const QPoint& onScreen) override;
  Qt::CursorShape cursorAt(const QPointF& pixel) const override;
  const HandPicture* picture() const override { return &picture_; }

 signals:
  void toolChanged();
  // Why something cannot be done, for the status line.
  void told(const QString& words);
  // For what is chosen, and what can be done at that place.
  void menuWanted(const ribwright::MenuPlace& place, const QPoint& onScreen);

 private:
  DraggedWall wall() const;
  PointerAt pointerAt(const QPointF& pixel, Qt::KeyboardModifiers keys) const;
  FacePoint faceAt(const QPointF& pixel) const;
  std::optional<Grip> gripAt(const QPointF& pixel) const;
  std::optional<Part> movableAt(const QPointF& pixel) const;
  std::optional<Grip> wholeGripOf(const Part& part) const;

  bool beginChoosing(const QPointF& pixel, Qt::KeyboardModifiers keys);
  void begin(std::unique_ptr<DragWork> work, const FacePoint& start, const FacePoint& pressed);
  void beginCorner(const FacePoint& pressed);
  void hover(const QPointF& pixel, Qt::KeyboardModifiers keys);
  void showDrag();
  void finish();
  void drop();
  void dropWhatIsOvertaken();
  void forgetDrag();
  void showRest();
  void chooseForMenu(const std::optional<Part>& part);
  void chooseFramed();
  bool openTyping(const QString& first);
  void takeTyped(const QString& text);
  void enterTyped();
  bool nudge(const QKeyEvent& event);

  Session& session_;
  WallBoard* board_;
  TypedField* typing_;
  ToolKind tool_ = ToolKind::Choose;
  std::unique_ptr<WallDrag> drag_;
  bool hovering_ = false;  // the drag only shows where something would be put
  bool drawing_ = false;   // the other corner is yet to come
  bool pressed_ = false;
  std::optional<Part> clicked_;  // what a press without a drag chooses
  std::optional<Part> taken_;    // what the drag is of, chosen when it ends
  Qt::KeyboardModifiers pressedKeys_;
  std::optional<FacePoint> framed_;  // where a frame began
  QPointF pixel_;                    // of the pointer
  QPointF pressedAt_;
  HandPicture picture_;
};

}  // namespace ribwright
