// The menu of the jobs that were opened last: numbered keys, and those that are gone greyed.
#pragma once

#include <QString>
#include <functional>

class QMenu;

namespace ribwright {

// Anew each time it is about to be shown.
void fillRecentMenu(QMenu& menu, const std::function<void(const QString&)>& open);

}  // namespace ribwright
