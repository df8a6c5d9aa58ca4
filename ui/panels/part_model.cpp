#include "ui/panels/part_model.h"

#include <algorithm>
#include <numeric>

#include "ui/panels/row_order.h"

namespace ribwright {

namespace {

bool sameShape(const PartRows& a, const PartRows& b) {
  const auto title = [](const PartRows::Column& x, const PartRows::Column& y) { return x.title == y.title; };
  const auto part = [](const PartRows::Row& x, const PartRows::Row& y) { return x.part == y.part; };
  return std::equal(a.columns.begin(), a.columns.end(), b.columns.begin(), b.columns.end(), title) &&
         std::equal(a.rows.begin(), a.rows.end(), b.rows.begin(), b.rows.end(), part);
}

}  // namespace

void PartModel::setRows(PartRows rows) {
  if (!rows.rows.empty() && sameShape(rows, shown_)) {
    shown_ = std::move(rows);
    emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
    return;
  }
  beginResetModel();
  shown_ = std::move(rows);
  if (column_ >= static_cast<int>(shown_.columns.size())) column_ = -1;
  order_ = sorted();
  endResetModel();
}

std::vector<std::size_t> PartModel::sorted() const {
  std::vector<std::size_t> order(shown_.rows.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  if (column_ < 0) return order;
  const bool figure = shown_.columns[static_cast<std::size_t>(column_)].figure;
  const auto before = [&](std::size_t a, std::size_t b) {
    const QString one = shown_.rows[a].cells.value(column_), other = shown_.rows[b].cells.value(column_);
    return figure ? lengthBefore(one, other, shown_.style) : naturallyBefore(one, other);
  };
  const bool rising = direction_ == Qt::AscendingOrder;
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return rising ? before(a, b) : before(b, a); });
  return order;
}

void PartModel::sort(int column, Qt::SortOrder order) {
  column_ = column < static_cast<int>(shown_.columns.size()) ? column : -1;
  direction_ = order;
  emit layoutAboutToBeChanged({}, VerticalSortHint);
  const std::vector<std::size_t> before = order_;
  order_ = sorted();
  QModelIndexList from, to;
  for (const QModelIndex& each : persistentIndexList()) {
    if (each.row() >= static_cast<int>(before.size())) continue;
    from << each;
    to << index(shownAt(before[static_cast<std::size_t>(each.row())]), each.column());
  }
  changePersistentIndexList(from, to);
  emit layoutChanged({}, VerticalSortHint);
}

std::size_t PartModel::statedAt(int row) const {
  const auto at = static_cast<std::size_t>(row);
  return at < order_.size() ? order_[at] : at;
}

int PartModel::shownAt(std::size_t stated) const {
  const auto found = std::find(order_.begin(), order_.end(), stated);
  return static_cast<int>(found - order_.begin());
}

std::optional<Part> PartModel::partAt(int row) const {
  const auto at = static_cast<std::size_t>(row);
  return row >= 0 && at < order_.size() ? shown_.rows[order_[at]].part : std::nullopt;
}

int PartModel::rowOf(const std::optional<Part>& part) const {
  for (int row = 0; part && row < static_cast<int>(order_.size()); ++row) {
    if (partAt(row) == part) return row;
  }
  return -1;
}

QString PartModel::plainText(int row, int column) const { return index(row, column).data().toString(); }

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
  const std::size_t row = statedAt(index.row());
  if (role != Qt::DisplayRole || row >= shown_.rows.size()) return {};
  return shown_.rows[row].cells.value(index.column());
}

QVariant PartModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || section < 0 || section >= columnCount()) return {};
  const PartRows::Column& column = shown_.columns[static_cast<std::size_t>(section)];
  if (role == Qt::TextAlignmentRole) return int(Qt::AlignVCenter | (column.figure ? Qt::AlignRight : Qt::AlignLeft));
  return role == Qt::DisplayRole ? column.title : QVariant();
}

}  // namespace ribwright
