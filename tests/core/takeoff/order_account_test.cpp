// Where the steel goes that is bought, worked by hand in square inches.
#include "core/takeoff/order_account.h"

#include <catch2/catch.hpp>

#include "walls_by_hand.h"

namespace ribwright {
namespace {

Area square(Length a, Length b) { return a * b; }
Area squareInches(int count) { return square(inch(1), inch(1)) * count; }

// One sheet, 120 in high, metal from -1-1/2 to 36-3/4 in: a window 10 x 40 in within it, and a door 84 in high over its
// last 6-3/4 in.
WallLayout wallWithHoles() {
  WallLayout wall = wallOf("A", 1);
  Piece& piece = hangWhole(wall, inch(120));
  piece.cells = {{piece.left, inch(10), {}, {}, inch(120), inch(120)},
                 {inch(10), inch(20), {}, {}, inch(40), inch(40)},
                 {inch(10), inch(20), inch(80), inch(80), inch(120), inch(120)},
                 {inch(20), inch(30), {}, {}, inch(120), inch(120)},
                 {inch(30), piece.right, inch(84), inch(84), inch(120), inch(120)}};
  for (const Cell& cell : piece.cells) piece.area += cell.area();
  piece.kind = PieceKind::Notched;
  wall.runs[0].bottom = HeightLine::level({});
  wall.runs[0].top = HeightLine::level(inch(120));
  CutRegion window, door;
  window.left = inch(10), window.right = inch(20), window.bottom = inch(40), window.top = inch(80);
  door.left = inch(30), door.right = inch(66), door.top = inch(84), door.reachesFloor = true;
  window.lower = HeightLine::level(inch(40)), window.upper = HeightLine::level(inch(80));
  door.lower = HeightLine::level({}), door.upper = HeightLine::level(inch(84));
  wall.cuts = {window, door};
  return wall;
}

TEST_CASE("Cut-outs are what openings take, within a piece and from its ends") {
  const WallLayout wall = wallWithHoles();
  CHECK(cutOutsOf(wall, wall.pieces[0]) == squareInches(400) + square(inch(6, 48), inch(84)));
}

TEST_CASE("Where no opening ends the metal the end of a column is no cut-out") {
  WallLayout wall = wallWithHoles();
  wall.cuts.pop_back();
  CHECK(cutOutsOf(wall, wall.pieces[0]) == squareInches(400));
}

TEST_CASE("An opening through the top counts up to the wall's top and no farther") {
  WallLayout wall = wallOf("A", 1);
  Piece& piece = hangWhole(wall, inch(120));
  piece.cells = {{piece.left, inch(20), {}, {}, inch(120), inch(100)},
                 {inch(20), piece.right, {}, {}, inch(60), inch(60)}};
  wall.runs[0].bottom = HeightLine::level({});
  wall.runs[0].top = HeightLine({{inch(-1, -32), inch(120)}, {inch(20), inch(100)}, {inch(60), inch(100)}});
  CutRegion cut;
  cut.left = inch(20), cut.right = inch(50), cut.bottom = inch(60), cut.top = inch(110);
  cut.lower = HeightLine::level(inch(60)), cut.upper = HeightLine::level(inch(110));
  wall.cuts = {cut};
  CHECK(cutOutsOf(wall, piece) == square(inch(16, 48), inch(40)));
}

// Ordered at 160 in: 40 in are left, of which a kerf is lost and 39-7/8 kept.
TEST_CASE("Bought is pieces, cut-outs, drops, waste and spares") {
  Job job = jobOf({{"A", "sand"}});
  job.profiles[0].lengths.stocked = {inch(160)};
  job.settings.spares.fewest = 1;
  const WallLayout wall = wallWithHoles();
  const SheetOrder order = sheetOrder(job, {&wall});
  const OrderAccount account = orderAccount(order, {&wall});
  const Length width = inch(38, 16);
  const SteelAccount& total = account.total;
  CHECK(total.bought == square(width, inch(160)) * 2);
  CHECK(total.spares == square(width, inch(160)));
  CHECK(total.drops == square(width, inch(39, 56)));
  CHECK(total.waste == square(width, inch(0, 8)));
  CHECK(total.bought == total.pieces + total.cutOuts + total.drops + total.waste + total.spares);
  // Of 160 in, an eighth.
  CHECK(total.wasteKilograms == Approx(order.lines[0].kilogramsOfOne() / 1280));
  CHECK(account.lines == std::vector<SteelAccount>{total});
  CHECK(account.classes.at(order.lines[0].sheet()) == total);
  CHECK(account.walls.at("A").spares == Area());
  CHECK(account.walls.at("").bought == total.spares);
  CHECK(account.kinds.at(AccountKind::Notched).waste == total.waste);
  CHECK(account.kinds.at(AccountKind::Spare).bought == total.spares);
}

TEST_CASE("What several pieces come from has no kind of theirs") {
  Job job = jobOf({{"A", "sand"}});
  job.profiles[0].lengths.stocked = {inch(160)};
  WallLayout wall = wallOf("A", 2);
  hangWhole(wall, inch(70)).area = square(inch(38, 16), inch(70));
  hangWhole(wall, inch(80)).area = square(inch(38, 16), inch(80));
  const OrderAccount account = orderAccount(sheetOrder(job, {&wall}), {&wall});
  REQUIRE(account.kinds.size() == 1);
  CHECK(account.kinds.at(AccountKind::Shared).pieces == square(inch(38, 16), inch(150)));
  CHECK(account.total.waste == square(inch(38, 16), inch(10)));
}

}  // namespace
}  // namespace ribwright
