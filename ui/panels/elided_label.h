// One line of words that is cut with an ellipsis where there is no room for it; the whole of it is in its tool tip.
#pragma once

#include <QFrame>
#include <QString>

namespace ribwright {

class ElidedLabel : public QFrame {
  Q_OBJECT

 public:
  explicit ElidedLabel(QWidget* parent = nullptr);

  const QString& text() const { return text_; }
  void setText(const QString& text);

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 protected:
  void changeEvent(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void tell();

  QString text_;
};

}  // namespace ribwright
