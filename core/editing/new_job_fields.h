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

// The same where a person chooses other units in the midst of stating: what is as it is shipped in the old units
// becomes what is shipped in the new ones, and lists get the separator that goes with the decimal sign.
NewJob inOtherUnits(const NewJob& stated, UnitSystem units, bool decimalComma);

// As many equal bays as keep each within 25 ft or 7.5 m (common practice), on marks of the tape; the last takes the
// rest. What is no length gives nothing.
std::string equalBaysText(std::string_view width, const LengthStyle& style);

// What is ordinarily typed for this form of base.
std::string usualBaseHeight(Base::Form form, UnitSystem units);

}  // namespace ribwright
