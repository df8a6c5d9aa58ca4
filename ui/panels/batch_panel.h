// The drill batches of the chosen wall, and the patterns that their holes follow.
#pragma once

#include <QWidget>

#include "ui/session/session.h"

class QPushButton;

namespace ribwright {

class ElidedLabel;
class PartTable;

class BatchPanel : public QWidget {
  Q_OBJECT

 public:
  explicit BatchPanel(Session& session, QWidget* parent = nullptr);

  void refill();
  int count() const;
  int cleared() const;

 signals:
  void pointedAt(const Part& part);

 private:
  void askToConfirm();

  Session& session_;
  PartTable* table_;
  ElidedLabel* summary_;
  QPushButton* confirm_;
};

}  // namespace ribwright
