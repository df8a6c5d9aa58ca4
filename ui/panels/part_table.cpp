#include "ui/panels/part_table.h"

#include <QClipboard>
#include <QEvent>
#include <QGuiApplication>
#include <QKeyEvent>
#include <QMimeData>
#include <algorithm>

#include "ui/panels/sort_header.h"
#include "ui/panels/table_copy.h"

namespace ribwright {

PartTable::PartTable(Session& session, Rows rows, QWidget* parent)
    : PartTable(session, new PartModel(nullptr), parent) {
  rows_ = rows;
}

PartTable::PartTable(Session& session, PartModel* model, QWidget* parent)
    : QTableView(parent), session_(session), model_(model), header_(new SortHeader(this)) {
  model_->setParent(this);
  setHorizontalHeader(header_);
  setModel(model_);
  setSelectionBehavior(QAbstractItemView::SelectRows);
  setSelectionMode(QAbstractItemView::ExtendedSelection);
  setTabKeyNavigation(false);
  setAlternatingRowColors(true);
  setShowGrid(false);
  setWordWrap(false);
  setHorizontalScrollMode(ScrollPerPixel);
  verticalHeader()->hide();
  header_->setAccessibleName(tr("Columns to sort by"));
  connect(header_, &QHeaderView::sortIndicatorChanged, this, &PartTable::sortBy);
  connect(selectionModel(), &QItemSelectionModel::selectionChanged, this, &PartTable::chooseRows);
  connect(this, &QAbstractItemView::clicked, this, &PartTable::chooseRows);
  connect(&session_, &Session::chosenChanged, this, &PartTable::showChosen);
  fit();
}

void PartTable::refill() { fill(rows_(session_)); }

void PartTable::fill(PartRows rows) {
  const int row = currentIndex().row(), column = std::max(0, currentIndex().column());
  const std::optional<Part> before = model_->partAt(row);
  following_ = true;
  filled_ = rows.rows.size();
  model_->setRows(std::move(rows));
  fit();
  if (!currentIndex().isValid() && row >= 0 && !before && row < model_->rowCount())
    setCurrentIndex(model_->index(row, column));
  if (!currentIndex().isValid() && before && model_->rowOf(before) >= 0)
    setCurrentIndex(model_->index(model_->rowOf(before), column));
  following_ = false;
  showChosen();
}

void PartTable::fit() {
  header_->setFont(font());  // a table that is not seen would keep its header's old one
  header_->setFitting(true);
  verticalHeader()->setDefaultSectionSize(fontMetrics().height() + fontMetrics().height() / 3);
  resizeColumnsToContents();
  // Room between columns, so that a figure does not run into the words beside it.
  for (int column = 0; column < model_->columnCount(); ++column) {
    const int drawn = header_->drawnWidth(column);
    setColumnWidth(column, drawn > 0 ? drawn : columnWidth(column) + 2 * fontMetrics().averageCharWidth());
  }
  header_->setFitting(false);
}

void PartTable::changeEvent(QEvent* event) {
  QTableView::changeEvent(event);
  if (event->type() == QEvent::FontChange && model_) fit();
}

void PartTable::sortBy(int column, Qt::SortOrder order) {
  model_->sort(column, order);
  if (currentIndex().isValid()) scrollTo(currentIndex());
}

void PartTable::keyPressEvent(QKeyEvent* event) {
  if (event->matches(QKeySequence::Copy)) return copy();
  QTableView::keyPressEvent(event);
}

std::vector<int> PartTable::chosenRows() const {
  std::vector<int> rows;
  for (const QModelIndex& index : selectionModel()->selectedRows()) rows.push_back(index.row());
  std::sort(rows.begin(), rows.end());
  return rows;
}

void PartTable::copy() const {
  QStringList titles;
  for (int column = 0; column < model_->columnCount(); ++column)
    titles << model_->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
  std::vector<QStringList> copied;
  for (const int row : chosenRows()) {
    QStringList cells;
    for (int column = 0; column < model_->columnCount(); ++column) cells << model_->plainText(row, column);
    copied.push_back(cells);
  }
  if (!copied.empty()) QGuiApplication::clipboard()->setMimeData(copiedRows(titles, copied));
}

void PartTable::selectRows(const std::vector<int>& rows, int column) {
  QItemSelection all;
  for (const int row : rows) all.select(model_->index(row, 0), model_->index(row, model_->columnCount() - 1));
  selectionModel()->setCurrentIndex(model_->index(rows.back(), column), QItemSelectionModel::NoUpdate);
  selectionModel()->select(all, QItemSelectionModel::ClearAndSelect);
  scrollTo(currentIndex());
}

void PartTable::showChosen() {
  if (following_) return;
  std::vector<int> rows;
  for (const Part& part : session_.chosenParts()) {
    if (const int row = model_->rowOf(part); row >= 0) rows.push_back(row);
  }
  // A row that points at nothing stays at hand while nothing is chosen elsewhere.
  const bool ofNothing = currentIndex().isValid() && !model_->partAt(currentIndex().row());
  if (rows.empty() && ofNothing && session_.chosenParts().empty()) return;
  following_ = true;
  if (rows.empty()) {
    setCurrentIndex({});
    clearSelection();
  } else {
    selectRows(rows, std::max(0, currentIndex().column()));
  }
  following_ = false;
}

void PartTable::chooseRows() {
  if (following_) return;
  const int current = currentIndex().row();
  std::vector<Part> parts;
  std::optional<Part> last;
  for (const int row : chosenRows()) {
    const auto part = model_->partAt(row);
    if (part && row == current) last = part;
    if (part && row != current) parts.push_back(*part);
  }
  if (last) parts.push_back(*last);
  if (parts.empty() && chosenRows().empty()) return;
  following_ = true;
  session_.chooseParts(parts);
  following_ = false;
  if (last) emit pointedAt(*last);
  if (parts.empty()) choseNoPart();
}

}  // namespace ribwright
