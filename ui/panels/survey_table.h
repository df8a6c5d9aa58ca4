// The survey as a table to be typed into by someone who is read the tape: typing begins a reading, Enter goes on to the
// next station, to the right and then on the next edge below.
#pragma once

#include <QTableView>

#include "ui/panels/survey_model.h"

class QLineEdit;

namespace ribwright {

class SurveyTable : public QTableView {
  Q_OBJECT

 public:
  SurveyTable(Session& session, QWidget* parent = nullptr);

  SurveyModel* cells() const { return model_; }
  void refill();
  // Enters what stands in the open editor, as leaving it does.
  void finishTyping();

 signals:
  // What is to be read of the cell that is at hand, and whether it is a fault.
  void told(const QString& words, bool fault);

 protected:
  void changeEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void keyboardSearch(const QString&) override {}  // letters begin a reading; where there is none they do nothing
  void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

 private:
  void enterTyped(QLineEdit* editor, int step);
  void enterAgain(int step);
  void goOn(int step);
  void strikeOut();
  void copy() const;
  void paste();
  void tellCurrent();
  void tellRefused(int row, int column);
  void fit();

  Session& session_;
  SurveyModel* model_;
  bool following_ = false;  // the table follows the session, not the other way round
};

}  // namespace ribwright
