// A line that people type into. What was typed stays until it is entered, by Enter or by leaving, or taken back by Esc.
#pragma once

#include <QLineEdit>

namespace ribwright {

class TypedLine : public QLineEdit {
  Q_OBJECT

 public:
  explicit TypedLine(QWidget* parent = nullptr);

  // What stands there, shown unless something else is being typed.
  void setStanding(const QString& text);
  // Enters what was typed, as leaving the line does.
  void finishTyping();
  // What was entered stands now; or it was refused, and stays as it was typed.
  void accept();

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 signals:
  void entered(const QString& text);
  void takenBack();

 protected:
  bool event(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  bool takesBack(const QKeyEvent& key) const;
  bool leavesToWindow(const QKeyEvent& key) const;

  QString standing_;
};

}  // namespace ribwright
