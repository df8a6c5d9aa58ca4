#include "ui/panels/row_table.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <algorithm>

#include "ui/panels/table_copy.h"

namespace ribwright {

RowTable::RowTable(QWidget* parent) : QTableWidget(parent) {
  setSelectionBehavior(SelectRows);
  setEditTriggers(NoEditTriggers);
  setTabKeyNavigation(false);
  setWordWrap(false);
  setAlternatingRowColors(true);
  setHorizontalScrollMode(ScrollPerPixel);
  verticalHeader()->hide();
  horizontalHeader()->setHighlightSections(false);
  horizontalHeader()->setStretchLastSection(true);
  connect(this, &QTableWidget::currentCellChanged, this, [this](int row, int, int before) {
    if (!setting_ && row >= 0 && row != before) emit rowChosen(row);
  });
  connect(this, &QTableWidget::cellClicked, this, [this](int row, int) { emit rowChosen(row); });
}

void RowTable::setRows(const RowTexts& texts) {
  setting_ = true;
  const int current = currentRow();
  const bool asMany = texts.rows.size() == texts_.rows.size();
  texts_ = texts;
  clear();
  setColumnCount(static_cast<int>(texts.columns.size()));
  setRowCount(static_cast<int>(texts.rows.size()));
  for (int column = 0; column < columnCount(); ++column) {
    const RowTexts::Column& of = texts.columns[static_cast<std::size_t>(column)];
    const Qt::Alignment side = Qt::AlignVCenter | (of.figure ? Qt::AlignRight : Qt::AlignLeft);
    auto* title = new QTableWidgetItem(of.title);
    title->setTextAlignment(side);
    setHorizontalHeaderItem(column, title);
    for (int row = 0; row < rowCount(); ++row) {
      auto* item = new QTableWidgetItem(texts.rows[static_cast<std::size_t>(row)][column]);
      item->setTextAlignment(side);
      item->setToolTip(item->text().size() > 24 ? item->text() : QString());
      setItem(row, column, item);
    }
  }
  resizeColumnsToContents();
  resizeRowsToContents();
  if (asMany && current >= 0) setCurrentCell(current, std::max(0, currentColumn()));
  setting_ = false;
}

void RowTable::keyPressEvent(QKeyEvent* event) {
  if (!event->matches(QKeySequence::Copy)) return QTableWidget::keyPressEvent(event);
  copy();
}

void RowTable::copy() const {
  QStringList titles;
  for (const RowTexts::Column& column : texts_.columns) titles << column.title;
  std::vector<int> chosen;
  for (const QModelIndex& index : selectionModel()->selectedRows()) chosen.push_back(index.row());
  std::sort(chosen.begin(), chosen.end());
  std::vector<QStringList> rows;
  for (const int row : chosen) rows.push_back(texts_.rows[static_cast<std::size_t>(row)]);
  if (!rows.empty()) QGuiApplication::clipboard()->setMimeData(copiedRows(titles, rows));
}

}  // namespace ribwright
