#include "ui/panels/sheet_table.h"

#include <QStringList>

#include "core/drawing/shown_length.h"

namespace ribwright {

namespace {

enum Column { Mark, Kind, Width, Blank, Order, columns };

QString kindText(const Piece& piece) {
  QStringList words;
  if (piece.rip) words << SheetTable::tr("rip");
  if (piece.rake) words << SheetTable::tr("rake");
  if (piece.notched) words << SheetTable::tr("notched");
  if (piece.above) words << SheetTable::tr("above");
  if (piece.below) words << SheetTable::tr("below");
  return words.isEmpty() ? SheetTable::tr("full") : words.join(QStringLiteral(", "));
}

}  // namespace

SheetTable::SheetTable(QObject* parent) : QAbstractTableModel(parent) {}

void SheetTable::setWall(const WallLayout& layout, const std::vector<std::string>& codes, const LengthStyle& style) {
  beginResetModel();
  rows_.clear();
  for (std::size_t i = 0; i < layout.pieces.size(); ++i) {
    const Piece& piece = layout.pieces[i];
    rows_.push_back({QString::fromStdString(piece.mark), kindText(piece),
                     QString::fromStdString(dimensionText(piece.right - piece.left, style)),
                     QString::fromStdString(cutText(piece.blankLength, style)),
                     i < codes.size() ? QString::fromStdString(codes[i]) : QString()});
  }
  endResetModel();
}

void SheetTable::clear() {
  beginResetModel();
  rows_.clear();
  endResetModel();
}

int SheetTable::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int SheetTable::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : columns; }

QVariant SheetTable::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const bool figure = index.column() == Width || index.column() == Blank;
  if (role == Qt::TextAlignmentRole) return int(Qt::AlignVCenter | (figure ? Qt::AlignRight : Qt::AlignLeft));
  if (role != Qt::DisplayRole) return {};
  const Row& row = rows_[static_cast<std::size_t>(index.row())];
  switch (index.column()) {
    case Mark:
      return row.mark;
    case Kind:
      return row.kind;
    case Width:
      return row.width;
    case Blank:
      return row.blank;
    default:
      return row.order;
  }
}

QVariant SheetTable::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
  switch (section) {
    case Mark:
      return tr("Mark");
    case Kind:
      return tr("Kind");
    case Width:
      return tr("Width");
    case Blank:
      return tr("Blank");
    case Order:
      return tr("Order");
    default:
      return {};
  }
}

}  // namespace ribwright
