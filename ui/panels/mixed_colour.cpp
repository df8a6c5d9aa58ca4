#include "ui/panels/mixed_colour.h"

namespace ribwright {

QColor mixed(const QPalette& palette, int percent) {
  const QColor ground = palette.color(QPalette::Base), ink = palette.color(QPalette::Text);
  const auto between = [percent](int a, int b) { return a + (b - a) * percent / 100; };
  return {between(ground.red(), ink.red()), between(ground.green(), ink.green()), between(ground.blue(), ink.blue())};
}

}  // namespace ribwright
