// Pairs of the greatest weight together: a matching of greatest weight in any graph, with its proof.
//
// The method is Edmonds' ("Maximum matching and a polyhedron with 0,1-vertices", Journal of Research of the National
// Bureau of Standards 69B, 1965; Galil, "Efficient algorithms for finding maximum matching in graphs", ACM Computing
// Surveys 18, 1986), as the graph library LEMON has it, in whole numbers of 128 bits.
#pragma once

#include <vector>

namespace ribwright {

__extension__ typedef __int128 PairWeight;

// Two of the things to be paired, a < b, and what their pair weighs; >= 0, each two at most once.
struct WeightedPair {
  int a = 0, b = 0;
  PairWeight weight = 0;
};

// Things of which one at least is not paired with another of them.
struct OddSet {
  std::vector<int> members;  // an odd number
  PairWeight worth = 0;      // > 0
};

// No pairing weighs more, and any that weighs as much has the same shape, by linear duality: each pair's weight times
// kWorthScale is no more than the worths of its two things and of the odd sets that hold both. A pairing that weighs
// most takes only pairs where these are equal, pairs all things but those of worth 0, and in each odd set all but one
// with each other.
struct HeaviestPairs {
  std::vector<int> mate;           // -1: alone
  std::vector<PairWeight> worths;  // >= 0; where everything must be paired they may also be below 0
  std::vector<OddSet> oddSets;
};

inline constexpr int kWorthScale = 4;

// Of things 0 ... count - 1. Weights stay below 2^110 / count. With `everyone` none may stay alone: then throws
// std::invalid_argument where that cannot be.
HeaviestPairs heaviestPairs(int count, const std::vector<WeightedPair>& pairs, bool everyone = false);

}  // namespace ribwright
