// A new job's texts as lengths, and the faults of those that are none or cannot be meant.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/editing/new_job.h"

namespace ribwright {

struct NewJobRead {
  Length length, width, eave;
  std::optional<std::variant<Slope, Length>> rise;  // absent: a level roof
  std::vector<Length> sideBays, endBays;
  std::vector<Length> sideGirts, endGirts;
  bool endGirtsStated = false;
  Length baseHeight, seenAt;
  LengthStyle style;
};

// What stands in the way goes to `faults`, its field still at nothing.
NewJobRead readTexts(const NewJob& stated, std::vector<Fault>& faults);

// Of one field; `text` is what was typed there.
Fault faultAt(std::string_view key, std::string message);

}  // namespace ribwright
