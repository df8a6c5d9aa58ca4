// A table of texts whose rows point at something of its panel's: rows are chosen one at a time, and copied with their
// header into a spreadsheet.
#pragma once

#include <QTableWidget>
#include <vector>

namespace ribwright {

struct RowTexts {
  struct Column {
    QString title;
    bool figure = false;  // set to the right
  };
  std::vector<Column> columns;
  std::vector<QStringList> rows;  // each parallel to the columns
};

class RowTable : public QTableWidget {
  Q_OBJECT

 public:
  explicit RowTable(QWidget* parent = nullptr);

  // The row that was current stays so while there are as many.
  void setRows(const RowTexts& texts);

 signals:
  // By hand; not while rows are set.
  void rowChosen(int row);

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void copy() const;

  RowTexts texts_;
  bool setting_ = false;
};

}  // namespace ribwright
