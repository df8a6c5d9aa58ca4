// A list of objects of the job: a small table of them, buttons to add, remove and move, and below it all fields of the
// one that is chosen.
#pragma once

#include <QWidget>

#include "core/editing/field.h"
#include "core/units/outcome.h"

class QLabel;
class QPushButton;
class QTableWidget;

namespace ribwright {

class FieldForm;
class Session;

class FieldList : public QWidget {
  Q_OBJECT

 public:
  FieldList(Session& session, const Field& list, QWidget* parent);

  void refresh();
  void finishTyping();

 protected:
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void makeButtons();
  void fillTable();
  void fit();
  void fitColumns();
  int row() const;
  void choose(int row);
  void showChosen();
  void tell(const std::vector<Fault>& faults, int row);

  Session& session_;
  std::string path_;
  Field list_;  // with its items
  QTableWidget* table_;
  QPushButton *add_, *remove_, *up_, *down_;
  QLabel* fault_;
  FieldForm* form_;
};

}  // namespace ribwright
