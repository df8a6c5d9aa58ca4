// The linear program over patterns: stock pieces cut in fractions, at the least cost. It proposes; nothing is proved by
// it.
//
// minimize  cost x + uncovered s   so that   A x + s >= demand,   pieces of each limited stock <= limit,   x, s >= 0
// Revised primal simplex with the inverse of the basis at hand, right sides moved by a millionth so that it does not go
// in circles. Columns may be added and it goes on from where it was.
#pragma once

#include <cstdint>
#include <utility>
#include <vector>

namespace ribwright {

class PatternLp {
 public:
  // Rows: demands, then limits. `uncovered`, parallel to demand: what a piece costs that is not cut.
  PatternLp(const std::vector<double>& demand, const std::vector<double>& uncovered, const std::vector<double>& limits);

  using Entries = std::vector<std::pair<std::size_t, double>>;  // row and how much, limits included
  void add(Entries entries, double cost);

  // To the least over the columns there are. False: it ran into trouble with rounding, or took more pivots than it may.
  bool solve();

  // Per row; of limits <= 0.
  const std::vector<double>& prices() const { return prices_; }
  double objective() const;
  // Parallel to the columns that were added.
  std::vector<double> values() const;
  // What is not cut, in its cost.
  double uncoveredCost() const;
  // Since it was made; a pivot takes rows^2 steps.
  std::int64_t pivots() const { return pivots_; }

 private:
  // Variables: uncovered and surplus of each demand, what is left of each limit, then the columns.
  struct Entering {
    std::size_t variable = 0;
    double gain = 0;  // > 0: how much cheaper for each unit
  };
  std::size_t firstColumn() const { return 2 * demands_ + (rows_ - demands_); }
  double costOf(std::size_t variable) const;
  Entries entriesOf(std::size_t variable) const;
  Entering bestEntering() const;
  std::vector<double> direction(std::size_t variable) const;
  std::size_t leavingRow(const std::vector<double>& direction) const;
  void pivot(std::size_t row, std::size_t variable, const std::vector<double>& direction, double gain);
  bool refresh();

  std::size_t rows_, demands_;
  std::vector<double> right_, uncovered_;
  std::vector<Entries> columns_;
  std::vector<double> costs_;
  std::vector<std::size_t> basis_;  // row -> variable
  std::vector<char> isBasic_;
  std::vector<double> inverse_;  // rows x rows
  std::vector<double> basic_, prices_;
  std::int64_t pivots_ = 0, sinceRefresh_ = 0;
};

}  // namespace ribwright
