#include <catch2/catch.hpp>

#include <chrono>

#include "core/takeoff/sheet_order.h"
#include "walls_by_hand.h"

namespace ribwright {
namespace {

std::vector<Length> lengthsOf(const SheetOrder& order) {
  std::vector<Length> lengths;
  for (const OrderLine& line : order.lines) lengths.push_back(line.length);
  return lengths;
}

// The tables' contract: area = cover x length x quantity.
TEST_CASE("Sheets of one length are one line, with the longest first") {
  const Job job = jobOf({{"A", "sand"}});
  WallLayout wall = wallOf("A", 4);
  for (const int length : {120, 144, 120, 130}) hangWhole(wall, inch(length));
  const SheetOrder order = sheetOrder(job, {&wall});
  CHECK(lengthsOf(order) == std::vector<Length>{inch(144), inch(130), inch(120)});
  REQUIRE(order.lines.size() == 3);
  const OrderLine& line = order.lines[2];
  CHECK(line.line == 3);
  CHECK(line.profile == "rib-36");
  CHECK(line.colour == "sand");
  CHECK_FALSE(line.translucent);
  CHECK(line.thickness == Length::nanometres(500'000));
  CHECK(line.quantity() == 2);
  CHECK(line.marks == std::vector<std::string>{"A1", "A3"});
  CHECK(line.coverArea == Length::feet(3) * Length::feet(20));  // 3 ft x 10 ft x 2
}

// The trade's rules: weight = developed width x base thickness x 7850 kg/m3 + coating. 40 in x 10 ft x (0.5 mm x 7850 +
// 0.275) kg/m2 = 1.016 m x 3.048 m x 4.2 kg/m2 = 13.006 kg a sheet.
TEST_CASE("A line weighs its sheets by developed width, base thickness and coating") {
  Job job = jobOf({{"A", "sand"}});
  WallLayout wall = wallOf("A", 3);
  for (int i = 0; i < 3; ++i) hangWhole(wall, inch(120));
  CHECK(sheetOrder(job, {&wall}).lines.front().kilograms == Approx(3 * 1.016 * 3.048 * 4.2).epsilon(1e-12));
  job.walls[0].bands[0].thickness = Length::nanometres(700'000);
  CHECK(sheetOrder(job, {&wall}).lines.front().thickness == Length::nanometres(700'000));
  CHECK(sheetOrder(job, {&wall}).lines.front().kilograms == Approx(3 * 1.016 * 3.048 * (5.495 + 0.275)).epsilon(1e-12));
}

TEST_CASE("A rip is bought as a whole sheet of its blank's length") {
  const Job job = jobOf({{"A", "sand"}});
  WallLayout wall = wallOf("A", 1);
  Piece& rip = hangWhole(wall, inch(119, 32));
  rip.right = inch(12);
  rip.rings = {box(rip.left, rip.right, rip.bottom, rip.top)};
  rip.rip = true;
  rip.kind = PieceKind::Rip;
  rip.blankLength = inch(120);
  const OrderLine line = sheetOrder(job, {&wall}).lines.front();
  CHECK(line.length == inch(120));
  CHECK(line.coverArea == inch(36) * inch(120));
  CHECK(line.kilograms == Approx(1.016 * 3.048 * 4.2).epsilon(1e-12));
}

// By profile, then thickness, then colour, then steel before translucent, then length falling.
TEST_CASE("Lines stand by profile, thickness, colour, translucency, and then the longest first") {
  Job job = jobOf({{"A", "white"}, {"B", "sand"}, {"C", "white"}, {"D", "white"}});
  job.profiles.push_back(ribbed("corrugated-24"));
  job.walls[2].bands[0].thickness = Length::nanometres(400'000);
  job.walls[3].bands[0].profile = "corrugated-24";
  std::vector<WallLayout> walls;
  for (const char* letter : {"A", "B", "C", "D"}) {
    WallLayout wall = wallOf(letter, 2);
    hangWhole(wall, inch(100));
    hangWhole(wall, inch(200));
    walls.push_back(wall);
  }
  const SheetOrder order = sheetOrder(job, {&walls[0], &walls[1], &walls[2], &walls[3]});
  std::vector<std::string> stand;
  for (const OrderLine& line : order.lines) stand.push_back(line.marks.front());
  CHECK(stand == std::vector<std::string>{"D2", "D1", "C2", "C1", "B2", "B1", "A2", "A1"});
  for (std::size_t i = 0; i < order.lines.size(); ++i) CHECK(order.lines[i].line == static_cast<int>(i) + 1);
}

TEST_CASE("Marks stand in hanging order, over the walls in the order they are given") {
  const Job job = jobOf({{"A", "sand"}, {"B", "sand"}});
  WallLayout a = wallOf("A", 2), b = wallOf("B", 2, Hand::RightToLeft);
  for (WallLayout* wall : {&a, &b}) {
    hangWhole(*wall, inch(120));
    hangWhole(*wall, inch(120));
  }
  CHECK(sheetOrder(job, {&a, &b}).lines.front().marks == std::vector<std::string>{"A1", "A2", "B1", "B2"});
  CHECK(sheetOrder(job, {&b, &a}).lines.front().marks == std::vector<std::string>{"B1", "B2", "A1", "A2"});
}

// The trade's rules: single modules may be translucent: own order line.
TEST_CASE("Translucent sheets have a line of their own, without colour or weight, whatever they hang among") {
  const Job job = jobOf({{"A", "sand"}, {"B", "white"}});
  WallLayout a = wallOf("A", 2), b = wallOf("B", 2);
  for (WallLayout* wall : {&a, &b}) {
    hangWhole(*wall, inch(120));
    hangWhole(*wall, inch(120));
    wall->runs[0].modules[1].translucent = true;
  }
  const SheetOrder order = sheetOrder(job, {&a, &b});
  REQUIRE(order.lines.size() == 3);
  CHECK(order.lines[0].translucent);
  CHECK(order.lines[0].colour.empty());
  CHECK(order.lines[0].marks == std::vector<std::string>{"A2", "B2"});
  CHECK(order.lines[0].kilograms == 0);
  CHECK(order.lines[0].coverArea == Length::feet(3) * Length::feet(20));
  CHECK(order.lines[1].marks == std::vector<std::string>{"A1"});
  CHECK(order.lines[2].marks == std::vector<std::string>{"B1"});
}

TEST_CASE("Two bands of a wall are ordered each by its own profile and colour") {
  Job job = jobOf({{"A", "sand"}});
  job.profiles.push_back(ribbed("corrugated-24"));
  job.profiles.back().cover = inch(24);
  job.walls[0].bands.push_back(band("brown", "corrugated-24"));
  WallLayout wall = wallOf("A", 2);
  wall.runs.push_back(wall.runs.front());
  wall.runs[1].band = 1;
  hangWhole(wall, inch(40));
  hangWhole(wall, inch(80)).run = 1;
  const SheetOrder order = sheetOrder(job, {&wall});
  REQUIRE(order.lines.size() == 2);
  CHECK(order.lines[0].profile == "corrugated-24");
  CHECK(order.lines[0].colour == "brown");
  CHECK(order.lines[0].coverArea == inch(24) * inch(80));
  CHECK(order.lines[1].colour == "sand");
}

TEST_CASE("Nothing to hang is nothing to order") {
  const Job job = jobOf({{"A", "sand"}});
  const WallLayout wall = wallOf("A", 0);
  const SheetOrder order = sheetOrder(job, {&wall});
  CHECK(order.lines.empty());
  CHECK(order.codes == std::vector<std::vector<std::string>>{{}});
  CHECK(sheetOrder(job, {}).codes.empty());
}

TEST_CASE("A layout of another job is refused") {
  Job job = jobOf({{"A", "sand"}});
  WallLayout wall = wallOf("A", 1);
  hangWhole(wall, inch(120));
  job.walls[0].letter = "B";
  CHECK_THROWS_AS(sheetOrder(job, {&wall}), std::invalid_argument);
  job.walls[0].letter = "A";
  job.profiles.clear();
  CHECK_THROWS_AS(sheetOrder(job, {&wall}), std::invalid_argument);
}

double secondsFor(int sheets) {
  const Job job = jobOf({{"A", "sand"}});
  WallLayout wall = wallOf("A", sheets);
  for (int i = 0; i < sheets; ++i) {
    Piece& piece = hangWhole(wall, inch(120 + i % 50));
    notchLeadingEdge(piece, Hand::LeftToRight, inch(1, i % 2111), inch(10), inch(20));  // no two alike
  }
  const auto from = std::chrono::steady_clock::now();
  const SheetOrder order = sheetOrder(job, {&wall});
  const std::chrono::duration<double> took = std::chrono::steady_clock::now() - from;
  REQUIRE(order.codes.front().size() == static_cast<std::size_t>(sheets));
  return took.count();
}

// A bound far above what a linear way takes (about a tenth of a second on a slow machine) and far below what comparing
// each sheet with each other would.
TEST_CASE("Fifty thousand sheets are ordered without comparing each with each") { CHECK(secondsFor(50'000) < 5.0); }

}  // namespace
}  // namespace ribwright
