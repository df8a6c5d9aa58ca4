// What stands in the window while no job is open: what to do, the buttons for it, the jobs that were opened last, and
// whether work was left behind.
#pragma once

#include <QFrame>
#include <QWidget>
#include <vector>

class QLabel;
class QPushButton;
class QTreeWidget;

namespace ribwright {

struct RecentRow {
  QString name, path;  // of the job, and of its file
  bool there = true;
};

class StartPage : public QWidget {
  Q_OBJECT

 public:
  explicit StartPage(QWidget* parent = nullptr);

  void setRecent(const std::vector<RecentRow>& rows);
  // How many jobs have work that was not saved.
  void setKept(int count);

 signals:
  void newAsked();
  void openAsked();
  void openRecentAsked(const QString& path);
  void forgetAsked(const QString& path);
  void keptAsked();

 protected:
  void changeEvent(QEvent* event) override;

 private:
  QFrame* makeKept();
  QWidget* makeRecent();
  void showChosen();
  QString chosenPath() const;
  void openChosen();
  void fit();

  QLabel *title_, *words_;
  QFrame* kept_;
  QLabel* keptWords_;
  QWidget* recentPart_;
  QTreeWidget* recent_;
  QPushButton *open_, *forget_;
};

}  // namespace ribwright
