// A button that does one thing about a finding, its words in as many lines as they take.
#pragma once

#include <QPushButton>

namespace ribwright {

class RemedyButton : public QPushButton {
  Q_OBJECT

 public:
  RemedyButton(const QString& words, QWidget* parent = nullptr);

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;

 signals:
  // The pointer or the keyboard came to it, or left it.
  void pointedAt(bool here);

 protected:
  void enterEvent(QEnterEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  int margin() const;

  QString words_;
};

}  // namespace ribwright
