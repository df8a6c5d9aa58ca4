// What is stated of the chosen parts, to be typed over; below it what follows from it. Without a part, of the chosen
// wall.
#pragma once

#include <QWidget>

#include "ui/session/session.h"

class QLabel;
class QTableWidget;

namespace ribwright {

class FieldForm;

class ParticularsPanel : public QWidget {
  Q_OBJECT

 public:
  explicit ParticularsPanel(Session& session, QWidget* parent = nullptr);

  // Enters what is being typed.
  void finishTyping();

 protected:
  void changeEvent(QEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void makeRows();
  void fit();
  void showChosen();
  void showStated();

  Session& session_;
  QLabel* title_;
  FieldForm* form_;
  QTableWidget* rows_;
};

}  // namespace ribwright
