#include "core/drawing/hatch.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/drawing/ring_within.h"

namespace ribwright {

namespace {

constexpr double apartOnPaper = 2.5;
constexpr double shortest = 0.8;  // what is left of a stroke between two texts is drawn from this length on

// A line rises to the right at 45 degrees: all its points have the same x + y.
double diagonalOf(const PaperPoint& point) { return point.x + point.y; }

// Where the line of this x + y crosses a side; its x.
std::optional<double> crossing(const PaperPoint& a, const PaperPoint& b, double line) {
  const double from = diagonalOf(a), to = diagonalOf(b);
  if ((from <= line) == (to <= line)) return std::nullopt;  // an end on the line counts once
  return a.x + (b.x - a.x) * (line - from) / (to - from);
}

}  // namespace

std::vector<std::pair<PaperPoint, PaperPoint>> hatchLines(const std::vector<std::vector<PaperPoint>>& rings,
                                                          double apart) {
  std::vector<std::pair<PaperPoint, PaperPoint>> lines;
  double low = 1e300, high = -1e300;
  for (const auto& ring : rings) {
    for (const PaperPoint& point : ring) {
      low = std::min(low, diagonalOf(point));
      high = std::max(high, diagonalOf(point));
    }
  }
  const double step = apart * std::sqrt(2.0);
  for (double count = std::ceil(low / step); count * step < high; ++count) {
    const double line = count * step;
    std::vector<double> crossings;
    for (const auto& ring : rings) {
      for (std::size_t i = 0; i < ring.size(); ++i) {
        if (const auto x = crossing(ring[i], ring[(i + 1) % ring.size()], line)) crossings.push_back(*x);
      }
    }
    std::sort(crossings.begin(), crossings.end());
    for (std::size_t i = 0; i + 1 < crossings.size(); i += 2) {
      lines.push_back({{crossings[i], line - crossings[i]}, {crossings[i + 1], line - crossings[i + 1]}});
    }
  }
  return lines;
}

bool drawTranslucent(Sketch& sketch, const WallView& view) {
  bool any = false;
  for (const Piece& piece : view.layout->pieces) {
    const SheetRun& run = view.layout->runs[static_cast<std::size_t>(piece.run)];
    const SeenPart seen = seenPart(view, piece);
    if (!run.modules[static_cast<std::size_t>(piece.module)].translucent || seen.empty()) continue;
    const Box box{view.x(seen.left), view.y(seen.top), view.x(seen.right), view.y(piece.bottom)};
    std::vector<std::vector<PaperPoint>> rings;
    for (const Ring& ring : piece.rings) rings.push_back(ringWithin(pointsOf(view, ring), box));
    const PartIndex part = sketch.part(Part::Kind::Piece, view.layout->letter, piece.mark);
    for (const auto& [from, to] : hatchLines(rings, apartOnPaper)) {
      for (const auto& [a, b] : sketch.clearParts(from, to, roundText)) {
        if (std::hypot(b.x - a.x, b.y - a.y) >= shortest) sketch.line(a, b, thinLine, Dash::Solid, part);
      }
    }
    any = true;
  }
  return any;
}

std::vector<PaperPoint> hatchSign(const PaperPoint& at) {
  constexpr double r = hatchSignReach, w = thinLine;
  return {{at.x - r, at.y + r}, {at.x - r + w, at.y + r}, {at.x + r, at.y - r}, {at.x + r - w, at.y - r}};
}

}  // namespace ribwright
