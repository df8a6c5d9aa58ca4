// Opens the window and stays in it until it is closed.
#pragma once

#include <functional>
#include <optional>
#include <string>

namespace ribwright {

class MainWindow;

// `jobPath`: a job file to open at once; one that cannot be read is told in the window. `language`: "es", "en"; empty:
// the system's. `shown`: told once, when the window is on the screen. Gives the program's exit code.
int runWindow(int argc, char** argv, const std::optional<std::string>& jobPath, const std::string& language,
              const std::function<void(MainWindow&)>& shown = {});

}  // namespace ribwright
