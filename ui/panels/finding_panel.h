// What would go wrong, wants a look or is good to know: a list, and what the chosen line says in full. A finding that
// is chosen chooses its wall and the part it points at; the findings of the chosen part stand in bold.
#pragma once

#include <QWidget>

#include "ui/session/session.h"

class QPlainTextEdit;
class QPushButton;
class QTreeWidget;

namespace ribwright {

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
  void showJob();
  void showPart();
  void chooseCurrent();
  void sayCurrent();
  const Finding* current() const;
  void offerRemedy();
  void carryOutRemedy();
  void fit();

  Session& session_;
  QTreeWidget* list_;
  QPlainTextEdit* words_;
  QPushButton* remedy_;
  bool following_ = false;  // the list follows the session, not the other way round
};

}  // namespace ribwright
