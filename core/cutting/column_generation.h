// The linear program over all patterns there are, by making those that are worth while (Gilmore and Gomory 1961).
#pragma once

#include <functional>

#include "core/cutting/pattern_pool.h"
#include "core/cutting/piece_points.h"

namespace ribwright {

enum class Aim {
  LeastCost,    // of stocks without limit but their supply
  ServeWithin,  // whether the stocks at hand serve at all, whatever they cost
};

struct LpAsked {
  const CutProblem& problem;
  const Counts& demand;  // of each size; may be 0
  const Counts& stocks;  // of each stock at most so many
  Aim aim = Aim::LeastCost;
  bool wholeProblem = false;  // what is known at the end is to hold for every choice of stocks
};

struct LpCut {
  std::size_t stock = 0;
  Counts counts{};
  double times = 0;
};

struct LpAnswer {
  enum class Kind {
    Solved,   // fractions that serve, as far as floating point can tell
    Ended,    // `watch` said so
    Unknown,  // stopped, or in trouble with rounding
  };
  Kind kind = Kind::Unknown;
  std::vector<LpCut> cuts{};  // when Solved: times > 0
};

// `watch` sees every exact price list that comes about, and whether there is a better one to be hoped for (the cost of
// the fractions so far); true ends it. `pool` gives the first patterns and takes the new ones.
LpAnswer solveOverPatterns(const LpAsked& asked, PatternPool& pool, CuttingWork& work,
                           const std::function<bool(const PiecePoints&, double cost)>& watch);

}  // namespace ribwright
