// Which known word was probably meant.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ribwright {

// The known word with the fewest letters to add, drop, change or swap with a neighbour, the first of equals; absent
// when none is within a third of the word's letters (one letter at least).
std::optional<std::string> nearestWord(std::string_view word, const std::vector<std::string>& known);

}  // namespace ribwright
