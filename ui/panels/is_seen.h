// Whether a widget is before a person's eyes. A dock that stands behind another one is visible to Qt, yet nobody sees
// it.
#pragma once

#include <QWidget>

namespace ribwright {

inline bool isSeen(const QWidget* widget) { return widget->isVisible() && !widget->visibleRegion().isEmpty(); }

}  // namespace ribwright
