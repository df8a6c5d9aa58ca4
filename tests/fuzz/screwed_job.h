// The random buildings that the places of screws are proved on. The seed is fixed; a building is thrown again by its
// index alone.
#pragma once

#include "tests/fuzz/random_building.h"
#include "tests/fuzz/random_screws.h"

namespace ribwright::fuzz {

inline constexpr std::uint64_t kScrewSeed = kSeed + 20;

inline Job screwedJob(int index) {
  Dice dice(kScrewSeed, index);
  return withScrews(randomJob(kSeed, index), dice);
}

}  // namespace ribwright::fuzz
