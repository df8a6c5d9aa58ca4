#include "core/takeoff/bundles.h"

#include <catch2/catch.hpp>

#include "walls_by_hand.h"

namespace ribwright {
namespace {

using Names = std::vector<std::string>;

std::vector<Bundle> packed(const Job& job, const std::vector<const WallLayout*>& walls) {
  return bundlesOf(job, walls, sheetOrder(job, walls));
}

// The marks of each bundle, from the top.
std::vector<Names> marksOf(const Job& job, const std::vector<const WallLayout*>& walls) {
  const SheetOrder order = sheetOrder(job, walls);
  std::vector<Names> all;
  for (const Bundle& bundle : bundlesOf(job, walls, order)) {
    Names& marks = all.emplace_back();
    for (const BundledSheet& one : bundle.sheets) {
      const OrderLine& line = order.lines[static_cast<std::size_t>(one.line)];
      marks.push_back(one.sheet < 0 ? "spare" : line.marks[static_cast<std::size_t>(one.sheet - line.firstSheet)]);
    }
  }
  return all;
}

WallLayout wallOfLengths(const std::string& letter, const std::vector<int>& lengths) {
  WallLayout wall = wallOf(letter, static_cast<int>(lengths.size()));
  for (const int length : lengths) hangWhole(wall, inch(length));
  return wall;
}

TEST_CASE("The sheet hung first lies on top, whatever its length") {
  const Job job = jobOf({{"A", "sand"}});
  const WallLayout wall = wallOfLengths("A", {100, 140, 120});
  CHECK(marksOf(job, {&wall}) == std::vector<Names>{{"A1", "A2", "A3"}});
}

TEST_CASE("A bundle is closed before it has too many sheets") {
  Job job = jobOf({{"A", "sand"}});
  job.settings.bundles.mostSheets = 2;
  const WallLayout wall = wallOfLengths("A", {100, 100, 100, 100, 100});
  CHECK(marksOf(job, {&wall}) == std::vector<Names>{{"A1", "A2"}, {"A3", "A4"}, {"A5"}});
}

TEST_CASE("A bundle is closed before it is too heavy; a sheet too heavy by itself lies alone") {
  Job job = jobOf({{"A", "sand"}});
  const WallLayout wall = wallOfLengths("A", {100, 100, 100, 300, 100});
  const double one = packed(job, {&wall})[0].kilograms / 4;  // 100 in
  job.settings.bundles.heaviestKilograms = static_cast<int>(one * 2.5);
  CHECK(marksOf(job, {&wall}) == std::vector<Names>{{"A1", "A2"}, {"A3", "A5"}, {"A4"}});
}

TEST_CASE("Lengths in a bundle differ by no more than its spread") {
  Job job = jobOf({{"A", "sand"}});
  job.settings.bundles.lengthSpread = inch(20);
  const WallLayout wall = wallOfLengths("A", {110, 120, 100, 99, 119});
  CHECK(marksOf(job, {&wall}) == std::vector<Names>{{"A1", "A2", "A3"}, {"A4", "A5"}});
}

TEST_CASE("Short sheets between long ones have a bundle of their own, and do not part the long ones") {
  Job job = jobOf({{"A", "sand"}});
  job.settings.bundles.lengthSpread = inch(20);
  const WallLayout wall = wallOfLengths("A", {110, 40, 120, 45, 100, 41});
  CHECK(marksOf(job, {&wall}) == std::vector<Names>{{"A1", "A3", "A5"}, {"A2", "A4", "A6"}});
  job.settings.bundles.mostSheets = 2;
  CHECK(marksOf(job, {&wall}) == std::vector<Names>{{"A1", "A3"}, {"A2", "A4"}, {"A5"}, {"A6"}});
}

TEST_CASE("Walls and classes of sheets are not mixed") {
  const Job job = jobOf({{"A", "sand"}, {"B", "sand"}});
  WallLayout a = wallOfLengths("A", {100, 100, 100});
  const WallLayout b = wallOfLengths("B", {100});
  a.runs[0].modules[1].translucent = true;
  const auto bundles = packed(job, {&a, &b});
  CHECK(marksOf(job, {&a, &b}) == std::vector<Names>{{"A1", "A3"}, {"A2"}, {"B1"}});
  CHECK(bundles[0].name == "A-1");
  CHECK(bundles[1].name == "A-2");
  CHECK(bundles[2].name == "B-1");
}

TEST_CASE("A bundle is set down before the sheets that are in it") {
  Job job = jobOf({{"A", "sand"}});
  job.settings.bundles.mostSheets = 2;
  const WallLayout wall = wallOfLengths("A", {100, 100, 100});
  const auto bundles = packed(job, {&wall});
  CHECK(bundles[0].setDownFrom == inch(-1, -32));
  CHECK(bundles[0].setDownTo == inch(72, 48));
  CHECK(bundles[1].setDownFrom == inch(70, 32));
  CHECK(bundles[1].setDownTo == inch(108, 48));
}

TEST_CASE("Spares lie apart, the longest at the bottom") {
  Job job = jobOf({{"A", "sand"}});
  job.settings.spares.fewest = 1;
  const WallLayout wall = wallOfLengths("A", {100, 140});
  const auto bundles = packed(job, {&wall});
  REQUIRE(bundles.size() == 2);
  CHECK(bundles[1].name == "spare-1");
  CHECK(bundles[1].wall.empty());
  CHECK(bundles[1].sheets == std::vector<BundledSheet>{{1, -1}, {0, -1}});
  CHECK(bundles[1].longest == inch(140));
  CHECK(bundles[1].shortest == inch(100));
}

// Longest at the bottom of the class, A2 and B1 out of one sheet: hung first is A2, whichever is the longer.
TEST_CASE("A sheet that several pieces come from goes with the wall of the first") {
  Job job = jobOf({{"A", "sand"}, {"B", "sand"}});
  job.profiles[0].lengths.stocked = {inch(120)};
  job.settings.kerf = Length();
  const WallLayout a = wallOfLengths("A", {120, 40}), b = wallOfLengths("B", {80, 120});
  CHECK(marksOf(job, {&a, &b}) == std::vector<Names>{{"A1", "B1+A2"}, {"B2"}});
}

}  // namespace
}  // namespace ribwright
