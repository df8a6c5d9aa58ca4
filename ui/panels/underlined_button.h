// A button that is underlined while it is down: styles shade it, which in dark windows is hardly seen.
#pragma once

#include <QPainter>
#include <QPalette>
#include <algorithm>

namespace ribwright {

template <class Button>
class Underlined : public Button {
 public:
  using Button::Button;

 protected:
  void paintEvent(QPaintEvent* event) override {
    Button::paintEvent(event);
    if (!this->isChecked()) return;
    const int thick = std::max(3, this->fontMetrics().height() / 6);
    QPainter painter(this);
    painter.fillRect(QRect(3, this->height() - thick - 1, this->width() - 6, thick),
                     this->palette().color(QPalette::Highlight));
  }
};

}  // namespace ribwright
