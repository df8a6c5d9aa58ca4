// The places round the wall that panels stand in: below, one behind the other, and at the right above one
// another. A person can move, hide
// and resize them; where they stood is remembered.
#pragma once

#include <QMainWindow>
#include <vector>

class QAction;
class QDockWidget;

namespace ribwright {

struct WindowDocks {
  QDockWidget *tables, *order, *particulars, *findings;
  std::vector<QDockWidget*> all() const { return {tables, order, particulars, findings}; }
};

// Empty ones, as they stood when the window was last closed.
WindowDocks makeDocks(QMainWindow& window);

// As they are shipped.
void placeDocks(QMainWindow& window, const WindowDocks& docks);

// While no job is open there is nothing to dock: those that were seen are seen again with the next job.
class DockVeil {
 public:
  void set(const WindowDocks& docks, bool veiled);

 private:
  bool veiled_ = false;
  std::vector<QDockWidget*> shown_;
};

// The window's size and its docks are kept for the next time.
void keepDocks(const QMainWindow& window);
// False: nothing fitting was kept.
bool restoreDocks(QMainWindow& window);

}  // namespace ribwright
