// Opens the window or runs a command, and nothing else.
#include <cstdio>
#include <exception>
#include <string>
#include <vector>

#include "app/command_line.h"
#include "app/commands.h"
#include "app/window.h"

using namespace ribwright;

namespace {

int say(const std::string& text) {
  const bool whole = std::fwrite(text.data(), 1, text.size(), stdout) == text.size() && std::fflush(stdout) == 0;
  return whole ? exitDone : exitRefused;
}

int carryOut(const Request& request, const char* program) {
  switch (request.command) {
    case Request::Command::Window:
      return openWindow(program, request.job, request.language);
    case Request::Command::Packet:
      return writePacket(request);
    case Request::Command::Order:
      return printOrder(request);
    case Request::Command::Check:
      return printFindings(request);
    case Request::Command::Cut:
      return printCuttingPlan(request);
    case Request::Command::Help:
      return say(helpText());
    case Request::Command::Version:
      return say("ribwright " RIBWRIGHT_VERSION "\n");
  }
  return exitRefused;
}

}  // namespace

int main(int argc, char** argv) {
  try {
    const auto request = readCommandLine({argv + 1, argv + argc});
    if (!request) return refuse(request.faults());
    return carryOut(request.value(), argv[0]);
  } catch (const std::exception& error) {
    return refuse({{"ribwright", std::string("could not go on: ") + error.what()}});
  }
}
