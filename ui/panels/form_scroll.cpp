#include "ui/panels/form_scroll.h"

#include <QEvent>
#include <QVBoxLayout>

namespace ribwright {

namespace {

constexpr int leastLetters = 30;

}  // namespace

FormScroll::FormScroll(QWidget* form, QWidget* parent) : QScrollArea(parent) {
  auto* inner = new QWidget(this);
  auto* layout = new QVBoxLayout(inner);
  const int space = fontMetrics().height() / 4;
  layout->setContentsMargins(space, space, space, space);
  layout->addWidget(form);
  layout->addStretch(1);
  setWidget(inner);
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  fit();
}

void FormScroll::fit() { setMinimumWidth(leastLetters * fontMetrics().averageCharWidth()); }

void FormScroll::changeEvent(QEvent* event) {
  QScrollArea::changeEvent(event);
  if (event->type() == QEvent::FontChange) fit();
}

}  // namespace ribwright
