// Pairs against all pairings that there are, and against the proof by duality.
#include "core/cutting/lowest_pairs.h"

#include <catch2/catch.hpp>
#include <map>

#include "core/cutting/heaviest_pairs.h"
#include "tests/fuzz/best_pairs.h"
#include "tests/fuzz/random_pairs.h"

using namespace ribwright;
using Pairs = std::vector<std::pair<int, int>>;

TEST_CASE("pairs that save most are taken, not those that save most each") {
  CHECK(lowestPairs(4, {{0, 1, 5}, {1, 2, 8}, {2, 3, 5}}) == Pairs{{0, 1}, {2, 3}});
  CHECK(lowestPairs(4, {{0, 1, 5}, {1, 2, 11}, {2, 3, 5}}) == Pairs{{1, 2}});
}

TEST_CASE("of pairs that save as much the most are taken: the fewest blanks") {
  CHECK(lowestPairs(4, {{0, 1, 5}, {1, 2, 10}, {2, 3, 5}}) == Pairs{{0, 1}, {2, 3}});
}

TEST_CASE("of sets as good the one with the lowest marks is taken") {
  CHECK(lowestPairs(4, {{0, 1, 5}, {0, 2, 5}, {0, 3, 5}, {1, 2, 5}, {1, 3, 5}, {2, 3, 5}}) == Pairs{{0, 1}, {2, 3}});
  CHECK(lowestPairs(3, {{0, 1, 5}, {0, 2, 5}, {1, 2, 5}}) == Pairs{{0, 1}});
  CHECK(lowestPairs(4, {{0, 3, 5}, {1, 3, 5}, {2, 3, 5}}) == Pairs{{0, 3}});
}

TEST_CASE("nothing to pair is no pair") {
  CHECK(lowestPairs(0, {}).empty());
  CHECK(lowestPairs(3, {}).empty());
}

TEST_CASE("pairs are the best of all pairings, to the last mark") {
  for (int index = 0; index < 4000; ++index) {
    fuzz::Dice dice(71, index);
    const int count = dice.small(1, 13);
    const auto savings = fuzz::randomSavings(dice, count);
    INFO("index " << index);
    REQUIRE(lowestPairs(count, savings) == fuzz::BestPairs(count, savings).pairs());
  }
}

TEST_CASE("no pairing weighs more: worths prove it") {
  for (int index = 0; index < 60; ++index) {
    fuzz::Dice dice(72, index);
    const int count = dice.small(20, 90);
    std::vector<WeightedPair> pairs;
    for (const PairSaving& s : fuzz::randomSavings(dice, count)) pairs.push_back({s.a, s.b, s.saved});
    const HeaviestPairs found = heaviestPairs(count, pairs);
    std::map<std::pair<int, int>, PairWeight> covered;
    PairWeight bound = 0, weight = 0;
    for (const PairWeight worth : found.worths) {
      REQUIRE(worth >= 0);
      bound += worth;
    }
    for (const OddSet& set : found.oddSets) {
      REQUIRE(set.worth > 0);
      REQUIRE(set.members.size() % 2 == 1);
      bound += set.worth * PairWeight(set.members.size() / 2);
      for (const int a : set.members)
        for (const int b : set.members) covered[{a, b}] += set.worth;
    }
    for (const WeightedPair& pair : pairs) {
      const auto a = std::size_t(pair.a), b = std::size_t(pair.b);
      REQUIRE(pair.weight * kWorthScale <= found.worths[a] + found.worths[b] + covered[{pair.a, pair.b}]);
      if (found.mate[a] == pair.b) {
        REQUIRE(found.mate[b] == pair.a);
        weight += pair.weight;
      }
    }
    REQUIRE(weight * kWorthScale == bound);
  }
}
