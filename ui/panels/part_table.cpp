#include "ui/panels/part_table.h"

#include <QEvent>
#include <QHeaderView>

namespace ribwright {

PartTable::PartTable(Session& session, Rows rows, QWidget* parent)
    : QTableView(parent), session_(session), rows_(rows), model_(new PartModel(this)) {
  setModel(model_);
  setSelectionBehavior(QAbstractItemView::SelectRows);
  setSelectionMode(QAbstractItemView::SingleSelection);
  setTabKeyNavigation(false);
  setAlternatingRowColors(true);
  setShowGrid(false);
  setWordWrap(false);
  verticalHeader()->hide();
  horizontalHeader()->setHighlightSections(false);
  connect(selectionModel(), &QItemSelectionModel::currentRowChanged, this, &PartTable::chooseRow);
  connect(this, &QAbstractItemView::clicked, this, &PartTable::chooseRow);
  connect(&session_, &Session::chosenChanged, this, &PartTable::showChosen);
  fit();
}

void PartTable::refill() {
  following_ = true;
  model_->setRows(rows_(session_));
  fit();
  following_ = false;
  showChosen();
}

void PartTable::fit() {
  horizontalHeader()->setFont(font());  // a table that is not seen would keep its header's old one
  verticalHeader()->setDefaultSectionSize(fontMetrics().height() + fontMetrics().height() / 3);
  resizeColumnsToContents();
  // Room between columns, so that a figure does not run into the words beside it.
  for (int column = 0; column < model_->columnCount(); ++column)
    setColumnWidth(column, columnWidth(column) + 2 * fontMetrics().averageCharWidth());
}

void PartTable::changeEvent(QEvent* event) {
  QTableView::changeEvent(event);
  if (event->type() == QEvent::FontChange && model_) fit();
}

void PartTable::showChosen() {
  if (following_) return;
  following_ = true;
  const int row = model_->rowOf(session_.chosen());
  setCurrentIndex(row < 0 ? QModelIndex() : model_->index(row, 0));
  if (row < 0) clearSelection();
  following_ = false;
}

void PartTable::chooseRow(const QModelIndex& current) {
  if (following_ || !current.isValid()) return;
  const Part part = model_->partAt(current.row());
  following_ = true;
  session_.choose(part);
  following_ = false;
  emit pointedAt(part);
}

}  // namespace ribwright
