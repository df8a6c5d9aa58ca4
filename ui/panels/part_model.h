// Parts of the chosen wall as rows of a table.
#pragma once

#include <QAbstractTableModel>
#include <QStringList>
#include <optional>
#include <vector>

#include "core/drawing/drawing.h"

namespace ribwright {

struct PartRows {
  struct Column {
    QString title;
    bool figure = false;  // set to the right
  };
  struct Row {
    Part part;
    QStringList cells;  // parallel to the columns
  };
  std::vector<Column> columns;
  std::vector<Row> rows;
};

class PartModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  explicit PartModel(QObject* parent = nullptr) : QAbstractTableModel(parent) {}

  void setRows(PartRows rows);
  const Part& partAt(int row) const { return shown_.rows[static_cast<std::size_t>(row)].part; }
  // -1: it is not among them.
  int rowOf(const std::optional<Part>& part) const;

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  PartRows shown_;
};

}  // namespace ribwright
