#pragma once

#include <QLineF>

namespace ribwright {

inline double apart(const QPointF& a, const QPointF& b) { return QLineF(a, b).length(); }

}  // namespace ribwright
