// Painting the board with a picture of 6000 x 4000 pixels laid over it, straight and turned, at several zooms, against
// the same board without one. Prints milliseconds; judges nothing.
//
// Run offscreen: QT_QPA_PLATFORM=offscreen underlay_bench
#include <QApplication>
#include <QElapsedTimer>
#include <QPainter>
#include <algorithm>
#include <cstdio>
#include <vector>

#include "core/job/job_file.h"
#include "core/plan/plan.h"
#include "ui/board/wall_board.h"

using namespace ribwright;

namespace {

constexpr int frames = 40;

QImage scan() {
  QImage made(6000, 4000, QImage::Format_RGB32);
  made.fill(Qt::white);
  QPainter painter(&made);
  for (int at = 0; at < 6000; at += 50) {
    painter.drawLine(at, 0, at, 4000);
    painter.drawLine(0, at, 6000, at);
  }
  return made;
}

// The middle one of many, ms.
double frameTime(WallBoard& board) {
  std::vector<double> times;
  for (int frame = 0; frame < frames; ++frame) {
    QElapsedTimer clock;
    clock.start();
    board.update();
    QCoreApplication::processEvents();
    times.push_back(static_cast<double>(clock.nsecsElapsed()) / 1e6);
  }
  std::sort(times.begin(), times.end());
  return times[times.size() / 2];
}

}  // namespace

int main(int argc, char** argv) {
  QApplication application(argc, argv);
  const auto job = loadJob(RIBWRIGHT_ROOT "/sample-jobs/gable-workshop.json");
  if (!job) return 1;
  const Plan planned = plan(job.value());
  WallBoard board;
  board.resize(1600, 900);
  board.setWall(std::make_shared<const BoardPicture>(boardPicture(job.value(), planned, 0, Words::of("en"))));
  board.show();
  QElapsedTimer clock;
  clock.start();
  const ScaledPicture picture = inScales(scan());
  std::printf("made and kept in %zu scales: %lld ms\n", picture.copies.size(), clock.elapsed());
  const double scale = 3;  // mm to a pixel
  for (int step = 0; step < 18; ++step, board.zoomIn()) {
    if (step % 3 != 0) continue;
    board.setUnderlay(std::nullopt);
    std::printf("zoom %7.3f: without %6.2f ms", board.zoom(), frameTime(board));
    for (const double turn : {0.0, 0.7, 90.0}) {
      const QTransform toFace =
          QTransform::fromTranslate(6000, -3000).rotate(turn).scale(scale, scale).translate(-3000, -2000);
      board.setUnderlay(Underlay{picture, toFace, 0.5});
      std::printf(", turned by %g %6.2f ms", turn, frameTime(board));
    }
    std::printf("\n");
  }
  return 0;
}
