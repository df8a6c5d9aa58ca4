// A table whose rows are given to it: nothing in them is chosen elsewhere. Sorted by any column, copied with its
// titles.
#pragma once

#include "ui/panels/part_table.h"

namespace ribwright {

class FilledTable : public PartTable {
  Q_OBJECT

 public:
  // `reads`: what a screen reader calls it.
  FilledTable(Session& session, const char* name, const QString& reads, QWidget* parent);

  void setRows(PartRows rows);
  void refill() override {}
  // Index of the current row as it was set; nothing where none is.
  std::optional<std::size_t> current() const;

 signals:
  void currentChosen();

 private:
  FilledTable(Session& session, PartModel* model, const char* name, const QString& reads, QWidget* parent);
  PartModel* rows_;
};

}  // namespace ribwright
