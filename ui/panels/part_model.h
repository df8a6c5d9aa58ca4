// Parts as rows of a table. The order in which they are seen is the table's own and changes nothing of the job.
#pragma once

#include <QAbstractTableModel>
#include <QStringList>
#include <optional>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/units/length_text.h"

namespace ribwright {

struct PartRows {
  struct Column {
    QString title;
    bool figure = false;  // set to the right; a length, or a number
  };
  struct Row {
    std::optional<Part> part;  // absent: it points at nothing that can be chosen
    QStringList cells;         // parallel to the columns
  };
  std::vector<Column> columns;
  std::vector<Row> rows;
  LengthStyle style{};
};

class PartModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  explicit PartModel(QObject* parent = nullptr) : QAbstractTableModel(parent) {}

  // The order stays as it was asked for; where the parts are the same as before no row changes its place.
  void setRows(PartRows rows);
  // Absent: the row points at nothing, or is none of theirs.
  std::optional<Part> partAt(int row) const;
  // -1: it is not among them.
  int rowOf(const std::optional<Part>& part) const;
  // Index into the rows as they were set; as many as there are: past the last.
  std::size_t statedAt(int row) const;
  int shownAt(std::size_t stated) const;

  // What is copied of a cell.
  virtual QString plainText(int row, int column) const;

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  // A column of -1: as they were set.
  void sort(int column, Qt::SortOrder order = Qt::AscendingOrder) override;

 protected:
  const PartRows& shown() const { return shown_; }

 private:
  std::vector<std::size_t> sorted() const;

  PartRows shown_;
  std::vector<std::size_t> order_;  // from a row that is seen to one that was set
  int column_ = -1;
  Qt::SortOrder direction_ = Qt::AscendingOrder;
};

}  // namespace ribwright
