// A pattern's numbers, to be held against the plan sheet line by line and confirmed by name and date.
#pragma once

#include <QDialog>

#include "ui/session/session.h"

class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableWidget;

namespace ribwright {

class ConfirmPatternDialog : public QDialog {
  Q_OBJECT

 public:
  // `pattern`: the id of the one that is shown first.
  ConfirmPatternDialog(Session& session, const std::string& pattern, QWidget* parent = nullptr);

 private:
  void makeTable();
  QWidget* makeFields();
  QWidget* makeButtons();
  void addField(QGridLayout* grid, const QString& label, QLineEdit*& field, const char* name);
  const ScrewPattern* pattern() const;
  void showPattern();
  void confirm();
  void withdraw();
  void tell(const std::vector<Fault>& faults);

  Session& session_;
  QComboBox* choice_;
  QLabel* standing_;
  QTableWidget* numbers_;
  QLineEdit *sheet_ = nullptr, *by_ = nullptr, *date_ = nullptr;
  QLabel* fault_;
  QPushButton *confirm_ = nullptr, *withdraw_ = nullptr;
};

}  // namespace ribwright
