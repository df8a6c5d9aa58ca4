#include "core/job/job_file_limits.h"

#include <algorithm>

#include "core/job/job_file_joined.h"
#include "core/job/job_file_text.h"
#include "core/job/job_tables.h"
#include "core/units/typed_text.h"

namespace ribwright {
namespace {

bool isControl(char c) { return static_cast<unsigned char>(c) < 0x20 || c == '\x7f'; }
bool isCapital(char c) { return c >= 'A' && c <= 'Z'; }

std::string troubleWithLine(std::string_view text, bool severalLines) {
  const bool control = std::any_of(text.begin(), text.end(),
                                   [&](char c) { return isControl(c) && !(severalLines && (c == '\n' || c == '\t')); });
  if (!control) return {};
  return severalLines ? "holds a control character; only letters, signs, tabs and new lines belong here"
                      : "holds a new line or a control character; write it on one line";
}

}  // namespace

bool holds(const LengthRange& range, Length length) {
  if (length < range.lowest || length > range.highest) return false;
  return !range.lowestExcluded || length != range.lowest;
}

std::string rangeText(const LengthRange& range, UnitSystem units) {
  const auto shown = [&](Length length) { return length == farthest ? "10 km" : exactText(length, units); };
  const std::string most = shown(range.highest);
  if (range.lowest == -range.highest) return "within " + most + " either way";
  const std::string least = range.lowest == Length() ? "0" : shown(range.lowest);
  if (range.lowestExcluded) return "more than " + least + ", at most " + most;
  return "from " + least + " to " + most;
}

std::string rangeText(const WholeRange& range) {
  if (range.lowest == range.highest) return std::to_string(range.lowest);
  return joined("a whole number from ", range.lowest, " to ", range.highest);
}

std::string rangeText(const AngleRange& range) {
  return "degrees from " + degreesText(range.lowest) + " to " + degreesText(range.highest);
}

std::string choicesText(ChoiceWords words) {
  std::string text;
  for (const std::string_view word : words) text += joined(text.empty() ? "" : ", ", inQuotes(word));
  return text;
}

std::string troubleWith(std::string_view text, const TextRule& rule) {
  const std::size_t count = characterCount(text);
  if (count < rule.fewest) return "is empty; it needs a name";
  if (count > rule.most) {
    return "has " + std::to_string(count) + " characters; at most " + std::to_string(rule.most) + " belong here";
  }
  switch (rule.holds) {
    case TextRule::Holds::Line:
      return troubleWithLine(text, false);
    case TextRule::Holds::Lines:
      return troubleWithLine(text, true);
    case TextRule::Holds::Id:
      if (text.front() == ' ' || text.back() == ' ')
        return inQuotes(text) + " begins or ends with a blank; leave it out";
      return troubleWithLine(text, false);
    case TextRule::Holds::Letters:
      if (std::all_of(text.begin(), text.end(), isCapital)) return {};
      return inQuotes(text) + " is no wall letter; write capital letters, as A";
  }
  return {};
}

std::string_view regularExpression(TextRule::Holds holds) {
  switch (holds) {
    case TextRule::Holds::Line:
      return "^[^\\u0000-\\u001f\\u007f]*$";
    case TextRule::Holds::Lines:
      return "^[^\\u0000-\\u0008\\u000b-\\u001f\\u007f]*$";
    case TextRule::Holds::Id:
      return "^[^\\u0000-\\u0020\\u007f]([^\\u0000-\\u001f\\u007f]*[^\\u0000-\\u0020\\u007f])?$";
    case TextRule::Holds::Letters:
      return "^[A-Z]+$";
  }
  return "";
}

}  // namespace ribwright
