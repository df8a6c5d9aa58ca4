#include "ui/panels/filled_table.h"

namespace ribwright {

FilledTable::FilledTable(Session& session, const char* name, const QString& reads, QWidget* parent)
    : FilledTable(session, new PartModel(nullptr), name, reads, parent) {}

FilledTable::FilledTable(Session& session, PartModel* model, const char* name, const QString& reads, QWidget* parent)
    : PartTable(session, model, parent), rows_(model) {
  setObjectName(QLatin1String(name));
  setAccessibleName(reads);
  connect(selectionModel(), &QItemSelectionModel::currentRowChanged, this, &FilledTable::currentChosen);
}

void FilledTable::setRows(PartRows rows) {
  fill(std::move(rows));
  emit currentChosen();
}

std::optional<std::size_t> FilledTable::current() const {
  const int row = currentIndex().row();
  if (row < 0 || row >= rows_->rowCount()) return std::nullopt;
  return rows_->statedAt(row);
}

}  // namespace ribwright
