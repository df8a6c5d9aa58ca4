// What would go wrong, wants a look or is good to know: a list, and what the chosen line says in full. A finding that
// is chosen chooses its wall and the part it points at; the findings of the chosen part stand in bold. Under its words
// stand what can be done about it, and a line to put it aside.
#pragma once

#include <QWidget>

#include "ui/session/session.h"

class QLabel;
class QPlainTextEdit;
class QPushButton;
class QStackedWidget;

namespace ribwright {

class FindingList;
class RemedyBar;
class SilenceBar;
class SilencedList;

class FindingPanel : public QWidget {
  Q_OBJECT

 public:
  explicit FindingPanel(Session& session, QWidget* parent = nullptr);

 signals:
  // A finding was chosen here that points at this part.
  void pointedAt(const Part& part);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  QWidget* makeLists();
  QWidget* makeWords();
  void showJob();
  void showPart();
  void showSilenced(bool shown);
  void chooseCurrent();
  // Of the current line; null: none.
  const Finding* current() const;
  void sayCurrent();
  void tell(const QString& words);
  void fit();

  Session& session_;
  QPushButton* silencedButton_ = nullptr;
  QStackedWidget* lists_ = nullptr;
  FindingList* list_;
  SilencedList* silenced_;
  QPlainTextEdit* words_;
  RemedyBar* remedies_;
  SilenceBar* silence_;
  QLabel* told_;
  bool following_ = false;  // the list follows the session, not the other way round
};

}  // namespace ribwright
