// A form that scrolls up and down: its room is never narrower than what is in it needs, up to some letters.
#pragma once

#include <QScrollArea>

namespace ribwright {

class FormScroll : public QScrollArea {
  Q_OBJECT

 public:
  FormScroll(QWidget* form, QWidget* parent);

 protected:
  void changeEvent(QEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void fit();
};

}  // namespace ribwright
