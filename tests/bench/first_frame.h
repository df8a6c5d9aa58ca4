// Ends the program when a window has painted its first frame.
#pragma once

#include <QApplication>
#include <QEvent>
#include <QTimer>
#include <QWidget>

namespace ribwright::bench {

// The frame is done when the events that led to it are: a timer of no time comes after them.
class FirstFrame : public QObject {
 public:
  explicit FirstFrame(QWidget& window) : QObject(&window) { window.installEventFilter(this); }

 protected:
  bool eventFilter(QObject*, QEvent* event) override {
    if (event->type() == QEvent::Paint) QTimer::singleShot(0, qApp, &QCoreApplication::quit);
    return false;
  }
};

}  // namespace ribwright::bench
