// A table of parts whose row is the part that is chosen everywhere.
#pragma once

#include <QTableView>

#include "ui/panels/part_model.h"
#include "ui/session/session.h"

namespace ribwright {

class PartTable : public QTableView {
  Q_OBJECT

 public:
  using Rows = PartRows (*)(const Session&);
  PartTable(Session& session, Rows rows, QWidget* parent = nullptr);

  int count() const { return model_->rowCount(); }
  void refill();

 signals:
  // A row was chosen here.
  void pointedAt(const Part& part);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void showChosen();
  void chooseRow(const QModelIndex& current);
  void fit();

  Session& session_;
  Rows rows_;
  PartModel* model_;
  bool following_ = false;  // the table follows the session, not the other way round
};

}  // namespace ribwright
