#include "app/window.h"

#include <cstdlib>
#include <string_view>

#include "app/commands.h"
#include "ui/session/run_window.h"

namespace ribwright {
namespace {

bool isSet(const char* name) {
  const char* value = std::getenv(name);
  return value != nullptr && !std::string_view(value).empty();
}

}  // namespace

int openWindow(const char* program, const std::string& job, const std::string& language) {
  // Qt would end the program with a core dump.
  if (!isSet("DISPLAY") && !isSet("WAYLAND_DISPLAY") && !isSet("QT_QPA_PLATFORM"))
    return refuse({{"window", "there is no display to open it on; packet, order, check and cut need none"}});
  std::string name = program;
  char* words[] = {name.data(), nullptr};
  return runWindow(1, words, job, language);
}

}  // namespace ribwright
