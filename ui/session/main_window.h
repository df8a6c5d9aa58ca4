// The one window: walls at the left, the chosen wall's pages in the middle, its sheets and the findings at the right.
#pragma once

#include <QMainWindow>

#include "ui/session/session.h"

class QActionGroup;
class QLabel;
class QSplitter;
class QStackedWidget;
class QTableView;

namespace ribwright {

class ElevationBoard;
class FaultPanel;
class FindingPanel;
class SheetTable;
class WallList;

class MainWindow : public QMainWindow {
  Q_OBJECT

 public:
  explicit MainWindow(QWidget* parent = nullptr);

  // False when it cannot be read; the window then says why.
  bool openJob(const QString& path);
  // Writes the packet into a folder; false when it cannot be written, and the window then says why.
  bool savePacket(const QString& folder);

  const Session& session() const { return session_; }

 protected:
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;

 private:
  void makePanels();
  void makeActions();
  void makePaperMenu(QMenu* menu);
  void askForJob();
  void askForFolder();
  void reload();
  void showJob();
  void showWall();
  void showPages();
  void showFaults();
  void showView();

  Session session_;
  WallList* walls_ = nullptr;
  QStackedWidget* middle_ = nullptr;
  ElevationBoard* board_ = nullptr;
  SheetTable* sheets_ = nullptr;
  QTableView* sheetView_ = nullptr;
  QSplitter* side_ = nullptr;
  FindingPanel* findings_ = nullptr;
  FaultPanel* faults_ = nullptr;
  QLabel* counts_ = nullptr;
  QLabel* view_ = nullptr;
  QActionGroup* papers_ = nullptr;
  std::vector<QAction*> needJob_;  // only make sense while a job is open
};

}  // namespace ribwright
