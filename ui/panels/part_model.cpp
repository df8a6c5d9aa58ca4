#include "ui/panels/part_model.h"

namespace ribwright {

void PartModel::setRows(PartRows rows) {
  beginResetModel();
  shown_ = std::move(rows);
  endResetModel();
}

int PartModel::rowOf(const std::optional<Part>& part) const {
  for (int row = 0; part && row < rowCount(); ++row) {
    if (partAt(row) == *part) return row;
  }
  return -1;
}

int PartModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(shown_.rows.size());
}

int PartModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(shown_.columns.size());
}

QVariant PartModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const bool figure = shown_.columns[static_cast<std::size_t>(index.column())].figure;
  if (role == Qt::TextAlignmentRole) return int(Qt::AlignVCenter | (figure ? Qt::AlignRight : Qt::AlignLeft));
  if (role != Qt::DisplayRole) return {};
  return shown_.rows[static_cast<std::size_t>(index.row())].cells.value(index.column());
}

QVariant PartModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || section < 0 || section >= columnCount()) return {};
  const PartRows::Column& column = shown_.columns[static_cast<std::size_t>(section)];
  if (role == Qt::TextAlignmentRole) return int(Qt::AlignVCenter | (column.figure ? Qt::AlignRight : Qt::AlignLeft));
  return role == Qt::DisplayRole ? column.title : QVariant();
}

}  // namespace ribwright
