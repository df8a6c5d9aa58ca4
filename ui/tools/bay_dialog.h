// Asks in which bays something is to be repeated.
#pragma once

#include <optional>

namespace ribwright {

struct BayRange {
  int first = 1, count = 1;  // bay 1: between columns 1 and 2
};

// Absent: it was called off.
std::optional<BayRange> askForBays(int bays);

}  // namespace ribwright
