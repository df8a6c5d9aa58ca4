// The limits of a job file's tables, held and put into words; the reader and the schema say the same.
#pragma once

#include <string>
#include <string_view>

#include "core/job/job_file_form.h"

namespace ribwright {

bool holds(const LengthRange& range, Length length);
// "more than 0, at most 10 km"
std::string rangeText(const LengthRange& range, UnitSystem units);
std::string rangeText(const WholeRange& range);
std::string rangeText(const AngleRange& range);
// "walk door", "window" ... each in quotes, with commas.
std::string choicesText(ChoiceWords words);

// What is wrong with a text, and what would be right; empty when nothing is.
std::string troubleWith(std::string_view text, const TextRule& rule);
// The same rule as a regular expression (ECMA-262); the count of characters is apart.
std::string_view regularExpression(TextRule::Holds holds);

}  // namespace ribwright
