#include "ui/panels/elided_label.h"

#include <QEvent>
#include <QPainter>

namespace ribwright {

namespace {

constexpr int labelLetters = 8;

}  // namespace

ElidedLabel::ElidedLabel(QWidget* parent) : QFrame(parent) { setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed); }

void ElidedLabel::setText(const QString& text) {
  if (text == text_) return;
  text_ = text;
  setAccessibleName(text_);
  tell();
  updateGeometry();
  update();
}

QSize ElidedLabel::sizeHint() const {
  return {fontMetrics().horizontalAdvance(text_) + 2 * frameWidth() + 2, minimumSizeHint().height()};
}

QSize ElidedLabel::minimumSizeHint() const {
  return {labelLetters * fontMetrics().averageCharWidth(), fontMetrics().height() + 2 * frameWidth() + 2};
}

void ElidedLabel::paintEvent(QPaintEvent* event) {
  QFrame::paintEvent(event);
  QPainter painter(this);
  const QRect room = contentsRect();
  painter.setPen(palette().color(isEnabled() ? QPalette::Active : QPalette::Disabled, foregroundRole()));
  painter.drawText(room, Qt::AlignVCenter | Qt::AlignLeft,
                   fontMetrics().elidedText(text_, Qt::ElideRight, room.width()));
}

void ElidedLabel::changeEvent(QEvent* event) {
  QFrame::changeEvent(event);
  if (event->type() != QEvent::FontChange) return;
  updateGeometry();
  tell();
}

void ElidedLabel::resizeEvent(QResizeEvent* event) {
  QFrame::resizeEvent(event);
  tell();
}

void ElidedLabel::tell() {
  const bool whole = fontMetrics().horizontalAdvance(text_) <= contentsRect().width();
  setToolTip(whole ? QString() : text_);
}

}  // namespace ribwright
