// What the chosen part says of itself; without one, the chosen wall.
#pragma once

#include <QWidget>

#include "ui/session/session.h"

class QLabel;
class QTableWidget;

namespace ribwright {

class ParticularsPanel : public QWidget {
  Q_OBJECT

 public:
  explicit ParticularsPanel(Session& session, QWidget* parent = nullptr);

 protected:
  void changeEvent(QEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void fit();
  void showChosen();

  Session& session_;
  QLabel* title_;
  QTableWidget* rows_;
};

}  // namespace ribwright
