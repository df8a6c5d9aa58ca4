// What was asked for on the command line.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/drawing/paper.h"
#include "core/units/length_text.h"
#include "core/units/outcome.h"

namespace ribwright {

struct Request {
  enum class Command { Window, Packet, Order, Check, Help, Version };
  Command command = Command::Window;
  std::string job;                  // path of the job file; with Window it may be empty
  std::string directory;            // with Packet
  std::optional<UnitSystem> units;  // other than the job's own; not with Window
  std::optional<PaperSize> paper;   // with Packet; absent: the customary one
  std::string fingerprint;          // of a page, with Check; may be empty
  std::string language;             // of pages and findings, with Packet and Check; empty: English
};

// `words` without the program's own name. Faults name the word and what would be right.
Outcome<Request> readCommandLine(const std::vector<std::string>& words);

std::string helpText();

}  // namespace ribwright
