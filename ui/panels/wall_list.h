// The walls of the job, one a line: letter, name, width, number of sheets.
#pragma once

#include <QListWidget>

#include "core/job/job.h"
#include "core/plan/plan.h"

namespace ribwright {

class WallList : public QListWidget {
  Q_OBJECT

 public:
  explicit WallList(QWidget* parent = nullptr);

  void setWalls(const Job& job, const Plan& plan);

 signals:
  void wallChosen(int wall);
};

}  // namespace ribwright
