#include "core/units/length_spelling.h"

#include <array>

namespace ribwright {

namespace {

struct Spelling {
  std::string_view written;
  std::string_view plain;
};

constexpr std::array kSpellings{
    Spelling{"′", "'"},      Spelling{"’", "'"},   Spelling{"‘", "'"},   Spelling{"″", "\""},
    Spelling{"”", "\""},     Spelling{"“", "\""},  Spelling{"−", "-"},  // minus sign
    Spelling{"–", "-"},                                                 // en dash
    Spelling{"\u2010", "-"},                                            // hyphen
    Spelling{"\u2011", "-"},                                            // hyphen that does not break
    Spelling{"×", "*"},      Spelling{"÷", "/"},   Spelling{"⁄", "/"},  // fraction slash
    Spelling{"\u00a0", " "},                                            // space that does not break
    Spelling{"\u202f", " "},                                            // the narrow one
    Spelling{"\u2009", " "},                                            // thin space
    Spelling{"½", "1/2"},    Spelling{"¼", "1/4"}, Spelling{"¾", "3/4"}, Spelling{"⅛", "1/8"},
    Spelling{"⅜", "3/8"},    Spelling{"⅝", "5/8"}, Spelling{"⅞", "7/8"},
};

const Spelling* spellingAt(std::string_view text) {
  for (const Spelling& spelling : kSpellings)
    if (text.substr(0, spelling.written.size()) == spelling.written) return &spelling;
  return nullptr;
}

bool isPlain(char c) { return (c >= ' ' && c <= '~') || c == '\t'; }

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

// One line of sound UTF-8, whatever came in: it will be printed, logged and put into files.
std::string quoted(std::string_view text) {
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

}  // namespace

bool isDigit(char c) { return c >= '0' && c <= '9'; }
bool isLetter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

std::string_view trimmed(std::string_view text) {
  const auto isBlank = [](char c) { return c == ' ' || c == '\t' || c == '\r' || c == '\n'; };
  while (!text.empty() && isBlank(text.front())) text.remove_prefix(1);
  while (!text.empty() && isBlank(text.back())) text.remove_suffix(1);
  return text;
}

std::optional<std::string> plainSpelling(std::string_view text) {
  std::string plain;
  while (!text.empty()) {
    const Spelling* spelling = spellingAt(text);
    if (!spelling && !isPlain(text[0])) return std::nullopt;
    std::string_view next = spelling ? spelling->plain : text.substr(0, 1);
    if (next == "\t") next = " ";
    // A typographic fraction right after a figure is a mixed number, 3½.
    if (spelling && isDigit(next[0]) && !plain.empty() && isDigit(plain.back())) plain += ' ';
    plain += next;
    text.remove_prefix(spelling ? spelling->written.size() : 1);
    if (plain.ends_with("''")) plain.replace(plain.size() - 2, 2, "\"");
  }
  return plain;
}

Fault noLength(std::string_view text, const LengthStyle& style, const std::string& reason) {
  const std::string what = quoted(text) + " is no length";
  if (!reason.empty()) return Fault{"", what + ": " + reason};
  if (style.units == UnitSystem::FeetInches) return Fault{"", what + "; write 7' 6\", 7 ft 6 in or 2286 mm"};
  return Fault{"", what + "; write 2286, 2286 mm or 7' 6\""};
}

}  // namespace ribwright
