// A button that does one thing about a finding: its words are cut where there is no room, the whole is in its tool tip.
#pragma once

#include <QPushButton>

namespace ribwright {

class RemedyButton : public QPushButton {
  Q_OBJECT

 public:
  RemedyButton(const QString& words, QWidget* parent = nullptr);

 signals:
  // The pointer or the keyboard came to it, or left it.
  void pointedAt(bool here);

 protected:
  void changeEvent(QEvent* event) override;
  void enterEvent(QEnterEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void cut();

  QString words_;
};

}  // namespace ribwright
