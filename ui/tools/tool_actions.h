// The board's tools as actions, for its head and the window's menu. One is always taken.
#pragma once

#include <QAction>
#include <vector>

namespace ribwright {

class BoardTools;

// In the order of toolWords(); they live as long as the tools.
std::vector<QAction*> toolActions(BoardTools* tools);

}  // namespace ribwright
