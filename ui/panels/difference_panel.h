// Two states compared by what they buy: the job as it is with its file, with another job file, or with an order that
// was placed.
#pragma once

#include <QWidget>
#include <optional>

#include "core/takeoff/order_difference.h"
#include "ui/session/session.h"

class QComboBox;
class QLabel;
class QPushButton;

namespace ribwright {

class FilledTable;

class DifferencePanel : public QWidget {
  Q_OBJECT

 public:
  explicit DifferencePanel(Session& session, QWidget* parent = nullptr);

  void refill();
  // Compares with a job file; what is wrong with it is said where the difference would be.
  void compareWith(const QString& path);

 private:
  void fillChoices();
  void choose(int index);
  void compare();
  // The job file as it stands on the disk against the job as it is. Absent: it cannot be read, and why is said.
  std::optional<OrderDifference> fromFile(const QString& path);
  // Sheets alone, both at the prices of today.
  OrderDifference fromOrder(const PlacedOrder& order) const;
  QString summary(const OrderDifference& difference) const;

  Session& session_;
  QComboBox* with_;
  QLabel* summary_;
  FilledTable* table_;
  QString other_;  // another job file; empty: none was chosen
};

}  // namespace ribwright
