// What can be asked of the window by menu, tool bar and key.
#pragma once

#include <QMainWindow>
#include <vector>

class QAction;
class QActionGroup;
class QMenu;

namespace ribwright {

struct WindowActions {
  QAction *newJob, *open, *reload, *save, *saveAs, *readSurvey, *writeSurvey, *readOpenings, *writeOpenings,
      *readPrices, *writePrices, *writeCost, *savePacket, *stopPacket, *print, *quit;
  QAction *undo, *redo, *cut, *copy, *paste, *remove, *chooseAll, *building, *jobParticulars;
  QAction *asPrinted, *zoomIn, *zoomOut, *fit, *previousPage, *nextPage;
  QAction *nextPanel, *previousPanel, *panelsAsShipped, *stepBack, *quickStart, *keys;
  QMenu *recent, *wall, *panels;
  QActionGroup *papers, *appearances, *textSizes;  // their data: PaperSize, Appearance, percent, as int

  // Those that only make sense while a job is open; of the pages alone: while they are seen.
  std::vector<QAction*> ofJob() const;
  std::vector<QAction*> ofPages() const;
};

// Fills the window's menus and its tool bar; nothing is connected yet.
WindowActions makeActions(QMainWindow& window);

// Ticks the one of a group whose data is this.
void tick(const QActionGroup& group, int data);

}  // namespace ribwright
