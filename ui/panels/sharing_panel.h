// Blanks that give two pieces or more: what sharing is on, what each kind saves, which blanks there are, and how the
// chosen one is cut.
#pragma once

#include <QWidget>
#include <vector>

#include "core/cutting/sharing_savings.h"
#include "core/takeoff/shared_blanks.h"
#include "ui/session/session.h"

class QCheckBox;
class QLabel;
class QTableWidget;

namespace ribwright {

class BlankView;
class FieldForm;

class SharingPanel : public QWidget {
  Q_OBJECT

 public:
  explicit SharingPanel(Session& session, QWidget* parent = nullptr);

  // As the session's job and plan have it.
  void refill();
  void finishTyping();
  int count() const { return static_cast<int>(blanks_.size()); }

 signals:
  void pointedAt(const Part& part);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  QWidget* makeSettings();
  void makeTable();
  void fillTable();
  void fillSavings();
  void fillWalls();
  void setShares(std::size_t wall, bool shares);
  void showChosen();
  void fit();
  QString savingText(const WaySaving& saving) const;

  Session& session_;
  FieldForm* form_;
  QWidget* walls_;
  QLabel *savings_, *summary_;
  QTableWidget* table_;
  BlankView* view_;
  std::vector<NumberedBlank> blanks_;
  std::vector<std::string> wallsShown_;  // letters of the boxes
  bool filling_ = false;
};

}  // namespace ribwright
