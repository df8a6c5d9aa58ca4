// Gross section properties by line elements, against sections cut into small squares of metal and against each other.
#include "core/fastening/member_properties.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <functional>

#include "example_screws.h"

using namespace ribwright;
using namespace ribwright::examples;

namespace {

using Shape = Member::Shape;

Member member(Shape shape, double depth, double flange, double lip, double t, double radius) {
  const auto mm = [](double size) { return Length::nanometres(std::llround(size * 1e6)); };
  return {"m", shape, mm(depth), mm(flange), mm(lip), mm(t), mm(radius)};
}

struct Sums {
  double area = 0, x = 0, y = 0, xx = 0, yy = 0, xy = 0;
};

using Inside = std::function<bool(double, double)>;

// Squares of `step` whose middles are metal.
Sums squares(const Inside& metal, double left, double right, double low, double high, double step) {
  Sums sums;
  const double each = step * step;
  for (double x = left + step / 2; x < right; x += step) {
    for (double y = low + step / 2; y < high; y += step) {
      if (!metal(x, y)) continue;
      sums.area += each;
      sums.x += each * x;
      sums.y += each * y;
      sums.xx += each * x * x;
      sums.yy += each * y * y;
      sums.xy += each * x * y;
    }
  }
  return sums;
}

// A channel-like section from its outline: within the rounded box of outside radius r + t, outside the box that is t
// smaller all round, and with what stands open taken away.
bool inRounded(double x, double y, double left, double right, double low, double high, double radius) {
  if (x < left || x > right || y < low || y > high) return false;
  const double nearX = std::clamp(x, left + radius, right - radius), nearY = std::clamp(y, low + radius, high - radius);
  return std::hypot(x - nearX, y - nearY) <= radius || (nearX == x || nearY == y);
}

bool inCee(double x, double y, const Member& m) {
  const double d = m.depth.inMillimetres(), b = m.flange.inMillimetres(), c = m.lip.inMillimetres();
  const double t = m.thickness.inMillimetres(), r = m.bendRadius.inMillimetres();
  if (!inRounded(x, y, 0, b, 0, d, r + t) || inRounded(x, y, t, b - t, t, d - t, r)) return false;
  return x < b - t - r || y <= c || y >= d - c;
}

// Its upper half is the cee's; the lower half is the cee's seen in a mirror at the web's middle.
bool inZed(double x, double y, const Member& m) {
  const double d = m.depth.inMillimetres(), t = m.thickness.inMillimetres();
  return y > d / 2 ? inCee(x, y, m) : inCee(t - x, y, m);
}

void compare(const MemberProperties& found, const Sums& sums, double within) {
  const double x = sums.x / sums.area, y = sums.y / sums.area;
  const double strong = sums.yy - sums.area * y * y, weak = sums.xx - sums.area * x * x;
  CHECK(found.area == Approx(sums.area).epsilon(within));
  CHECK(found.centroidX == Approx(x).epsilon(within).margin(0.02));
  CHECK(found.centroidY == Approx(y).epsilon(within));
  CHECK(found.strong == Approx(strong).epsilon(within));
  CHECK(found.weak == Approx(weak).epsilon(within));
  CHECK(found.product == Approx(sums.xy - sums.area * x * y).epsilon(within).margin(1e-4 * strong));
}

}  // namespace

TEST_CASE("a cee by line elements is the cee cut into squares") {
  const Member cee = member(Shape::Cee, 200, 65, 20, 2, 3);
  const auto metal = [&](double x, double y) { return inCee(x, y, cee); };
  compare(memberProperties(cee).value(), squares(metal, 0, 65, 0, 200, 0.05), 0.001);
}

TEST_CASE("a zed by line elements is the zed cut into squares, its product of inertia too") {
  const Member stout = member(Shape::Zed, 150, 60, 18, 3, 5);
  const auto metal = [&](double x, double y) { return inZed(x, y, stout); };
  const MemberProperties found = memberProperties(stout).value();
  compare(found, squares(metal, -60, 60, 0, 150, 0.05), 0.001);
  CHECK(found.product > 0.1 * found.strong);
}

// An angle whose legs meet square: two rectangles, worked out by hand below as squares.
TEST_CASE("an angle by line elements is the angle cut into squares") {
  const Member angle = member(Shape::Angle, 80, 50, 0, 4, 0.001);
  const auto metal = [](double x, double y) { return x < 4 || y > 76; };
  compare(memberProperties(angle).value(), squares(metal, 0, 50, 0, 80, 0.05), 0.015);
}

TEST_CASE("a wide flange's flanges and web are three rectangles") {
  const Member wide = member(Shape::WideFlange, 200, 100, 0, 6, 0);
  const auto metal = [](double x, double y) { return y < 6 || y > 194 || std::abs(x - 50) < 3; };
  const MemberProperties found = memberProperties(wide).value();
  compare(found, squares(metal, 0, 100, 0, 200, 0.05), 0.001);
  CHECK(found.product == Approx(0).margin(1e-3));
}

TEST_CASE("a hat's feet turn away from its crown, and it has no product of inertia") {
  const Member hat = member(Shape::Hat, 60, 50, 25, 2, 0.001);
  const auto metal = [](double x, double y) {
    if (y > 58) return x > 0 && x < 50;
    if (y < 2) return (x > -23 && x < 2) || (x > 48 && x < 73);
    return (x > 0 && x < 2) || (x > 48 && x < 50);
  };
  const MemberProperties found = memberProperties(hat).value();
  compare(found, squares(metal, -24, 74, 0, 60, 0.05), 0.02);
  CHECK(found.centroidX == Approx(25));
  CHECK(found.product == Approx(0).margin(1e-3));
}

// A cee and a zed of the same sizes are the same strips, but the zed's lie farther apart across its web.
TEST_CASE("a zed weighs what its cee weighs, has its strong axis, and sags more under its own weight than Iy says") {
  const MemberProperties cee = memberProperties(member(Shape::Cee, 203.2, 63.5, 22.225, 1.905, 4.7625)).value();
  const MemberProperties zed = memberProperties(member(Shape::Zed, 203.2, 63.5, 22.225, 1.905, 4.7625)).value();
  CHECK(zed.area == Approx(cee.area));
  CHECK(zed.strong == Approx(cee.strong));
  CHECK(zed.weak > cee.weak);
  CHECK(inertiaUnderOwnWeight(cee) == Approx(cee.weak));
  CHECK(inertiaUnderOwnWeight(zed) < 0.8 * zed.weak);
}

// With the two principal inertias and the load split along them, the same deflection comes about in the load's
// direction.
TEST_CASE("a load off the principal axes bends both, and what it bends against is (Ix Iy - Ixy^2) / Ix") {
  const MemberProperties zed = memberProperties(examples::zed()).value();
  const double mean = (zed.strong + zed.weak) / 2, apart = std::hypot((zed.strong - zed.weak) / 2, zed.product);
  const double angle = std::atan2(2 * zed.product, zed.strong - zed.weak) / 2;
  const double most = mean + apart, least = mean - apart;
  const double soft = std::cos(angle) * std::cos(angle) / least + std::sin(angle) * std::sin(angle) / most;
  CHECK(inertiaUnderOwnWeight(zed) == Approx(1 / soft));
}

TEST_CASE("weight is 7850 kg/m3 times the area") {
  const MemberProperties found = memberProperties(zed()).value();
  CHECK(found.kilogramsPerMetre == Approx(found.area * 7850e-6));
}

TEST_CASE("bends that do not fit between depth, flange and lip give nothing") {
  CHECK_FALSE(memberProperties(member(Shape::Zed, 200, 65, 4, 2, 3)));  // the bend alone takes 5 mm of the lip
  CHECK(memberProperties(member(Shape::Zed, 200, 65, 5.1, 2, 3)));
  CHECK_FALSE(memberProperties(member(Shape::Cee, 200, 9.9, 5.1, 2, 3)));
  CHECK_FALSE(memberProperties(member(Shape::WideFlange, 12, 100, 0, 6, 0)));
}
