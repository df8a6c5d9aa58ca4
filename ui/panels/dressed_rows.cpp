#include "ui/panels/dressed_rows.h"

#include <QHeaderView>
#include <QTableWidget>

namespace ribwright {

void dressRows(QTableWidget& table, const QStringList& columns) {
  table.setColumnCount(static_cast<int>(columns.size()));
  table.setHorizontalHeaderLabels(columns);
  table.verticalHeader()->hide();
  table.horizontalHeader()->setHighlightSections(false);
  table.setSelectionBehavior(QAbstractItemView::SelectRows);
  table.setSelectionMode(QAbstractItemView::SingleSelection);
  table.setEditTriggers(QAbstractItemView::NoEditTriggers);
  table.setTabKeyNavigation(false);
  table.setAlternatingRowColors(true);
  table.setShowGrid(false);
  table.setWordWrap(false);
}

}  // namespace ribwright
