// Words on paper and in findings: message ids with values, from resources/words.<language>.json.
//
// Text between braces is a value's name: "The last sheet is {width} wide." A missing id is shown as the id itself.
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

using WordValue = std::variant<Length, std::int64_t, std::string>;
using WordValues = std::vector<std::pair<std::string, WordValue>>;

class Words {
 public:
  // The shipped words of a language ("en"); throws std::runtime_error for one that is not shipped.
  static const Words& of(std::string_view language);

  // The text of `id` with its values put in; lengths in `style` (1/16 in, or whole millimetres where exact, else one
  // decimal).
  std::string say(std::string_view id, const WordValues& values, const LengthStyle& style) const;
  bool knows(std::string_view id) const;
  std::vector<std::string> ids() const;

 private:
  std::map<std::string, std::string, std::less<>> texts_;
};

}  // namespace ribwright
