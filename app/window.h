// The window, where there is a display to open it on.
#pragma once

#include <string>

namespace ribwright {

// `job` may be empty. Returns when the window has been closed; refuses when there is no display.
int openWindow(const std::string& job);

}  // namespace ribwright
