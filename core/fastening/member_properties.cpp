#include "core/fastening/member_properties.h"

#include <cmath>
#include <numbers>
#include <vector>

#include "core/job/sheet_weight.h"

namespace ribwright {
namespace {

using std::numbers::pi;

struct Point {
  double x, y;
};

// Length and moments of the middle line's parts, each t thick, about the origin; moments are divided by t.
struct LineSums {
  double t = 0;
  double length = 0, x = 0, y = 0, xx = 0, yy = 0, xy = 0;

  // Adds a part by its centroid and its own moments.
  void add(double partLength, Point centre, double ownXX, double ownYY, double ownXY) {
    length += partLength;
    x += partLength * centre.x;
    y += partLength * centre.y;
    xx += ownXX + partLength * centre.x * centre.x;
    yy += ownYY + partLength * centre.y * centre.y;
    xy += ownXY + partLength * centre.x * centre.y;
  }

  // A rectangle along one of the axes.
  void addStraight(Point a, Point b) {
    const double dx = std::abs(b.x - a.x), dy = std::abs(b.y - a.y), size = dx + dy;
    const double across = size * t * t / 12, along = size * size * size / 12;
    add(size, {(a.x + b.x) / 2, (a.y + b.y) / 2}, dx > 0 ? along : across, dx > 0 ? across : along, 0);
  }

  // A quarter circle about `centre`; it bulges toward (sideX, sideY), each +1 or -1.
  void addQuarter(Point centre, double radius, double sideX, double sideY) {
    const double arc = radius * pi / 2, off = 2 * radius / pi, cubed = radius * radius * radius;
    const double own = cubed * pi / 4 - arc * off * off;
    const double mixed = sideX * sideY * (cubed / 2 - arc * off * off);
    add(arc, {centre.x + sideX * off, centre.y + sideY * off}, own, own, mixed);
  }
};

Point plus(Point a, double times, Point b) { return {a.x + times * b.x, a.y + times * b.y}; }

double distanceAlongAxes(Point a, Point b) { return std::abs(b.x - a.x) + std::abs(b.y - a.y); }

// Along one of the axes: its other part is exactly 0.
Point direction(Point from, Point to) {
  const double size = distanceAlongAxes(from, to);
  return {(to.x - from.x) / size, (to.y - from.y) / size};
}

// A middle line bent square at each inner point. False when its bends do not fit between its points.
bool addBent(LineSums& sums, const std::vector<Point>& line, double radius) {
  for (std::size_t i = 0; i + 1 < line.size(); ++i) {
    const bool first = i == 0, last = i + 2 == line.size();
    const double before = first ? 0 : radius, behind = last ? 0 : radius;
    const double size = distanceAlongAxes(line[i], line[i + 1]);
    if (size <= 0 || size < before + behind) return false;
    const Point along = direction(line[i], line[i + 1]);
    sums.addStraight(plus(line[i], before, along), plus(line[i + 1], -behind, along));
    if (last) continue;
    const Point next = direction(line[i + 1], line[i + 2]),
                centre = plus(plus(line[i + 1], -radius, along), radius, next);
    sums.addQuarter(centre, radius, along.x - next.x, along.y - next.y);
  }
  return true;
}

// Sizes in mm.
struct Sizes {
  double depth, flange, lip, t;
  explicit Sizes(const Member& member)
      : depth(member.depth.inMillimetres()),
        flange(member.flange.inMillimetres()),
        lip(member.lip.inMillimetres()),
        t(member.thickness.inMillimetres()) {}
};

// From the web's middle line (x = web) out along a flange whose middle line lies at y, with a lip that points to
// `inward` (+1: up, -1: down).
std::vector<Point> flangeLine(const Sizes& s, double web, double y, double outward, double inward) {
  const double end = web + outward * (s.flange - s.t / 2);
  if (s.lip <= 0) return {{end, y}};
  const double bent = end - outward * s.t / 2;
  return {{bent, y}, {bent, y + inward * (s.lip - s.t / 2)}};
}

// Inner flange's free edge, web, outer flange's free edge; the inner flange points to `inner`, the outer to +x.
std::vector<Point> webLine(const Sizes& s, double inner) {
  const double web = s.t / 2, low = s.t / 2, high = s.depth - s.t / 2;
  const std::vector<Point> first = flangeLine(s, web, low, inner, 1), second = flangeLine(s, web, high, 1, -1);
  std::vector<Point> line(first.rbegin(), first.rend());
  line.push_back({web, low});
  line.push_back({web, high});
  line.insert(line.end(), second.begin(), second.end());
  return line;
}

std::vector<Point> angleLine(const Sizes& s) {
  const std::vector<Point> leg = flangeLine(s, s.t / 2, s.depth - s.t / 2, 1, -1);
  std::vector<Point> line = {{s.t / 2, 0}, {s.t / 2, s.depth - s.t / 2}};
  line.insert(line.end(), leg.begin(), leg.end());
  return line;
}

std::vector<Point> hatLine(const Sizes& s) {
  const double left = s.t / 2, right = s.flange - s.t / 2, foot = s.t / 2, crown = s.depth - s.t / 2;
  if (s.lip <= 0) return {{left, 0}, {left, crown}, {right, crown}, {right, 0}};
  const double out = s.lip - s.t / 2;
  return {{left - out, foot}, {left, foot}, {left, crown}, {right, crown}, {right, foot}, {right + out, foot}};
}

bool addWideFlange(LineSums& sums, const Sizes& s) {
  if (s.depth <= 2 * s.t || s.flange <= s.t) return false;
  for (const double y : {s.t / 2, s.depth - s.t / 2}) sums.addStraight({0, y}, {s.flange, y});
  sums.addStraight({s.flange / 2, s.t}, {s.flange / 2, s.depth - s.t});
  return true;
}

bool addSection(LineSums& sums, const Member& member) {
  const Sizes sizes(member);
  const double radius = member.bendRadius.inMillimetres() + sizes.t / 2;
  switch (member.shape) {
    case Member::Shape::Zed:
      return addBent(sums, webLine(sizes, -1), radius);
    case Member::Shape::Cee:
      return addBent(sums, webLine(sizes, 1), radius);
    case Member::Shape::Angle:
      return addBent(sums, angleLine(sizes), radius);
    case Member::Shape::Hat:
      return addBent(sums, hatLine(sizes), radius);
    case Member::Shape::WideFlange:
      return addWideFlange(sums, sizes);
  }
  return false;
}

constexpr double newtonsPerKsi = 6.894757293168361;  // N/mm2: 1000 lbf/in2

}  // namespace

std::optional<MemberProperties> memberProperties(const Member& member) {
  const double t = member.thickness.inMillimetres();
  LineSums sums;
  sums.t = t;
  if (t <= 0 || !addSection(sums, member)) return std::nullopt;
  MemberProperties found;
  found.area = sums.length * t;
  found.kilogramsPerMetre = found.area * 1e-6 * steelKilogramsPerCubicMetre;
  found.centroidX = sums.x / sums.length;
  found.centroidY = sums.y / sums.length;
  found.strong = t * (sums.yy - sums.length * found.centroidY * found.centroidY);
  found.weak = t * (sums.xx - sums.length * found.centroidX * found.centroidX);
  found.product = t * (sums.xy - sums.length * found.centroidX * found.centroidY);
  return found;
}

double inertiaUnderOwnWeight(const MemberProperties& properties) {
  return properties.weak - properties.product * properties.product / properties.strong;
}

double modulusOf(const Member& member, ModulusBy by) {
  if (by == ModulusBy::European) return 210'000;
  return (member.shape == Member::Shape::WideFlange ? 29'000 : 29'500) * newtonsPerKsi;
}

}  // namespace ribwright
