// What is wrong with a random building, with all that is needed to see it again.
#pragma once

#include <catch2/catch.hpp>
#include <string>

#include "tests/fuzz/layout_text.h"
#include "tests/fuzz/random_building.h"

namespace ribwright::fuzz {

inline std::string named(int index, const Job& job, const std::string& what) {
  return "seed " + std::to_string(kSeed) + ", building " + std::to_string(index) + "\n" + what + "\n" + jobText(job);
}

// Says what is wrong with this building and counts it; a test stops at its fifth bad building.
class Report {
 public:
  bool add(int index, const Job& job, const std::string& what) {
    const std::string said = what.empty() ? "" : named(index, job, what);
    CHECK(said == "");
    return !said.empty() && ++bad_ >= 5;
  }

 private:
  int bad_ = 0;
};

}  // namespace ribwright::fuzz
