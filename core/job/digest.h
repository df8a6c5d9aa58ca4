// A short digest of a text, to see that something has changed. No seal: whoever wants the same digest can make it.
#pragma once

#include <string>
#include <string_view>

namespace ribwright {

// 64-bit FNV-1a (Fowler, Noll and Vo) of the bytes, as 16 hexadecimal digits, small letters.
std::string fnv1a64(std::string_view text);

}  // namespace ribwright
