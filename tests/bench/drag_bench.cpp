// One step of a drag on the large wall, from the pointer's event to the frame that shows it, in the real window and at
// three zooms, against painting the board alone. Prints milliseconds; judges nothing.
//
// Run offscreen: QT_QPA_PLATFORM=offscreen drag_bench
#include <QApplication>
#include <QElapsedTimer>
#include <QMouseEvent>
#include <algorithm>
#include <cstdio>
#include <vector>

#include "core/editing/opening_edits.h"
#include "core/job/by_id.h"
#include "tests/bench/screwed_building.h"
#include "ui/board/hand_picture.h"
#include "ui/board/wall_board.h"
#include "ui/session/main_window.h"

using namespace ribwright;

namespace {

constexpr int steps = 60;

class Dragging {
 public:
  Dragging(MainWindow& window, double zoom) : window_(window), board_(*window.findChild<WallBoard*>("board")) {
    board_.fit();
    while (board_.zoom() < zoom) board_.zoomIn();
    const Session& session = window.session();
    const Opening& opening = session.chosenWall().openings[session.chosenWall().openings.size() / 2];
    const FaceBox box = openingBox(session.job(), session.chosenWall(), opening).value();
    part_ = {Part::Kind::Opening, session.chosenWall().letter, opening.id};
    board_.show(part_);
    middle_ = {box.left + half(box.right - box.left), box.bottom + half(box.top - box.bottom)};
  }

  double zoom() const { return board_.zoom(); }

  // Each step's time, the plan's coming in between counted with the step in which it comes.
  std::vector<double> stepTimes() {
    const QPointF from = board_.shownAt().at(onBoard(middle_));
    send(QEvent::MouseButtonPress, from, Qt::LeftButton);
    std::vector<double> times;
    for (int step = 1; step <= steps; ++step) {
      QElapsedTimer clock;
      clock.start();
      send(QEvent::MouseMove, from + QPointF(5 + step % 20, step % 7), Qt::NoButton);
      QCoreApplication::processEvents();
      times.push_back(static_cast<double>(clock.nsecsElapsed()) / 1e6);
    }
    window_.session().settle();
    QApplication::sendEvent(&board_, new QKeyEvent(QEvent::KeyPress, Qt::Key_Escape, {}));
    send(QEvent::MouseButtonRelease, from, Qt::LeftButton);
    return times;
  }

  std::vector<double> paintTimes() {
    std::vector<double> times;
    for (int step = 0; step < steps; ++step) {
      QElapsedTimer clock;
      clock.start();
      board_.update();
      QCoreApplication::processEvents();
      times.push_back(static_cast<double>(clock.nsecsElapsed()) / 1e6);
    }
    return times;
  }

 private:
  void send(QEvent::Type type, const QPointF& at, Qt::MouseButton button) {
    QMouseEvent event(type, at, board_.mapToGlobal(at), button,
                      type == QEvent::MouseButtonRelease ? Qt::NoButton : Qt::LeftButton, {});
    QApplication::sendEvent(&board_, &event);
  }

  MainWindow& window_;
  WallBoard& board_;
  Part part_;
  FacePoint middle_;
};

double at(std::vector<double> times, double share) {
  std::sort(times.begin(), times.end());
  return times[static_cast<std::size_t>(share * static_cast<double>(times.size() - 1))];
}

}  // namespace

int main(int argc, char** argv) {
  QApplication application(argc, argv);
  MainWindow window;
  window.resize(1600, 1000);
  window.session().begin(bench::screwed(Length::feet(1000), 60));
  window.show();
  window.furnish();
  QCoreApplication::processEvents();
  for (const double zoom : {0.0, 0.05, 0.3}) {
    Dragging drag(window, zoom);
    const auto paint = drag.paintTimes(), step = drag.stepTimes();
    std::printf("1 : %-6.0f step %5.2f ms at the median, %5.2f the slowest; the board's frame alone %5.2f: %.2f times\n",
                1 / (drag.zoom() * 25.4 / 96), at(step, 0.5), at(step, 1), at(paint, 0.5), at(step, 0.5) / at(paint, 0.5));
  }
  return 0;
}
