// Strings of bays and girt spacings: the list half of length_text.h.
#include "core/units/length_spelling.h"
#include "core/units/length_text.h"
#include "core/units/typed_text.h"

namespace ribwright {

namespace {

constexpr std::size_t kMostLengths = 10'000;
constexpr std::size_t kLongestList = 1 << 20;

// What stands between the separators, blank or not; a reason when a separator could be something else.
struct Items {
  std::vector<std::string_view> texts;
  std::string reason;
};

bool isSeparator(char c, char decimalSign) {
  return c == ';' || c == '\n' || c == '\t' || (c == ',' && decimalSign != ',');
}

// "1,000" is one number to some and two to others.
bool looksGrouped(std::string_view text, std::size_t comma) {
  const auto digitAt = [&](std::size_t i) { return i < text.size() && isDigit(text[i]); };
  if (comma == 0 || !digitAt(comma - 1)) return false;
  std::size_t before = 0;
  while (before < comma && digitAt(comma - 1 - before)) ++before;
  return before <= 3 && digitAt(comma + 1) && digitAt(comma + 2) && digitAt(comma + 3) && !digitAt(comma + 4);
}

// A new line behind another separator belongs to it: "20',\n25'" is two lengths.
Items split(std::string_view text, const LengthStyle& style) {
  Items items;
  std::size_t start = 0;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (!isSeparator(text[i], style.decimalSign)) continue;
    const std::string_view item = trimmed(text.substr(start, i - start));
    const bool wrapped = text[i] == '\n' && item.empty() && start > 0 && text[start - 1] != '\n';
    if (text[i] == ',' && looksGrouped(text, i))
      items.reason =
          "a comma before three digits could group thousands; write a space behind each comma that separates";
    if (!wrapped) items.texts.push_back(item);
    start = i + 1;
  }
  items.texts.push_back(trimmed(text.substr(start)));
  return items;
}

// The count before '@', or 1 when there is none; nothing when it is no count.
std::optional<std::size_t> takeCount(std::string_view& item) {
  const std::size_t at = item.find('@');
  if (at == std::string_view::npos) return 1;
  const std::string_view digits = trimmed(item.substr(0, at));
  std::size_t count = 0;
  for (const char c : digits) {
    if (!isDigit(c) || count > kMostLengths) return std::nullopt;
    count = count * 10 + static_cast<std::size_t>(c - '0');
  }
  item = trimmed(item.substr(at + 1));
  if (count == 0 || count > kMostLengths) return std::nullopt;
  return count;
}

}  // namespace

Outcome<std::vector<Length>> parseLengthString(std::string_view text, const LengthStyle& style) {
  std::vector<Length> lengths;
  const std::string_view typed = trimmed(text);
  if (typed.empty()) return lengths;
  if (typed.size() > kLongestList) return noLength(typed, style, "it is longer than a mebibyte; write it shorter");
  const Items items = split(typed, style);
  if (!items.reason.empty()) return noLength(typed, style, items.reason);
  std::vector<Fault> faults;
  for (std::size_t i = 0; i < items.texts.size(); ++i) {
    const auto fault = [&](const std::string& message) {
      faults.push_back(Fault{"", "item " + std::to_string(i + 1) + ": " + message});
    };
    std::string_view item = items.texts[i];
    const auto count = takeCount(item);
    if (!count) {
      fault(
          noLength(items.texts[i], style, "the count before @ is a whole number from 1 to 10000, as in 4@25'").message);
      continue;
    }
    const auto length = parseLength(item, style);
    if (!length)
      fault(length.faults().front().message);
    else if (lengths.size() + *count > kMostLengths)
      return noLength(typed, style, "it holds more than 10000 lengths; write fewer");
    else
      lengths.insert(lengths.end(), *count, length.value());
  }
  if (!faults.empty()) return faults;
  return lengths;
}

std::string lengthStringText(const std::vector<Length>& lengths, const LengthStyle& style) {
  std::string text;
  for (std::size_t i = 0; i < lengths.size();) {
    std::size_t end = i + 1;
    while (end < lengths.size() && lengths[end] == lengths[i]) ++end;
    if (!text.empty()) text += style.decimalSign == ',' ? "; " : ", ";
    if (end - i > 1) text += std::to_string(end - i) + '@';
    for (const char c : exactText(lengths[i], style.units)) text += c == '.' ? style.decimalSign : c;
    i = end;
  }
  return text;
}

}  // namespace ribwright
