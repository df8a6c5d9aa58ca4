// A form that is as wide as its room and scrolls up and down only; wheels over its fields scroll it.
#pragma once

#include <QScrollArea>

namespace ribwright {

class FormScroll : public QScrollArea {
  Q_OBJECT

 public:
  FormScroll(QWidget* form, QWidget* parent);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void fit();
};

}  // namespace ribwright
