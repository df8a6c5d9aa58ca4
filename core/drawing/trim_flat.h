// A trim's section, and the flat piece with its bends and the lips at its ends: where to slit and where to fold. To no
// scale; what counts is written beside it.
#pragma once

#include "core/drawing/page_flow.h"
#include "core/job/trim.h"
#include "core/words/words.h"

namespace ribwright {

struct TrimWords {
  const Words* words = nullptr;
  LengthStyle style;

  std::string say(std::string_view id, const WordValues& values = {}) const { return words->say(id, values, style); }
};

// Heights across the flat piece at which it is bent, as parts of its girth (0 .. 1, rising); those of the section's
// inner corners. None where no section is stated.
std::vector<double> bendsOf(const Trim& trim);

// The section at the left, a flat piece of `rule` beside it.
PageBlock flatPicture(const Trim& trim, const TrimRule& rule, const TrimWords& words);

}  // namespace ribwright
