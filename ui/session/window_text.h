// Words of core as the window shows them.
#pragma once

#include <QString>
#include <string>

namespace ribwright {

inline QString text(const std::string& words) { return QString::fromStdString(words); }

}  // namespace ribwright
