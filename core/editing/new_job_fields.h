// The typed fields of a new job, by the keys of its file and of its faults.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "core/editing/new_job.h"

namespace ribwright {

struct NewJobText {
  enum class Holds { Name, Length, Lengths, Slope };
  std::string_view key, says;
  std::string NewJob::*text;
  Holds holds;
};

// In the order in which plans are read.
std::span<const NewJobText> newJobTexts();

// The same statement in other units: lengths that can be read are written anew, what cannot stays as it was typed.
NewJob inUnits(const NewJob& stated, UnitSystem units);

}  // namespace ribwright
