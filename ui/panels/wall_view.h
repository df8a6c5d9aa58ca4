// The chosen wall: on the board to look at and to pick from, or its pages as they are printed; one switch of two.
#pragma once

#include <QTimer>
#include <QWidget>
#include <map>
#include <memory>
#include <optional>
#include <vector>

#include "ui/session/session.h"

class QAction;
class QPushButton;
class QStackedWidget;

namespace ribwright {

struct BoardPicture;
class BoardTools;
class ElevationBoard;
class ElidedLabel;
class EmptyButton;
class WallBoard;
struct MenuPlace;

class WallView : public QWidget {
  Q_OBJECT

 public:
  explicit WallView(Session& session, QWidget* parent = nullptr);

  bool isAsPrinted() const;
  void setAsPrinted(bool printed);
  // Brings a part of the chosen wall into view, or the first page on which it stands.
  void show(const Part& part);
  using QWidget::show;
  // The scale at which the wall is seen, "1 : 48", or of the pages "page 1 of 2, 83 %".
  QString zoomWords() const;

  void zoomIn();
  void zoomOut();
  void fit();
  void turnPage(int by);
  BoardTools* tools() const { return tools_; }
  WallBoard* board() const { return board_; }
  const std::vector<QAction*>& toolActionsInOrder() const { return toolActions_; }

 signals:
  // From a job without walls.
  void newAsked();
  void viewChanged();
  void hovered(const std::optional<ribwright::Part>& part);
  // Why something could not be done.
  void told(const QString& words);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  QWidget* makeHead();
  std::vector<QWidget*> makeToolButtons(QWidget* head);
  void showMenu(const MenuPlace& place, const QPoint& onScreen);
  void showWall();
  void showChanged();
  void showPages();
  void showHint(const QPoint& at, const QPoint& onScreen);
  std::shared_ptr<const BoardPicture> picture();
  QString pageWords() const;

  Session& session_;
  ElidedLabel* title_ = nullptr;
  EmptyButton* empty_ = nullptr;
  QPushButton *asBoard_ = nullptr, *asPages_ = nullptr;
  QStackedWidget* stack_;
  WallBoard* board_;
  BoardTools* tools_;
  std::vector<QAction*> toolActions_;
  ElevationBoard* pages_;
  QTimer changedFor_;
  std::map<int, std::shared_ptr<const BoardPicture>> pictures_;  // of the job's walls that were seen
};

}  // namespace ribwright
