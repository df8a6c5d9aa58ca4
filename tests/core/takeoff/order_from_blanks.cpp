// Blanks become sheets of lengths that are sold: chosen, off the shelf, with spares.
#include <catch2/catch.hpp>

#include "core/cutting/share_blanks.h"
#include "core/takeoff/class_tradeoff.h"
#include "core/takeoff/sheet_order.h"
#include "core/takeoff/sold_lengths.h"
#include "walls_by_hand.h"

namespace ribwright {
namespace {

using Texts = std::vector<std::string>;

WallLayout wallOfLengths(const std::vector<int>& lengths) {
  WallLayout wall = wallOf("A", static_cast<int>(lengths.size()));
  for (const int length : lengths) hangWhole(wall, inch(length));
  return wall;
}

std::vector<std::pair<Length, int>> linesOf(const SheetOrder& order) {
  std::vector<std::pair<Length, int>> lines;
  for (const OrderLine& line : order.lines) lines.emplace_back(line.length, line.quantity());
  return lines;
}

using Lines = std::vector<std::pair<Length, int>>;

TEST_CASE("At most K lengths are ordered of a class, and what is cut to length has a letter") {
  Job job = jobOf({{"A", "sand"}});
  job.settings.mostOrderLengths = 2;
  const WallLayout wall = wallOfLengths({120, 110, 100, 100, 100, 120});
  const SheetOrder order = sheetOrder(job, {&wall});
  CHECK(linesOf(order) == Lines{{inch(120), 3}, {inch(100), 3}});
  CHECK(order.lines[0].marks == Texts{"A1", "A2", "A6"});
  CHECK(order.codes[0] == Texts{"1", "1a", "2", "2", "2", "1"});
  CHECK(order.bought(1) == inch(120));
}

TEST_CASE("Lengths to choose from are made: whole steps, none below the shortest; too long counts for nothing") {
  Job job = jobOf({{"A", "sand"}});
  job.profiles[0].lengths = {inch(24), inch(144), inch(10), {}};
  const WallLayout wall = wallOfLengths({12, 95, 100, 200});
  CHECK(linesOf(sheetOrder(job, {&wall})) == Lines{{inch(200), 1}, {inch(100), 2}, {inch(30), 1}});
  job.settings.mostOrderLengths = 9;
  CHECK(linesOf(sheetOrder(job, {&wall})) == Lines{{inch(200), 1}, {inch(100), 2}, {inch(30), 1}});
  job.settings.mostOrderLengths = 1;
  const SheetOrder order = sheetOrder(job, {&wall});
  CHECK(linesOf(order) == Lines{{inch(200), 1}, {inch(100), 3}});
  CHECK(lengthMade(job.profiles[0].lengths, inch(141)) == inch(150));  // 150 is not made, and no shorter one serves
  const auto curves = classTradeOffs(job, order);
  REQUIRE(curves.size() == 1);
  CHECK(curves[0].choices.size() == 2);
  CHECK(curves[0].choices[0].lengths == std::vector<Length>{inch(100)});
}

TEST_CASE("Spares are bought beside the sheets that are hung") {
  Job job = jobOf({{"A", "sand"}});
  job.settings.spares = {10, 2};
  const WallLayout wall = wallOfLengths({100, 100, 100});
  const OrderLine line = sheetOrder(job, {&wall}).lines.front();
  CHECK(line.hung() == 3);
  CHECK(line.spares == 2);
  CHECK(line.quantity() == 5);
  CHECK(line.coverArea == inch(36) * inch(100) * 5);
  CHECK(line.kilograms == Approx(line.kilogramsOfOne() * 5));
}

// 60 + 1/8 + 59 in out of 120; a second 60 needs a sheet of its own.
TEST_CASE("Off the shelf, blanks are cut end to end with a kerf between two") {
  Job job = jobOf({{"A", "sand"}});
  job.profiles[0].lengths.stocked = {inch(120)};
  const WallLayout wall = wallOfLengths({60, 60, 59});
  const SheetOrder order = sheetOrder(job, {&wall});
  CHECK(linesOf(order) == Lines{{inch(120), 2}});
  REQUIRE(order.shelfCuts.size() == 1);
  CHECK(order.shelfCuts[0].plan.proved());
  CHECK(order.lines[0].marks == Texts{"A1+A3", "A2"});
  CHECK(order.places[2].from == inch(60, 8));
  CHECK(order.sheets[0].used == inch(119, 8));
  CHECK(order.sheets[0].drop == Length());
  CHECK(order.sheets[1].drop == inch(60) - inch(0, 8));
  CHECK(order.codes[0] == Texts{"1a", "1a", "1b"});
}

TEST_CASE("Of several lengths on the shelf those are bought that cost least steel") {
  Job job = jobOf({{"A", "sand"}});
  job.profiles[0].lengths.stocked = {inch(240), inch(120), inch(144), inch(120)};
  job.settings.kerf = Length();
  const WallLayout wall = wallOfLengths({144, 130, 100, 90, 20});
  // 144; 240 = 130 + 90 + 20; 120 for 100: 504 in, where 144 + 144 + 120 + 120 would be 528.
  CHECK(linesOf(sheetOrder(job, {&wall})) == Lines{{inch(240), 1}, {inch(144), 1}, {inch(120), 1}});
}

TEST_CASE("What is longer than the shelf is ordered as it is") {
  Job job = jobOf({{"A", "sand"}});
  job.profiles[0].lengths.stocked = {inch(120)};
  const WallLayout wall = wallOfLengths({130, 100});
  const SheetOrder order = sheetOrder(job, {&wall});
  CHECK(linesOf(order) == Lines{{inch(130), 1}, {inch(120), 1}});
  CHECK(order.lines[0].marks == Texts{"A1"});
}

TEST_CASE("Pieces of a shared blank are one sheet, in hanging order of the first") {
  const Job job = jobOf({{"A", "sand"}});
  const WallLayout wall = wallOfLengths({60, 100, 60, 100});
  std::vector<Blank> blanks = shareBlanks(job, {&wall});
  blanks[1].parts.push_back(blanks[2].parts.front());
  blanks[1].parts.back().from = inch(101);
  blanks[1].parts.back().to = inch(161);
  blanks[1].way = Blank::Way::Drop;
  blanks[1].length = inch(161);
  blanks.erase(blanks.begin() + 2);
  const SheetOrder order = sheetOrder(job, {&wall}, blanks);
  CHECK(linesOf(order) == Lines{{inch(161), 1}, {inch(100), 1}, {inch(60), 1}});
  CHECK(order.lines[0].marks == Texts{"A2+A3"});
  CHECK(order.blankOf[0] == std::vector<int>{0, 1, 1, 2});
  CHECK(order.codes[0] == Texts{"3", "1a", "1b", "2"});
}

TEST_CASE("A piece in no blank, or in two, is a mistake of the program") {
  const Job job = jobOf({{"A", "sand"}});
  const WallLayout wall = wallOfLengths({60, 100});
  std::vector<Blank> blanks = shareBlanks(job, {&wall});
  std::vector<Blank> twice = blanks;
  twice.push_back(blanks[0]);
  CHECK_THROWS_AS(sheetOrder(job, {&wall}, twice), std::invalid_argument);
  blanks.pop_back();
  CHECK_THROWS_AS(sheetOrder(job, {&wall}, blanks), std::invalid_argument);
}

TEST_CASE("Kept is what is left at the end beyond a kerf, if it is long enough") {
  Job job = jobOf({{"A", "sand"}});
  job.settings.mostOrderLengths = 1;
  const WallLayout wall = wallOfLengths({100, 76, 75});
  const SheetOrder order = sheetOrder(job, {&wall});
  CHECK(order.sheets[0].drop == Length());
  CHECK(order.sheets[1].drop == Length());  // 24 in less a kerf
  CHECK(order.sheets[2].drop == inch(25) - inch(0, 8));
}

// As it was ordered and cut: of the sheet's pieces the first hangs.
void cutFrom(Job& job, WallLayout& wall, Length length, const std::string& marks) {
  SheetLot lot;
  lot.length = length;
  lot.marks = {marks};
  job.facts.orders = {{"1", {}, {lot}, {}, {}}};
  job.facts.hung = {{wall.pieces[0].mark, {}, {}, {}}};
  wall.runs[0].modules[0].hung = true;
}

// 240 and 104 would do for all three, if A1 were not cut from one sheet with A2 already.
TEST_CASE("What came out of one sheet off the shelf stays with it when one of it hangs") {
  Job job = jobOf({{"A", "sand"}});
  job.settings.kerf = Length();
  job.profiles[0].lengths.stocked = {inch(240), inch(104)};
  WallLayout wall = wallOfLengths({120, 100, 116});
  CHECK(linesOf(sheetOrder(job, {&wall})) == Lines{{inch(240), 1}, {inch(104), 1}});
  cutFrom(job, wall, inch(240), "A1+A2");
  const SheetOrder order = sheetOrder(job, {&wall});
  CHECK(linesOf(order) == Lines{{inch(240), 2}});
  CHECK(order.lines[0].marks == Texts{"A1+A2", "A3"});
}

TEST_CASE("Short pieces that were cut from one sheet stay with it, whatever shares now; not where one has grown") {
  Job job = jobOf({{"A", "sand"}});
  job.settings.kerf = Length();
  job.profiles[0].lengths.shortest = inch(60);
  WallLayout wall = wallOfLengths({18, 20, 18});
  CHECK(linesOf(sheetOrder(job, {&wall})) == Lines{{inch(60), 3}});
  cutFrom(job, wall, inch(60), "A2+A1+A3");
  CHECK(sheetOrder(job, {&wall}).lines[0].marks == Texts{"A2+A1+A3"});
  WallLayout grown = wallOfLengths({18, 40, 18});
  grown.runs[0].modules[0].hung = true;
  CHECK(linesOf(sheetOrder(job, {&grown})) == Lines{{inch(60), 3}});
}

}  // namespace
}  // namespace ribwright
