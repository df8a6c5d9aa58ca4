#include "ui/panels/remedy_button.h"

#include <QEvent>
#include <QStyle>

namespace ribwright {

RemedyButton::RemedyButton(const QString& words, QWidget* parent) : QPushButton(parent), words_(words) {
  setAccessibleName(words);
  setToolTip(words);
  setAutoDefault(false);
  setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  cut();
}

// Buttons take an ampersand for a key.
void RemedyButton::cut() {
  const int room = width() - 4 * style()->pixelMetric(QStyle::PM_ButtonMargin, nullptr, this);
  setText(fontMetrics().elidedText(words_, Qt::ElideRight, room).replace(QLatin1Char('&'), QStringLiteral("&&")));
}

void RemedyButton::changeEvent(QEvent* event) {
  QPushButton::changeEvent(event);
  if (event->type() == QEvent::FontChange) cut();
}

void RemedyButton::resizeEvent(QResizeEvent* event) {
  QPushButton::resizeEvent(event);
  cut();
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
