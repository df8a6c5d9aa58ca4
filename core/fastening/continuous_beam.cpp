#include "core/fastening/continuous_beam.h"

#include <cmath>

namespace ribwright {
namespace {

// Downward, at x from the left support, with moments a and b over the two supports.
double deflection(const BeamSpan& span, double a, double b, double x) {
  const double l = span.length, rest = l - x;
  const double fromLoad = span.load * x * (l * l * l - 2 * l * x * x + x * x * x) / 24;
  const double fromMoments = x * rest * (a * (l + rest) + b * (l + x)) / (6 * l);
  return (fromLoad + fromMoments) / span.stiffness;
}

// A span bends at most twice, and so goes down most at one place between the tries beside the lowest of them.
BeamSag lowestPlace(const BeamSpan& span, double a, double b) {
  constexpr int tries = 64;
  int lowest = 0;
  const auto tryAt = [&](int i) { return span.length * i / tries; };
  for (int i = 1; i < tries; ++i) {
    if (deflection(span, a, b, tryAt(i)) > deflection(span, a, b, tryAt(lowest))) lowest = i;
  }
  if (lowest == 0) return {};
  double left = tryAt(lowest - 1), right = tryAt(lowest + 1);
  for (int round = 0; round < 60; ++round) {
    const double third = (right - left) / 3;
    if (deflection(span, a, b, left + third) < deflection(span, a, b, right - third)) {
      left += third;
    } else {
      right -= third;
    }
  }
  const double at = (left + right) / 2;
  return {at, deflection(span, a, b, at)};
}

}  // namespace

std::vector<double> supportMoments(const std::vector<BeamSpan>& spans) {
  const std::size_t count = spans.size();
  std::vector<double> moments(count + 1, 0.0), upper(count + 1, 0.0);
  const auto softness = [&](std::size_t i) { return spans[i].length / spans[i].stiffness; };
  const auto loaded = [&](std::size_t i) {
    return spans[i].load * spans[i].length * spans[i].length * spans[i].length / (4 * spans[i].stiffness);
  };
  // Down the diagonal, then back up.
  for (std::size_t i = 1; i < count; ++i) {
    const double pivot = 2 * (softness(i - 1) + softness(i)) - softness(i - 1) * upper[i - 1];
    upper[i] = softness(i) / pivot;
    moments[i] = (-loaded(i - 1) - loaded(i) - softness(i - 1) * moments[i - 1]) / pivot;
  }
  for (std::size_t i = count; i-- > 1;) moments[i] -= upper[i] * moments[i + 1];
  return moments;
}

std::vector<BeamSag> beamSags(const std::vector<BeamSpan>& spans) {
  const std::vector<double> moments = supportMoments(spans);
  std::vector<BeamSag> sags;
  for (std::size_t i = 0; i < spans.size(); ++i) sags.push_back(lowestPlace(spans[i], moments[i], moments[i + 1]));
  return sags;
}

}  // namespace ribwright
