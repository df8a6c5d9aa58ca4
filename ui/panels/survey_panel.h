// What was measured on the chosen wall: who reads the tape, what stands for the whole wall, a table of edges and
// stations, and in words the cell at hand or what could not be read.
#pragma once

#include <QWidget>

#include "core/editing/survey_edits.h"
#include "ui/session/session.h"

class QCheckBox;
class QGridLayout;
class QLabel;
class QLineEdit;

namespace ribwright {

class LengthField;
class SurveyTable;

class SurveyPanel : public QWidget {
  Q_OBJECT

 public:
  explicit SurveyPanel(Session& session, QWidget* parent = nullptr);

  int measured() const;
  // Enters what is being typed anywhere in it.
  void finishTyping();

 protected:
  void changeEvent(QEvent* event) override;

 private:
  QWidget* makeFields();
  void addField(QGridLayout* grid, int row, int column, const QString& label, QWidget* field);
  LengthField* lengthField(const char* name);
  void connectFields();
  void showWall();
  void showPlannedChalk();
  void takeReadBy();
  void enterDiagonal(Diagonal which, const std::optional<Length>& length);
  void tell(const QString& words, bool fault);
  void fit();

  Session& session_;
  QLineEdit *by_ = nullptr, *date_ = nullptr;
  QCheckBox* props_ = nullptr;
  LengthField *chalk_ = nullptr, *rising_ = nullptr, *falling_ = nullptr;
  SurveyTable* table_ = nullptr;
  QLabel* words_ = nullptr;
  std::string wall_;  // letter
};

}  // namespace ribwright
