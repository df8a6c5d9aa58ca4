// What is stated of the chosen wall as a table to be typed into: typing begins a cell, Enter goes on to the next, the
// last row takes a new one, Delete removes the chosen rows, cells of a spreadsheet can be pasted.
#pragma once

#include "ui/panels/part_table.h"
#include "ui/panels/stated_model.h"

namespace ribwright {

class StatedTable : public PartTable {
  Q_OBJECT

 public:
  StatedTable(Session& session, StatedList list, QWidget* parent = nullptr);

  StatedModel* cells() const { return model_; }
  void refill() override;
  // Enters what stands in the open editor, as leaving it does.
  void finishTyping();

 signals:
  // What is to be read of the cell that is at hand, and whether it is a fault.
  void told(const QString& words, bool fault);

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void keyboardSearch(const QString&) override {}  // letters begin a cell
  void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

 private:
  StatedTable(Session& session, StatedModel* model, QWidget* parent);
  void enterTyped(QWidget* editor, int step);
  void enterAgain(int step);
  void goOn(int step);
  void removeRows();
  void paste();
  QString entriesOf(const std::vector<QStringList>& rows, std::vector<StatedModel::Entry>& entries) const;
  void tellCurrent();
  void tellRefused();

  StatedModel* model_;
};

}  // namespace ribwright
