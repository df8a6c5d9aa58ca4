#include "core/units/length_spelling.h"

#include <array>

#include "core/units/typed_text.h"

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

}  // namespace

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
  const std::string what = inQuotes(text) + " is no length";
  if (!reason.empty()) return Fault{"", what + ": " + reason};
  if (style.units == UnitSystem::FeetInches) return Fault{"", what + "; write 7' 6\", 7 ft 6 in or 2286 mm"};
  return Fault{"", what + "; write 2286, 2286 mm or 7' 6\""};
}

}  // namespace ribwright
