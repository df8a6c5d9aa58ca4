// What the parts of a wall are called in names of edits and at what is snapped to: phrases, said in any language.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/words/words.h"

namespace ribwright {

// "name.girt" with its id.
Phrase namedBy(const char* phrase, const std::string& id);
// "name.column" with its number.
Phrase numberedBy(const char* phrase, std::int64_t number);
// An opening or penetration is called by its id alone.
Phrase plainName(const std::string& id);

// "girt g2", "column 3", "W1".
Phrase nameOf(const Part& part);
// The same of one part; "3 parts" of several.
Phrase nameOf(const std::vector<Part>& parts);

// "Move W1 by 4"": `id` of an edit with what it is done to.
std::string editName(const char* id, const std::vector<Part>& parts, const Words& words, const LengthStyle& style,
                     WordValues more = {});

}  // namespace ribwright
