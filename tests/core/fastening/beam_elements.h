// A beam over level supports by fine Euler-Bernoulli elements, to hold another way of reckoning against.
#pragma once

#include <cmath>
#include <vector>

#include "core/fastening/continuous_beam.h"

namespace ribwright::examples {

// Solves matrix * x = right, the matrix row by row.
inline std::vector<double> solved(std::vector<std::vector<double>> matrix, std::vector<double> right) {
  const std::size_t n = right.size();
  for (std::size_t column = 0; column < n; ++column) {
    std::size_t pivot = column;
    for (std::size_t row = column; row < n; ++row)
      if (std::abs(matrix[row][column]) > std::abs(matrix[pivot][column])) pivot = row;
    std::swap(matrix[pivot], matrix[column]);
    std::swap(right[pivot], right[column]);
    for (std::size_t row = column + 1; row < n; ++row) {
      const double times = matrix[row][column] / matrix[column][column];
      if (times == 0) continue;
      for (std::size_t k = column; k < n; ++k) matrix[row][k] -= times * matrix[column][k];
      right[row] -= times * right[column];
    }
  }
  for (std::size_t row = n; row-- > 0;) {
    for (std::size_t k = row + 1; k < n; ++k) right[row] -= matrix[row][k] * right[k];
    right[row] /= matrix[row][row];
  }
  return right;
}

// The greatest downward deflection of each span, at the elements' nodes.
inline std::vector<double> sagsByElements(const std::vector<BeamSpan>& spans) {
  constexpr std::size_t each = 24;
  const std::size_t unknowns = 2 * (spans.size() * each + 1);  // downward, slope; node by node
  std::vector<std::vector<double>> stiff(unknowns, std::vector<double>(unknowns, 0.0));
  std::vector<double> load(unknowns, 0.0);
  for (std::size_t i = 0; i < spans.size() * each; ++i) {
    const BeamSpan& span = spans[i / each];
    const double h = span.length / each, ei = span.stiffness / (h * h * h), w = span.load * h;
    const double k[4][4] = {{12, 6 * h, -12, 6 * h},
                            {6 * h, 4 * h * h, -6 * h, 2 * h * h},
                            {-12, -6 * h, 12, -6 * h},
                            {6 * h, 2 * h * h, -6 * h, 4 * h * h}};
    const double f[4] = {w / 2, w * h / 12, w / 2, -w * h / 12};
    for (std::size_t a = 0; a < 4; ++a) {
      load[2 * i + a] += f[a];
      for (std::size_t b = 0; b < 4; ++b) stiff[2 * i + a][2 * i + b] += ei * k[a][b];
    }
  }
  for (std::size_t support = 0; support <= spans.size(); ++support) {
    const std::size_t held = 2 * support * each;
    for (std::size_t k = 0; k < unknowns; ++k) stiff[held][k] = stiff[k][held] = 0;
    stiff[held][held] = 1;
    load[held] = 0;
  }
  const std::vector<double> moved = solved(std::move(stiff), std::move(load));
  std::vector<double> sags(spans.size(), 0.0);
  for (std::size_t i = 0; i <= spans.size() * each; ++i) {
    for (const std::size_t span : {i / each, (i > 0 ? i - 1 : 0) / each})
      if (span < spans.size()) sags[span] = std::max(sags[span], moved[2 * i]);
  }
  return sags;
}

}  // namespace ribwright::examples
