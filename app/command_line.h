// What was asked for on the command line.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/drawing/paper.h"
#include "core/units/length_text.h"
#include "core/units/outcome.h"

namespace ribwright {

struct Request {
  enum class Command { Window, Packet, Order, Check, Cut, Help, Version };
  Command command = Command::Window;
  std::string job;                  // path of the job file, or of the list with Cut; with Window it may be empty
  std::string directory;            // with Packet
  std::optional<UnitSystem> units;  // other than the job's own; not with Window
  std::optional<PaperSize> paper;   // with Packet; absent: the customary one
  std::string fingerprint;          // of a page, with Check; may be empty
  std::string language;             // of pages, findings and proofs, with Packet, Check and Cut; empty: English

  struct Cut {                        // with Cut
    std::vector<std::string> stocks;  // LENGTH[:COST]
    std::string kerf, endTrim;        // lengths; may be empty
    std::optional<std::int64_t> effort;
    bool proof = false;
  };
  Cut cut;
};

// `words` without the program's own name. Faults name the word and what would be right.
Outcome<Request> readCommandLine(const std::vector<std::string>& words);

std::string helpText();

}  // namespace ribwright
