// Orders that were placed, what came of them, and what is still to be ordered: with the edits for it.
#pragma once

#include <QWidget>
#include <vector>

#include "core/takeoff/delta_order.h"
#include "ui/panels/cost_rows.h"
#include "ui/session/session.h"

class QLabel;
class QPushButton;

namespace ribwright {

class FilledTable;

class PlacedPanel : public QWidget {
  Q_OBJECT

 public:
  explicit PlacedPanel(Session& session, QWidget* parent = nullptr);

  void refill();

 private:
  QPushButton* button(const char* name, const QString& text, const QString& tip);
  void askToPlace();
  void askForReceived();
  void receiveAll();
  void strike();
  void offer();
  void edit(const QString& name, const Session::Edit& edit);
  QString summary() const;

  Session& session_;
  QLabel* summary_;
  FilledTable *delta_, *placed_;
  QPushButton *place_, *all_, *some_, *strike_;
  DeltaOrder toOrder_;
  std::vector<PlacedRow> rows_;
};

}  // namespace ribwright
