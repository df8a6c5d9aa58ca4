// Opens the window and stays in it until it is closed.
#pragma once

#include <optional>
#include <string>

namespace ribwright {

// `jobPath`: a job file to open at once; one that cannot be read is told in the window. Gives the program's exit code.
int runWindow(int argc, char** argv, const std::optional<std::string>& jobPath);

}  // namespace ribwright
