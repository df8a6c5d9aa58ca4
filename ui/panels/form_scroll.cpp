#include "ui/panels/form_scroll.h"

#include <QEvent>
#include <QScrollBar>
#include <QVBoxLayout>
#include <algorithm>

namespace ribwright {

namespace {

constexpr int leastFormLetters = 30, mostFormLetters = 50;

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

void FormScroll::fit() {
  const int letter = fontMetrics().averageCharWidth();
  const int needed = widget()->minimumSizeHint().width() + verticalScrollBar()->sizeHint().width();
  setMinimumWidth(std::clamp(needed, leastFormLetters * letter, mostFormLetters * letter));
}

bool FormScroll::eventFilter(QObject* watched, QEvent* event) {
  const bool handled = QScrollArea::eventFilter(watched, event);
  if (watched == widget() && event->type() == QEvent::LayoutRequest) fit();
  return handled;
}

void FormScroll::changeEvent(QEvent* event) {
  QScrollArea::changeEvent(event);
  if (event->type() == QEvent::FontChange) fit();
}

}  // namespace ribwright
