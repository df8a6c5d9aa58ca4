// Random choices that are the same on every system: std::mt19937_64 is fixed by the standard, the distributions are
// not, so they are our own. Each building has its own dice, so that one of them can be thrown again alone.
#pragma once

#include <cstdint>
#include <initializer_list>
#include <random>
#include <vector>

#include "core/units/length.h"

namespace ribwright::fuzz {

class Dice {
 public:
  Dice(std::uint64_t seed, int index) : engine_(seed + 0x9E3779B97F4A7C15ULL * static_cast<std::uint64_t>(index + 1)) {}

  // Both ends included; lowest when highest is below it.
  std::int64_t between(std::int64_t lowest, std::int64_t highest) {
    if (highest <= lowest) return lowest;
    const auto many = static_cast<std::uint64_t>(highest - lowest) + 1;
    return lowest + static_cast<std::int64_t>(engine_() % many);
  }
  int small(int lowest, int highest) { return static_cast<int>(between(lowest, highest)); }
  bool oneIn(int many) { return between(1, many) == 1; }

  template <class T>
  T of(std::initializer_list<T> choices) {
    return choices.begin()[between(0, static_cast<std::int64_t>(choices.size()) - 1)];
  }
  template <class T>
  const T& of(const std::vector<T>& choices) {
    return choices[static_cast<std::size_t>(between(0, static_cast<std::int64_t>(choices.size()) - 1))];
  }

  // On sixteenths of an inch, whole millimetres or any nanometre, within both ends where the grid allows.
  Length length(Length lowest, Length highest) {
    const Length any = Length::nanometres(between(lowest.nanometres(), highest.nanometres()));
    switch (between(0, 3)) {
      case 0:
        return any;
      case 1:
        return roundUp(lowest, Length::millimetres(1)) + roundTo(any - lowest, Length::millimetres(1));
      default:
        return roundUp(lowest, Length::inches(0, 4)) + roundTo(any - lowest, Length::inches(0, 4));
    }
  }

 private:
  std::mt19937_64 engine_;
};

}  // namespace ribwright::fuzz
