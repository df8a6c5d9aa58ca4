// Findings as lines that are sorted by their header and copied into a spreadsheet.
#pragma once

#include <QTreeWidget>
#include <vector>

#include "core/checks/finding.h"

namespace ribwright {

class SortHeader;

class FindingList : public QTreeWidget {
  Q_OBJECT

 public:
  struct Line {
    QStringList cells;
    int rank = 0;  // of its first cell, which is a grade
  };

  FindingList(const QStringList& titles, QWidget* parent = nullptr);

  void setLines(std::vector<Line> lines);
  // Index into the lines as they were set; -1: none.
  int at(const QTreeWidgetItem* item) const;
  QTreeWidgetItem* itemOf(int line) const;
  std::vector<int> chosenLines() const;
  void fit();
  void scrollTo(const QModelIndex& index, ScrollHint hint = EnsureVisible) override;

 signals:
  // The lines stand in another order: items are new.
  void filled();

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void fill();
  std::vector<int> order() const;

  SortHeader* header_;
  std::vector<Line> lines_;
};

}  // namespace ribwright
