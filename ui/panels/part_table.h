// A table of parts whose chosen rows are the parts that are chosen everywhere. Rows can be sorted by any column, and
// copied with their header into a spreadsheet.
#pragma once

#include <QTableView>

#include "ui/panels/part_model.h"
#include "ui/session/session.h"

namespace ribwright {

class SortHeader;

class PartTable : public QTableView {
  Q_OBJECT

 public:
  using Rows = PartRows (*)(const Session&);
  PartTable(Session& session, Rows rows, QWidget* parent = nullptr);

  int count() const { return static_cast<int>(filled_); }
  virtual void refill();

 signals:
  // A row was chosen here.
  void pointedAt(const Part& part);

 protected:
  // For tables with a model of their own.
  PartTable(Session& session, PartModel* model, QWidget* parent);

  void changeEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

  Session& session() const { return session_; }
  void fill(PartRows rows);
  // Rows that are chosen, as they are seen, from the top.
  std::vector<int> chosenRows() const;
  void showChosen();
  void copy() const;
  // A row was chosen that points at nothing.
  virtual void choseNoPart() {}

 private:
  void chooseRows();
  void sortBy(int column, Qt::SortOrder order);
  void selectRows(const std::vector<int>& rows, int column);
  void fit();

  Session& session_;
  Rows rows_ = nullptr;
  PartModel* model_;
  SortHeader* header_;
  std::size_t filled_ = 0;
  bool following_ = false;  // the table follows the session, not the other way round
};

}  // namespace ribwright
