// A window whose board is worked on by hand in tests: pressed, dragged, typed, asked for its menu.
#pragma once

#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QSignalSpy>

#include "core/editing/opening_edits.h"
#include "core/job/by_id.h"
#include "core/job/job_file.h"
#include "tests/ui/open_window.h"
#include "ui/board/hand_picture.h"
#include "ui/board/wall_board.h"
#include "ui/panels/wall_view.h"
#include "ui/tools/board_tools.h"

namespace ribwright {

inline Length in(int whole, int sixteenths = 0) { return Length::inches(whole, 4 * sixteenths); }
inline Length ft(int feet, int inches = 0) { return Length::feet(feet, inches); }

// Planned beside the window.
inline QString large() { return samples().filePath("doe-warehouse.json"); }

// A length, or a box, as a failed test says it.
inline QString words(Length length) { return QString::fromStdString(shownText(length, {})); }
inline QString words(const FaceBox& box) {
  return QStringList{words(box.left), words(box.right), words(box.bottom), words(box.top)}.join("; ");
}
inline FaceBox boxOf(Length left, Length right, Length bottom, Length top) { return {left, right, bottom, top}; }

class ToolBench {
 public:
  explicit ToolBench(const QString& job = workshop()) {
    if (!window->openJob(job)) qFatal("the job cannot be read");
    window->resize(1500, 1000);
    board = window.find<WallBoard>("board");
    board->fit();
    first = writeJob(session().job());
  }
  Session& session() { return window.session(); }
  BoardTools& tools() { return *static_cast<WallView*>(board->parentWidget()->parentWidget())->tools(); }
  const Wall& wall() { return session().chosenWall(); }
  const Opening& opening(const char* id) { return *byId(wall().openings, std::string(id)); }
  FaceBox box(const char* id) { return openingBox(session().job(), wall(), opening(id)).value(); }

  QPoint pixel(Length u, Length z) { return board->shownAt().at(onBoard({u, z})).toPoint(); }
  void take(const char* tool) { window.find<QAction>(tool)->trigger(); }
  void drag(const QPoint& from, const QPoint& to, Qt::KeyboardModifiers keys = {}) {
    QTest::mousePress(board, Qt::LeftButton, keys, from);
    move(from + (to - from) / 2, keys);
    move(to, keys);
    QTest::mouseRelease(board, Qt::LeftButton, keys, to);
  }
  void move(const QPoint& to, Qt::KeyboardModifiers keys = {}, Qt::MouseButtons held = Qt::LeftButton) {
    QMouseEvent event(QEvent::MouseMove, QPointF(to), board->mapToGlobal(QPointF(to)), Qt::NoButton, held, keys);
    QApplication::sendEvent(board, &event);
  }
  void click(const QPoint& at, Qt::KeyboardModifiers keys = {}) { QTest::mouseClick(board, Qt::LeftButton, keys, at); }
  void type(const char* text) {
    board->setFocus();
    QTest::keyClick(board, text[0]);
    if (text[1]) QTest::keyClicks(window.find<QLineEdit>("typedDrag"), text + 1);
  }
  void enter() { QTest::keyClick(window.find<QLineEdit>("typedDrag"), Qt::Key_Return); }
  // The window as it is, to be looked at where it is asked for.
  void grab(const char* name) {
    const QString folder = qEnvironmentVariable("RIBWRIGHT_PICTURES");
    if (!folder.isEmpty()) window->grab().save(QDir(folder).filePath(QLatin1String(name) + QStringLiteral(".png")));
  }
  // All that was done can be taken back, to the byte, and done again.
  void undoAllAndRedo() {
    const std::string last = writeJob(session().newest());
    while (session().history()->canUndo()) session().undo();
    QCOMPARE(writeJob(session().newest()), first);
    while (session().history()->canRedo()) session().redo();
    QCOMPARE(writeJob(session().newest()), last);
  }

  OpenWindow window;
  WallBoard* board = nullptr;
  std::string first;
};

inline QMenu* menuOf(ToolBench& bench, const QPoint& at) {
  QContextMenuEvent event(QContextMenuEvent::Mouse, at, bench.board->mapToGlobal(at));
  QApplication::sendEvent(bench.board, &event);
  const auto menus = bench.window->findChildren<QMenu*>(QStringLiteral("partMenu"));
  return menus.isEmpty() ? nullptr : menus.back();
}

inline void choose(QMenu* menu, const char* action) {
  QAction* found = menu->findChild<QAction*>(QLatin1String(action));
  if (!found) qFatal("the menu has no %s", action);
  found->trigger();
  menu->close();
}

}  // namespace ribwright
