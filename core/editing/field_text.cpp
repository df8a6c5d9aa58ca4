#include "core/editing/field_text.h"

#include <algorithm>
#include <charconv>

#include "core/job/job_file_joined.h"
#include "core/job/job_file_text.h"
#include "core/units/typed_text.h"

namespace ribwright {
namespace {

// The text of a file has the point; a person's has the job's own sign.
std::string withSign(std::string text, char from, char to) {
  std::replace(text.begin(), text.end(), from, to);
  return text;
}

// A point where the sign is a comma stays, and is refused where it means nothing.
std::string toPoint(std::string_view text, const LengthStyle& style) {
  return withSign(std::string(trimmed(text)), style.decimalSign, '.');
}

// The bytes that follow the first of a character; -1: it begins none.
int followers(unsigned char first) {
  if (first < 0x80) return 0;
  if (first >= 0xC2 && first <= 0xDF) return 1;
  if (first >= 0xE0 && first <= 0xEF) return 2;
  return first >= 0xF0 && first <= 0xF4 ? 3 : -1;
}

// Not written longer than it needs to be, no half of a pair, nothing beyond the last character.
bool isSecondByte(unsigned char first, unsigned char second) {
  if (first == 0xE0) return second >= 0xA0;
  if (first == 0xED) return second <= 0x9F;
  if (first == 0xF0) return second >= 0x90;
  return first != 0xF4 || second <= 0x8F;
}

}  // namespace

std::string typedLengths(const std::vector<Length>& lengths, const LengthStyle& style) {
  return lengthStringText(lengths, style);
}

std::string typedAngle(Angle angle, const LengthStyle& style) {
  return withSign(degreesText(angle), '.', style.decimalSign);
}

std::string typedSlope(const Slope& slope, const LengthStyle& style) {
  return withSign(slopeText(slope, style.units), '.', style.decimalSign);
}

std::string typedWholes(const std::vector<int>& wholes) {
  std::string text;
  for (const int whole : wholes) text += joined(text.empty() ? "" : ", ", whole);
  return text;
}

std::string typedLines(const std::vector<std::string>& lines) {
  std::string text;
  for (const std::string& line : lines) text += joined(text.empty() ? "" : "\n", line);
  return text;
}

Outcome<Angle> readAngle(std::string_view text, const LengthStyle& style) {
  std::string plain = toPoint(text, style);
  for (const std::string_view unit : {"deg", "\u00b0"}) {
    if (plain.ends_with(unit)) plain = trimmed(std::string_view(plain).substr(0, plain.size() - unit.size()));
  }
  if (plain.starts_with('+')) plain.erase(0, 1);
  return degreesFromText(plain);
}

Outcome<Slope> readSlope(std::string_view text, const LengthStyle& style) {
  return slopeFromText(toPoint(text, style), style.units);
}

Outcome<int> readWhole(std::string_view text) {
  const std::string_view digits = trimmed(text);
  int whole = 0;
  const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), whole);
  if (error == std::errc::result_out_of_range) return Fault{"", joined(inQuotes(digits), " is out of range")};
  if (error != std::errc() || end != digits.data() + digits.size())
    return Fault{"", joined(inQuotes(digits), " is no whole number; write it in figures, as 12")};
  return whole;
}

Outcome<std::vector<int>> readWholes(std::string_view text) {
  std::vector<int> wholes;
  for (std::size_t at = text.find_first_not_of(" \t\n\r,;"); at != std::string_view::npos;) {
    const std::size_t end = std::min(text.find_first_of(" \t\n\r,;", at), text.size());
    const auto whole = readWhole(text.substr(at, end - at));
    if (!whole) return whole.faults();
    wholes.push_back(whole.value());
    at = text.find_first_not_of(" \t\n\r,;", end);
  }
  return wholes;
}

Outcome<bool> readFlag(std::string_view text) {
  const std::string_view word = trimmed(text);
  if (word == "true") return true;
  if (word == "false") return false;
  return Fault{"", joined(inQuotes(word), " is neither true nor false")};
}

std::vector<std::string> readLines(std::string_view text) {
  std::vector<std::string> lines;
  for (std::size_t at = 0; at <= text.size();) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    const std::string_view line = trimmed(text.substr(at, end - at));
    if (!line.empty()) lines.emplace_back(line);
    at = end + 1;
  }
  return lines;
}

bool isSoundText(std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const int more = followers(byte(at));
    if (more < 0 || at + static_cast<std::size_t>(more) >= text.size()) return false;
    for (int i = 1; i <= more; ++i) {
      if ((byte(at + static_cast<std::size_t>(i)) & 0xC0U) != 0x80U) return false;
    }
    if (more > 0 && !isSecondByte(byte(at), byte(at + 1))) return false;
    at += static_cast<std::size_t>(more) + 1;
  }
  return true;
}

}  // namespace ribwright
