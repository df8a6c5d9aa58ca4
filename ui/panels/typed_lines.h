// Several lines that people type into: entered by leaving or by Ctrl+Enter, taken back by Esc.
#pragma once

#include <QPlainTextEdit>

namespace ribwright {

class TypedLines : public QPlainTextEdit {
  Q_OBJECT

 public:
  explicit TypedLines(QWidget* parent = nullptr);

  void setStanding(const QString& text);
  void finishTyping();
  void accept();
  bool isTyped() const { return document()->isModified(); }

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return sizeHint(); }

 signals:
  void entered(const QString& text);
  void takenBack();

 protected:
  bool event(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  QString standing_;
};

}  // namespace ribwright
