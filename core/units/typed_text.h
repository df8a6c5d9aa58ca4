// What someone typed, looked at before anything is made of it.
#pragma once

#include <string>
#include <string_view>

namespace ribwright {

// Of ASCII.
bool isDigit(char c);
bool isLetter(char c);

// Nothing stands in it but spaces, tabs and line ends.
bool isBlank(std::string_view text);

// Without the spaces, tabs and line ends about it; a part of `text`.
std::string_view trimmed(std::string_view text);

// In double quotes, one line of sound UTF-8, whatever came in, cut after 60 characters: it will be printed, logged and
// put into files.
std::string inQuotes(std::string_view text);

}  // namespace ribwright
