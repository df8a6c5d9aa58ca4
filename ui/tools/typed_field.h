// The field beside the pointer for what is typed while something is drawn or dragged, with what is wrong with it below.
#pragma once

#include <QWidget>

class QLabel;
class QLineEdit;

namespace ribwright {

class TypedField : public QWidget {
  Q_OBJECT

 public:
  explicit TypedField(QWidget* board);

  // Opens at a pixel of the board with the first letters typed.
  void open(const QPoint& pixel, const QString& first, const QString& hint);
  void shut();
  void tell(const QString& fault);
  QString text() const;

 signals:
  void typed(const QString& text);  // with each letter
  void entered();
  void left();  // by Esc

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  QLineEdit* text_;
  QLabel* fault_;
};

}  // namespace ribwright
