// The window, where there is a display to open it on.
#pragma once

#include <string>

namespace ribwright {

// `job` may be empty; `language` too: then the window speaks the system's. Gives the program's exit code once the
// window is closed; refuses when there is no display.
int openWindow(const char* program, const std::string& job, const std::string& language);

}  // namespace ribwright
