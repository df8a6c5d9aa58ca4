#include "core/cutting/pattern_lp.h"

#include <algorithm>
#include <cmath>

namespace ribwright {
namespace {

constexpr double leastGain = 1e-9, leastPivot = 1e-9;

// Between 0 and 1, without pattern, the same everywhere.
double scattered(std::size_t index) { return static_cast<double>((index * 7919 + 3) % 1009) / 1009; }

}  // namespace

PatternLp::PatternLp(const std::vector<double>& demand, const std::vector<double>& uncovered,
                     const std::vector<double>& limits)
    : rows_(demand.size() + limits.size()),
      demands_(demand.size()),
      uncovered_(uncovered),
      inverse_(rows_ * rows_, 0.0),
      prices_(rows_, 0.0) {
  for (std::size_t i = 0; i < demands_; ++i) right_.push_back(demand[i] + 1e-6 * (1 + scattered(i)));
  for (std::size_t i = 0; i < limits.size(); ++i) right_.push_back(limits[i] + 1e-5 * (1 + scattered(demands_ + i)));
  isBasic_.assign(firstColumn(), 0);
  for (std::size_t row = 0; row < rows_; ++row) {
    basis_.push_back(row < demands_ ? row : demands_ + row);
    isBasic_[basis_[row]] = 1;
    inverse_[row * rows_ + row] = 1;
    if (row < demands_) prices_[row] = uncovered_[row];
  }
  basic_ = right_;
}

void PatternLp::add(Entries entries, double cost) {
  columns_.push_back(std::move(entries));
  costs_.push_back(cost);
  isBasic_.push_back(0);
}

double PatternLp::costOf(std::size_t variable) const {
  if (variable < demands_) return uncovered_[variable];
  return variable < firstColumn() ? 0 : costs_[variable - firstColumn()];
}

PatternLp::Entries PatternLp::entriesOf(std::size_t variable) const {
  if (variable < demands_) return {{variable, 1.0}};
  if (variable < 2 * demands_) return {{variable - demands_, -1.0}};
  if (variable < firstColumn()) return {{variable - demands_, 1.0}};
  return columns_[variable - firstColumn()];
}

PatternLp::Entering PatternLp::bestEntering() const {
  Entering best{0, leastGain};
  const auto offer = [&](std::size_t variable, double gain) {
    if (gain > best.gain && !isBasic_[variable]) best = {variable, gain};
  };
  for (std::size_t i = 0; i < demands_; ++i) {
    offer(i, prices_[i] - uncovered_[i]);
    offer(demands_ + i, -prices_[i]);
  }
  for (std::size_t row = demands_; row < rows_; ++row) offer(demands_ + row, prices_[row]);
  for (std::size_t j = 0; j < columns_.size(); ++j) {
    double gain = -costs_[j];
    for (const auto& [row, amount] : columns_[j]) gain += prices_[row] * amount;
    offer(firstColumn() + j, gain);
  }
  return best;
}

std::vector<double> PatternLp::direction(std::size_t variable) const {
  std::vector<double> direction(rows_, 0.0);
  for (const auto& [column, amount] : entriesOf(variable))
    for (std::size_t row = 0; row < rows_; ++row) direction[row] += inverse_[row * rows_ + column] * amount;
  return direction;
}

// The first basic variable that comes to nothing; of equal ones the surest to divide by. rows_: none.
std::size_t PatternLp::leavingRow(const std::vector<double>& direction) const {
  std::size_t best = rows_;
  double least = 0;
  for (std::size_t row = 0; row < rows_; ++row) {
    if (direction[row] < leastPivot) continue;
    const double ratio = std::max(0.0, basic_[row]) / direction[row];
    if (best == rows_ || ratio < least || (ratio == least && direction[row] > direction[best])) {
      best = row;
      least = ratio;
    }
  }
  return best;
}

void PatternLp::pivot(std::size_t row, std::size_t variable, const std::vector<double>& direction, double gain) {
  double* pivotRow = inverse_.data() + row * rows_;
  const double by = direction[row];
  for (std::size_t c = 0; c < rows_; ++c) pivotRow[c] /= by;
  basic_[row] /= by;
  for (std::size_t r = 0; r < rows_; ++r) {
    if (r == row || direction[r] == 0) continue;
    double* other = inverse_.data() + r * rows_;
    const double times = direction[r];
    for (std::size_t c = 0; c < rows_; ++c) other[c] -= times * pivotRow[c];
    basic_[r] -= times * basic_[row];
  }
  for (std::size_t c = 0; c < rows_; ++c) prices_[c] -= gain * pivotRow[c];
  isBasic_[basis_[row]] = 0;
  isBasic_[variable] = 1;
  basis_[row] = variable;
  ++pivots_;
  ++sinceRefresh_;
}

// The inverse anew from the basis, so that rounding does not add up. False: the basis has none.
bool PatternLp::refresh() {
  std::vector<double> matrix(rows_ * rows_, 0.0);
  std::fill(inverse_.begin(), inverse_.end(), 0.0);
  for (std::size_t c = 0; c < rows_; ++c) {
    for (const auto& [row, amount] : entriesOf(basis_[c])) matrix[row * rows_ + c] = amount;
    inverse_[c * rows_ + c] = 1;
  }
  for (std::size_t c = 0; c < rows_; ++c) {
    std::size_t largest = c;
    for (std::size_t r = c; r < rows_; ++r)
      if (std::abs(matrix[r * rows_ + c]) > std::abs(matrix[largest * rows_ + c])) largest = r;
    const double by = matrix[largest * rows_ + c];
    if (std::abs(by) < 1e-11) return false;
    for (std::size_t k = 0; k < rows_; ++k) {
      std::swap(matrix[c * rows_ + k], matrix[largest * rows_ + k]);
      std::swap(inverse_[c * rows_ + k], inverse_[largest * rows_ + k]);
      matrix[c * rows_ + k] /= by;
      inverse_[c * rows_ + k] /= by;
    }
    for (std::size_t r = 0; r < rows_; ++r) {
      const double times = r == c ? 0 : matrix[r * rows_ + c];
      if (times == 0) continue;
      for (std::size_t k = 0; k < rows_; ++k) {
        matrix[r * rows_ + k] -= times * matrix[c * rows_ + k];
        inverse_[r * rows_ + k] -= times * inverse_[c * rows_ + k];
      }
    }
  }
  for (std::size_t r = 0; r < rows_; ++r) {
    basic_[r] = 0;
    prices_[r] = 0;
  }
  for (std::size_t r = 0; r < rows_; ++r) {
    const double cost = costOf(basis_[r]);
    for (std::size_t c = 0; c < rows_; ++c) {
      basic_[r] += inverse_[r * rows_ + c] * right_[c];
      prices_[c] += cost * inverse_[r * rows_ + c];
    }
  }
  sinceRefresh_ = 0;
  return true;
}

bool PatternLp::solve() {
  constexpr std::int64_t refreshAfter = 100;
  const std::int64_t mostPivots = pivots_ + 200 + 20 * static_cast<std::int64_t>(rows_);
  while (pivots_ < mostPivots) {
    if (sinceRefresh_ >= refreshAfter && !refresh()) return false;
    const Entering entering = bestEntering();
    if (entering.gain <= leastGain) return true;
    const std::vector<double> along = direction(entering.variable);
    const std::size_t row = leavingRow(along);
    if (row == rows_) return false;
    pivot(row, entering.variable, along, entering.gain);
  }
  return false;
}

double PatternLp::objective() const {
  double cost = 0;
  for (std::size_t row = 0; row < rows_; ++row) cost += costOf(basis_[row]) * basic_[row];
  return cost;
}

double PatternLp::uncoveredCost() const {
  double cost = 0;
  for (std::size_t row = 0; row < rows_; ++row)
    if (basis_[row] < demands_) cost += uncovered_[basis_[row]] * basic_[row];
  return cost;
}

std::vector<double> PatternLp::values() const {
  std::vector<double> values(columns_.size(), 0.0);
  for (std::size_t row = 0; row < rows_; ++row)
    if (basis_[row] >= firstColumn()) values[basis_[row] - firstColumn()] = std::max(0.0, basic_[row]);
  return values;
}

}  // namespace ribwright
