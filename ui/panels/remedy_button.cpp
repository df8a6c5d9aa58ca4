#include "ui/panels/remedy_button.h"

#include <QEvent>
#include <QStyleOptionButton>
#include <QStylePainter>

namespace ribwright {

namespace {

constexpr int buttonLetters = 14;  // in a line
constexpr int lines = Qt::TextWordWrap | Qt::AlignVCenter | Qt::AlignLeft;

}  // namespace

RemedyButton::RemedyButton(const QString& words, QWidget* parent) : QPushButton(parent), words_(words) {
  setAccessibleName(words);
  setToolTip(words);
  setAutoDefault(false);
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

int RemedyButton::margin() const { return fontMetrics().height() / 3; }

int RemedyButton::heightForWidth(int width) const {
  const QRect room(0, 0, std::max(1, width - 4 * margin()), 1 << 16);
  return fontMetrics().boundingRect(room, lines, words_).height() + 2 * margin();
}

QSize RemedyButton::minimumSizeHint() const {
  const int width = buttonLetters * fontMetrics().averageCharWidth() + 4 * margin();
  return {width, fontMetrics().height() + 2 * margin()};
}

QSize RemedyButton::sizeHint() const {
  const int width = fontMetrics().horizontalAdvance(words_) + 4 * margin() + 2;
  return {width, fontMetrics().height() + 2 * margin()};
}

void RemedyButton::paintEvent(QPaintEvent*) {
  QStylePainter painter(this);
  QStyleOptionButton option;
  initStyleOption(&option);
  option.text.clear();
  painter.drawControl(QStyle::CE_PushButton, option);
  painter.setPen(palette().color(isEnabled() ? QPalette::Active : QPalette::Disabled, QPalette::ButtonText));
  painter.drawText(rect().adjusted(2 * margin(), 0, -2 * margin(), 0), lines, words_);
}

void RemedyButton::enterEvent(QEnterEvent* event) {
  QPushButton::enterEvent(event);
  emit pointedAt(true);
}

void RemedyButton::leaveEvent(QEvent* event) {
  QPushButton::leaveEvent(event);
  emit pointedAt(hasFocus());
}

void RemedyButton::focusInEvent(QFocusEvent* event) {
  QPushButton::focusInEvent(event);
  emit pointedAt(true);
}

void RemedyButton::focusOutEvent(QFocusEvent* event) {
  QPushButton::focusOutEvent(event);
  emit pointedAt(underMouse());
}

}  // namespace ribwright
