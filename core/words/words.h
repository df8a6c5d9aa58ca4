// Words on paper and in findings: message ids with values, from resources/words.<language>.json.
//
// Text between braces is a value's name: "The last sheet is {width} wide." A missing id is shown as the id itself. A
// value may be a phrase of its own, said in the same language: what holds words holds ids and values, never a language.
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "core/units/length.h"
#include "core/units/length_text.h"

namespace ribwright {

struct EmbeddedFile;
struct Phrase;
using WordValue = std::variant<Length, std::int64_t, std::string, Phrase>;  // a string is a name, the same everywhere
using WordValues = std::vector<std::pair<std::string, WordValue>>;

struct Phrase {
  std::string id;  // empty: a list, its values one after the other, commas between
  WordValues values{};
};
bool operator==(const Phrase& a, const Phrase& b);

class Words {
 public:
  // The shipped words of a language ("en"); throws std::runtime_error for one that is not shipped.
  static const Words& of(std::string_view language);
  // Of all languages that are shipped, in the order of their names.
  static std::vector<std::string> languages();

  // The text of `id` with its values put in; lengths in `style` (1/16 in, or whole millimetres where exact, else one
  // decimal).
  std::string say(std::string_view id, const WordValues& values, const LengthStyle& style) const;
  std::string say(const Phrase& phrase, const LengthStyle& style) const;
  bool knows(std::string_view id) const;
  std::vector<std::string> ids() const;

 private:
  static Words read(const EmbeddedFile& file);
  std::string valueText(const WordValue& value, const LengthStyle& style) const;

  std::map<std::string, std::string, std::less<>> texts_;
};

}  // namespace ribwright
