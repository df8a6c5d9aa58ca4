// A choice that the wheel changes only while it has the keyboard, and that gets as narrow as its panel.
#pragma once

#include <QComboBox>

namespace ribwright {

class CalmCombo : public QComboBox {
  Q_OBJECT

 public:
  explicit CalmCombo(QWidget* parent = nullptr);

 protected:
  void wheelEvent(QWheelEvent* event) override;
};

}  // namespace ribwright
