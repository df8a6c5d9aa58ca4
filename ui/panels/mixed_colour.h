// A quiet colour between ground and ink, so that it fits light and dark alike.
#pragma once

#include <QColor>
#include <QPalette>

namespace ribwright {

// `percent` of ink on the ground.
QColor mixed(const QPalette& palette, int percent);

}  // namespace ribwright
