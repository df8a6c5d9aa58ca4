// What the job costs: line by line, by wall and by kind with bars, waste in area, weight and money, and what has no
// price. Prices are read from and written into a table, or stated with the job's particulars.
#pragma once

#include <QWidget>

#include "ui/session/session.h"

class QLabel;

namespace ribwright {

class FilledTable;
struct JobCost;
class ShareBars;

class CostPanel : public QWidget {
  Q_OBJECT

 public:
  explicit CostPanel(Session& session, QWidget* parent = nullptr);

  void refill();

 private:
  QString summary(const JobCost& cost) const;
  QString unpriced(const JobCost& cost) const;

  Session& session_;
  QLabel *summary_, *unpriced_;
  FilledTable* lines_;
  ShareBars *walls_, *kinds_;
};

}  // namespace ribwright
