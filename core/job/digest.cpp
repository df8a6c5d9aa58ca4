#include "core/job/digest.h"

#include <cstdint>

namespace ribwright {

std::string fnv1a64(std::string_view text) {
  std::uint64_t hash = 0xcbf29ce484222325;
  for (const char byte : text) {
    hash ^= static_cast<unsigned char>(byte);
    hash *= 0x100000001b3;  // modulo 2^64
  }
  std::string digits(16, '0');
  for (auto digit = digits.rbegin(); digit != digits.rend(); ++digit, hash >>= 4) {
    *digit = "0123456789abcdef"[hash & 15];
  }
  return digits;
}

}  // namespace ribwright
