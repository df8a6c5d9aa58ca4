// The sheets of one wall as a table, in hanging order.
#pragma once

#include <QAbstractTableModel>

#include "core/layout/wall_layout.h"
#include "core/units/length_text.h"

namespace ribwright {

class SheetTable : public QAbstractTableModel {
  Q_OBJECT

 public:
  explicit SheetTable(QObject* parent = nullptr);

  // `codes`: order codes, parallel to the layout's pieces, or empty.
  void setWall(const WallLayout& layout, const std::vector<std::string>& codes, const LengthStyle& style);
  void clear();

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  struct Row {
    QString mark, kind, width, blank, order;
  };
  std::vector<Row> rows_;
};

}  // namespace ribwright
