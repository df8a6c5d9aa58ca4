#include "ui/panels/calm_combo.h"

#include <QWheelEvent>

namespace ribwright {

namespace {

constexpr int comboLetters = 8;

}  // namespace

CalmCombo::CalmCombo(QWidget* parent) : QComboBox(parent) {
  setFocusPolicy(Qt::StrongFocus);
  setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  setMinimumContentsLength(comboLetters);
}

void CalmCombo::wheelEvent(QWheelEvent* event) {
  if (hasFocus()) return QComboBox::wheelEvent(event);
  event->ignore();
}

}  // namespace ribwright
