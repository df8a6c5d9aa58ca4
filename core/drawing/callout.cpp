#include "core/drawing/callout.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace ribwright {

namespace {

constexpr double offFace = 2.2;  // clear paper between the face and a label
constexpr double farthestUp = 44;
constexpr double farthestAside = 36;
constexpr double step = 2;
constexpr double hairOver = 1e-6;
constexpr double labelsApart = 0.8;  // lines of different labels
constexpr double nearEnough = 14;    // a label no farther aside than this belongs to its place at a glance
constexpr double dotRadius = 0.6;    // from a dot's middle to its edge

struct Line {
  PaperPoint a, b;
};

double lengthOf(const Line& line) { return std::hypot(line.b.x - line.a.x, line.b.y - line.a.y); }

bool cross(const Line& one, const Line& two) {
  const auto side = [](const Line& line, const PaperPoint& p) {
    return (line.b.x - line.a.x) * (p.y - line.a.y) - (line.b.y - line.a.y) * (p.x - line.a.x);
  };
  return side(one, two.a) * side(one, two.b) < 0 && side(two, one.a) * side(two, one.b) < 0;
}

double distance(const PaperPoint& point, const Line& line) {
  const double dx = line.b.x - line.a.x, dy = line.b.y - line.a.y, square = dx * dx + dy * dy;
  const double reach = square == 0 ? 0 : ((point.x - line.a.x) * dx + (point.y - line.a.y) * dy) / square;
  const double along = std::clamp(reach, 0.0, 1.0);
  return std::hypot(point.x - line.a.x - dx * along, point.y - line.a.y - dy * along);
}

Box boxOf(const Line& line) {
  return {std::min(line.a.x, line.b.x), std::min(line.a.y, line.b.y), std::max(line.a.x, line.b.x),
          std::max(line.a.y, line.b.y)};
}

// Two lines that cross, or run so close that the eye would take one for the other.
bool confusable(const Line& one, const Line& two) {
  if (!overlap(boxOf(one).grown(labelsApart), boxOf(two).grown(hairOver))) return false;
  if (cross(one, two)) return true;
  return std::min({distance(one.a, two), distance(one.b, two), distance(two.a, one), distance(two.b, one)}) <
         labelsApart;
}

// How far a label is moved from straight above (or below) its place; nearest first.
struct Offset {
  double aside, away;
};
const std::vector<Offset>& offsets() {
  static const std::vector<Offset> all = [] {
    std::vector<Offset> made;
    for (int away = 0; away * step <= farthestUp; ++away) {
      made.push_back({0, away * step});
      for (int aside = 1; aside * step <= farthestAside; ++aside) {
        made.push_back({aside * step, away * step});
        made.push_back({-aside * step, away * step});
      }
    }
    std::stable_sort(made.begin(), made.end(), [](const Offset& a, const Offset& b) {
      return std::abs(a.aside) + a.away < std::abs(b.aside) + b.away;
    });
    return made;
  }();
  return all;
}

// y of the face's edge at x: its top, or its bottom and the concrete, whichever is lower.
double edgeAt(const WallView& view, double x, bool up) {
  const Length u = view.from + Length::nanometres(std::llround(x * 1e6 * static_cast<double>(view.scale.below)));
  const Length inFace = std::clamp(u, view.from, view.to);
  const WallFace& face = view.layout->face;
  const auto heights = [&](const HeightLine& line) {
    return std::minmax({line.heightAt(inFace, Beside::Left), line.heightAt(inFace, Beside::Right)});
  };
  if (up) return view.y(heights(face.top).second);
  return view.y(std::min(heights(face.bottom).first, heights(face.concrete).first));
}

// The label stands clear of the face over its whole width.
bool isOutside(const WallView& view, const Box& box, bool up) {
  if (box.right < -offFace || box.left > view.x(view.to) + offFace) return true;
  const double middle = (box.left + box.right) / 2;
  bool clear = true;
  for (const double x : {box.left, middle, box.right}) {
    clear =
        clear && (up ? box.bottom <= edgeAt(view, x, up) - offFace / 2 : box.top >= edgeAt(view, x, up) + offFace / 2);
  }
  return clear;
}

struct Found {
  PaperPoint middle;     // of the label
  Line straight, slant;  // out of the wall, then to the label
  double length() const { return lengthOf(straight) + lengthOf(slant); }
};

std::optional<Found> findPlace(const Sketch& sketch, const WallView& view, const LabelBlock& label, bool dot,
                               const PaperPoint& from, bool up, const std::vector<Line>& taken) {
  const double sign = up ? -1 : 1;
  const double off = edgeAt(view, from.x, up) + sign * offFace / 2;
  const PaperPoint edge{from.x, up ? std::min(off, from.y) : std::max(off, from.y)};
  if (dot && !sketch.isFreeOfText(Box{from.x, from.y, from.x, from.y}.grown(dotRadius))) return std::nullopt;
  const auto isFree = [&](const Line& line) {
    return sketch.isClear(line.a, line.b) &&
           std::none_of(taken.begin(), taken.end(), [&](const Line& other) { return confusable(line, other); });
  };
  const Line straight{from, edge};
  if (!isFree(straight)) return std::nullopt;
  const double halfTall = label.height() / 2, halfWide = label.width() / 2;
  for (const Offset& offset : offsets()) {
    const PaperPoint middle{from.x + offset.aside, edge.y + sign * (offFace / 2 + halfTall + offset.away)};
    const Box box{middle.x - halfWide, middle.y - halfTall, middle.x + halfWide, middle.y + halfTall};
    if (!isOutside(view, box, up) || !sketch.hasRoom(box)) continue;
    const PaperPoint end{std::clamp(from.x, box.left, box.right), up ? box.bottom + textRoom : box.top - textRoom};
    const Line slant{edge, end};
    if (!isFree(slant)) continue;
    return Found{middle, straight, slant};
  }
  return std::nullopt;
}

std::optional<Found> bestPlace(const Sketch& sketch, const WallView& view, const Callout& callout,
                               const LabelBlock& label, const std::vector<Line>& taken) {
  std::optional<Found> best;
  for (const PaperPoint& point : callout.points) {
    for (const bool up : {true, false}) {
      const auto found = findPlace(sketch, view, label, callout.dot, point, up, taken);
      if (found && (!best || found->length() < best->length())) best = found;
    }
    if (best) break;
  }
  return best;
}

void draw(Sketch& sketch, const Callout& callout, const LabelBlock& label, const Found& place) {
  const PaperPoint& from = place.straight.a;
  if (callout.dot) {
    constexpr double r = dotRadius;
    sketch.fill({{from.x - r, from.y}, {from.x, from.y - r}, {from.x + r, from.y}, {from.x, from.y + r}}, Ink::Black);
  }
  sketch.polyline({from, place.slant.a, place.slant.b}, thinLine, Dash::Solid, callout.part);
  drawLabel(sketch, label, place.middle, callout.part);
}

struct Trial {
  std::vector<Callout> left;  // found no place
  double farthest = 0;        // longest slanting line
};

bool better(const Trial& a, const Trial& b) {
  return a.left.size() != b.left.size() ? a.left.size() < b.left.size() : a.farthest < b.farthest;
}

// Draws all that find a place when each says at most its label number `fullest`.
Trial drawAll(Sketch& sketch, const WallView& view, const std::vector<Callout>& callouts, std::size_t fullest) {
  Trial trial;
  std::vector<Line> taken;
  for (const Callout& callout : callouts) {
    std::optional<Found> place;
    for (std::size_t i = std::min(fullest, callout.labels.size() - 1); !place && i < callout.labels.size(); ++i) {
      place = bestPlace(sketch, view, callout, callout.labels[i], taken);
      if (place) draw(sketch, callout, callout.labels[i], *place);
    }
    if (!place) {
      trial.left.push_back(callout);
      continue;
    }
    taken.push_back(place->straight);
    taken.push_back(place->slant);
    trial.farthest = std::max(trial.farthest, lengthOf(place->slant));
  }
  return trial;
}

}  // namespace

std::vector<Callout> drawCallouts(Sketch& sketch, const WallView& view, const std::vector<Callout>& callouts) {
  std::size_t ways = 1;
  for (const Callout& callout : callouts) ways = std::max(ways, callout.labels.size());
  std::optional<Sketch> best;
  Trial bestTrial;
  for (std::size_t fullest = 0; fullest < ways; ++fullest) {
    Sketch drawn = sketch;
    Trial trial = drawAll(drawn, view, callouts, fullest);
    const bool good = trial.left.empty() && trial.farthest <= nearEnough;
    if (!best || better(trial, bestTrial)) {
      best = std::move(drawn);
      bestTrial = std::move(trial);
    }
    if (good) break;
  }
  sketch = std::move(*best);
  return bestTrial.left;
}

}  // namespace ribwright
