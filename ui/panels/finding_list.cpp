#include "ui/panels/finding_list.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QKeyEvent>
#include <QMimeData>
#include <algorithm>
#include <numeric>

#include "ui/panels/row_order.h"
#include "ui/panels/sort_header.h"
#include "ui/panels/table_copy.h"

namespace ribwright {

FindingList::FindingList(const QStringList& titles, QWidget* parent)
    : QTreeWidget(parent), header_(new SortHeader(this)) {
  setHeader(header_);
  setColumnCount(int(titles.size()));
  setHeaderLabels(titles);
  setRootIsDecorated(false);
  setUniformRowHeights(true);
  setAllColumnsShowFocus(true);
  setSelectionMode(ExtendedSelection);
  header_->setStretchLastSection(true);
  header_->setAccessibleName(tr("Columns to sort by"));
  connect(header_, &QHeaderView::sortIndicatorChanged, this, &FindingList::fill);
}

void FindingList::setLines(std::vector<Line> lines) {
  lines_ = std::move(lines);
  fill();
}

std::vector<int> FindingList::order() const {
  std::vector<int> order(lines_.size());
  std::iota(order.begin(), order.end(), 0);
  const int column = header_->sortIndicatorSection();
  if (column < 0) return order;
  const bool rising = header_->sortIndicatorOrder() == Qt::AscendingOrder;
  std::stable_sort(order.begin(), order.end(), [&](int a, int b) {
    const Line &one = lines_[std::size_t(rising ? a : b)], &other = lines_[std::size_t(rising ? b : a)];
    if (column == 0 && one.rank != other.rank) return one.rank < other.rank;
    return naturallyBefore(one.cells.value(column), other.cells.value(column));
  });
  return order;
}

// Up and down only: the grade stays in sight.
void FindingList::scrollTo(const QModelIndex& index, ScrollHint hint) {
  QTreeWidget::scrollTo(index.siblingAtColumn(0), hint);
}

void FindingList::fill() {
  const int current = at(currentItem());
  const bool heard = blockSignals(true);
  clear();
  for (const int line : order()) {
    const QStringList& cells = lines_[std::size_t(line)].cells;
    auto* item = new QTreeWidgetItem(this, cells);
    item->setData(0, Qt::UserRole, line);
    for (int column = 1; column < cells.size(); ++column) item->setToolTip(column, cells[column]);
  }
  if (QTreeWidgetItem* item = itemOf(current)) setCurrentItem(item);
  fit();
  blockSignals(heard);
  emit filled();
}

int FindingList::at(const QTreeWidgetItem* item) const { return item ? item->data(0, Qt::UserRole).toInt() : -1; }

QTreeWidgetItem* FindingList::itemOf(int line) const {
  for (int row = 0; row < topLevelItemCount(); ++row) {
    if (at(topLevelItem(row)) == line) return topLevelItem(row);
  }
  return nullptr;
}

std::vector<int> FindingList::chosenLines() const {
  std::vector<int> lines;
  for (int row = 0; row < topLevelItemCount(); ++row) {
    if (topLevelItem(row)->isSelected()) lines.push_back(at(topLevelItem(row)));
  }
  return lines;
}

void FindingList::fit() {
  header_->setFitting(true);
  for (int column = 0; column + 1 < columnCount(); ++column) {
    resizeColumnToContents(column);
    // Room for lines that are set in bold later.
    const int drawn = header_->drawnWidth(column);
    setColumnWidth(column, drawn > 0 ? drawn : columnWidth(column) + 2 * fontMetrics().averageCharWidth());
  }
  header_->setFitting(false);
}

void FindingList::keyPressEvent(QKeyEvent* event) {
  if (!event->matches(QKeySequence::Copy)) return QTreeWidget::keyPressEvent(event);
  QStringList titles;
  for (int column = 0; column < columnCount(); ++column) titles << headerItem()->text(column);
  std::vector<QStringList> rows;
  for (const int line : chosenLines()) rows.push_back(lines_[std::size_t(line)].cells);
  if (!rows.empty()) QGuiApplication::clipboard()->setMimeData(copiedRows(titles, rows));
}

}  // namespace ribwright
