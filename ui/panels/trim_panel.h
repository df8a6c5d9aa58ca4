// Trim by the piece: what there is and how long, how it is cut from what is sold, what of that is waste, and why no
// less would do. Choosing a piece chooses its opening or its wall.
#pragma once

#include <QWidget>
#include <vector>

#include "core/takeoff/trim_cuts.h"
#include "ui/panels/trim_work.h"
#include "ui/session/session.h"

class QLabel;
class QPushButton;
class QScrollArea;
class QTableWidget;

namespace ribwright {

class TrimChart;

class TrimPanel : public QWidget {
  Q_OBJECT

 public:
  explicit TrimPanel(Session& session, QWidget* parent = nullptr);

  // As the session's job and plan have it; the cut plan comes a moment later.
  void refill();
  int count() const { return static_cast<int>(takeoff_.pieces.size()); }
  bool isCutting() const { return work_.isBusy(); }

 signals:
  void pointedAt(const Part& part);
  void rulesWanted();  // where a job's trim and its rules are stated

 protected:
  void changeEvent(QEvent* event) override;

 private:
  QWidget* makeHead();
  void makeTable();
  void fillTable();
  void showCuts(const std::vector<TrimBatch>& batches);
  void choosePiece(int piece);
  void chooseRowOf(int piece);
  void takeShipped();
  QString proofText(const TrimBatch& batch) const;
  void fit();

  Session& session_;
  TrimWork work_;
  QLabel *summary_, *proof_;
  QPushButton *take_, *rules_;
  QTableWidget* table_;
  TrimChart* chart_;
  QScrollArea* scroll_;
  TrimTakeoff takeoff_;
  bool filling_ = false;
};

}  // namespace ribwright
