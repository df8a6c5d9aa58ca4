// Says on standard output when a window has painted its first frame, and ends the program.
#pragma once

#include <QApplication>
#include <QEvent>
#include <QTimer>
#include <QWidget>
#include <cstdio>

namespace ribwright::bench {

// The frame is done when the events that led to it are: a timer of no time comes after them.
class FirstFrame : public QObject {
 public:
  explicit FirstFrame(QWidget& window) : QObject(&window) { window.installEventFilter(this); }

 protected:
  bool eventFilter(QObject*, QEvent* event) override {
    if (event->type() != QEvent::Paint || said_) return false;
    said_ = true;
    QTimer::singleShot(0, qApp, [] {
      std::puts("frame");
      std::fflush(stdout);
      QCoreApplication::quit();
    });
    return false;
  }

 private:
  bool said_ = false;
};

}  // namespace ribwright::bench
