// A shared blank as it lies to be cut: which part goes where, which end is up, where the tape reads each cut. To no
// scale: its length fills the room, its width stands as high as words need. The lower end lies at the left, face up, so
// that the lip edge is the upper one, as on drill templates. Unit: mm, y down.
#pragma once

#include <string>
#include <vector>

#include "core/drawing/page_flow.h"
#include "core/takeoff/shared_blanks.h"
#include "core/words/words.h"

namespace ribwright {

struct BlankWords {
  const Words* words = nullptr;
  LengthStyle style;
  Length kerf;
};

// The blank alone, without a heading, into any room as wide as 120 mm or wider.
PageBlock blankPicture(const NumberedBlank& blank, const BlankWords& words);

// "Blank 3: rake pair of A2 and A1, 26' 4-1/2" ...".
std::string blankHeading(const NumberedBlank& blank, const BlankWords& words);

// What to mark and cut, a line each: "A2: sloped, from ... to ...".
std::vector<std::string> cutLines(const NumberedBlank& blank, const BlankWords& words);

}  // namespace ribwright
