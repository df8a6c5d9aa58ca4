// What comes of each start of the chosen wall, side by side: pointed at it is seen on the board, chosen it is the
// wall's. Beyond the rules, every start on the tape's marks can be tried.
#pragma once

#include <QWidget>
#include <optional>

#include "ui/panels/start_rows.h"
#include "ui/panels/start_work.h"
#include "ui/session/session.h"

class QLabel;
class QProgressBar;
class QPushButton;
class QTableWidget;

namespace ribwright {

class StartPanel : public QWidget {
  Q_OBJECT

 public:
  explicit StartPanel(Session& session, QWidget* parent = nullptr);

  // Starts that are compared; 0 while they are being worked out.
  int count() const { return static_cast<int>(rows_.size()); }

 signals:
  void counted();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void makeTable();
  QWidget* makeFoot();
  void renew();
  void fill(const std::vector<ComparedStart>& starts);
  void fit();
  std::optional<Start> startAt(int row) const;
  void previewRow(int row);
  void endPreview();
  void chooseRow(int row);
  void choose(const Start& start);
  void search();
  void showSearch(const StartSearch& found);
  void tell(const QString& words);

  Session& session_;
  StartWork work_;
  QTableWidget* table_;
  QLabel* words_;
  QProgressBar* progress_;
  QPushButton *search_, *stop_, *take_;
  std::vector<StartRow> rows_;
  std::string shownWall_;  // letter of the wall that the rows are about
  std::optional<Start> found_;
  bool stale_ = true, filling_ = false, ours_ = false;  // ours: the preview that is seen was begun here
};

}  // namespace ribwright
