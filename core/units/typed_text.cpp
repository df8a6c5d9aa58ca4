#include "core/units/typed_text.h"

namespace ribwright {

namespace {

bool isBlank(char c) { return c == ' ' || c == '\t' || c == '\r' || c == '\n'; }

// At most this many characters of what was typed are said back.
constexpr std::size_t kQuoted = 60;

// A well-formed UTF-8 character at the front of `text`: its bytes, or 0.
std::size_t characterBytes(std::string_view text) {
  const auto byte = [&](std::size_t i) { return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U; };
  const unsigned first = byte(0);
  const std::size_t bytes = first < 0x80   ? 1
                            : first < 0xC2 ? 0
                            : first < 0xE0 ? 2
                            : first < 0xF0 ? 3
                            : first < 0xF5 ? 4
                                           : 0;
  for (std::size_t i = 1; i < bytes; ++i)
    if ((byte(i) & 0xC0U) != 0x80U) return 0;
  const bool tooShort = (first == 0xE0 && byte(1) < 0xA0) || (first == 0xF0 && byte(1) < 0x90);
  const bool surrogate = first == 0xED && byte(1) >= 0xA0;
  const bool beyond = first == 0xF4 && byte(1) >= 0x90;
  return tooShort || surrogate || beyond ? 0 : bytes;
}

}  // namespace

bool isDigit(char c) { return c >= '0' && c <= '9'; }
bool isLetter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

bool isBlank(std::string_view text) { return trimmed(text).empty(); }

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && isBlank(text.front())) text.remove_prefix(1);
  while (!text.empty() && isBlank(text.back())) text.remove_suffix(1);
  return text;
}

std::string inQuotes(std::string_view text) {
  std::string shown = "\"";
  for (std::size_t count = 0; !text.empty(); ++count) {
    if (count == kQuoted) {
      shown += "...";
      break;
    }
    const std::size_t bytes = characterBytes(text);
    const bool printable = bytes > 0 && static_cast<unsigned char>(text[0]) >= ' ' && text[0] != '\x7f';
    if (printable)
      shown += text.substr(0, bytes);
    else
      shown += bytes == 0 ? '?' : ' ';
    text.remove_prefix(bytes == 0 ? 1 : bytes);
  }
  return shown + '"';
}

}  // namespace ribwright
