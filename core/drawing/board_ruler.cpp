#include "core/drawing/board_ruler.h"

#include <vector>

#include "core/drawing/shown_length.h"

namespace ribwright {

namespace {

// Rising.
const std::vector<Length>& roundSteps(UnitSystem units) {
  static const std::vector<Length> inches = [] {
    std::vector<Length> steps;
    for (const int sixtyFourths : {4, 8, 16, 32}) steps.push_back(Length::sixtyFourths(sixtyFourths));
    for (const int whole : {1, 2, 3, 6}) steps.push_back(Length::inches(whole));
    for (const int feet : {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000}) steps.push_back(Length::feet(feet));
    return steps;
  }();
  static const std::vector<Length> millimetres = [] {
    std::vector<Length> steps;
    for (std::int64_t decade = 1; decade <= 100'000; decade *= 10) {
      for (const int digit : {1, 2, 5}) steps.push_back(Length::millimetres(digit * decade));
    }
    return steps;
  }();
  return units == UnitSystem::Millimetres ? millimetres : inches;
}

}  // namespace

RulerSteps rulerSteps(UnitSystem units, double zoom, double figures, double ticks) {
  const std::vector<Length>& steps = roundSteps(units);
  const auto apart = [&](Length step) { return step.inMillimetres() * zoom; };
  std::size_t labelled = 0;
  while (labelled + 1 < steps.size() && apart(steps[labelled]) < figures) ++labelled;
  std::size_t marked = 0;
  while (marked < labelled && (apart(steps[marked]) < ticks || rest(steps[labelled], steps[marked]) != Length()))
    ++marked;
  return {steps[labelled], steps[marked]};
}

std::string rulerFigure(Length place, const LengthStyle& style) { return dimensionText(place, style); }

}  // namespace ribwright
