// What random buildings cost, against rules that can be looked at without reckoning anew: no amount is off its exact
// product by more than half a cent, walls and kinds add up to the cent, two states differ by what their lines differ
// by.
#include <catch2/catch.hpp>
#include <numeric>

#include "core/job/by_id.h"
#include "core/plan/plan.h"
#include "core/takeoff/cost.h"
#include "core/takeoff/order_difference.h"
#include "tests/fuzz/random_building.h"

using namespace ribwright;
using namespace ribwright::fuzz;

namespace {

constexpr int pricedBuildings = 150;

Prices randomPrices(const Job& job, Dice& dice) {
  Prices prices;
  prices.currency = "USD";
  for (const Profile& profile : job.profiles) {
    if (dice.oneIn(6)) continue;
    Price price;
    price.item = profile.id;
    price.per = static_cast<Price::Per>(dice.small(0, 6));
    price.cents = dice.small(0, 100'000);
    prices.items.push_back(price);
    for (const Wall& wall : job.walls) {
      for (const Band& band : wall.bands) {
        if (band.profile != profile.id || dice.oneIn(2)) continue;
        price.colour = dice.oneIn(4) ? "translucent" : band.colour;
        price.cents = dice.small(0, 5000);
        prices.items.push_back(price);
      }
    }
  }
  if (dice.oneIn(2)) prices.items.push_back({Price::What::Cut, "", "", {}, Price::Per::Each, dice.small(0, 900)});
  for (int i = dice.small(0, 2); i > 0; --i)
    prices.items.push_back(
        {Price::What::Charge, "charge " + std::to_string(i), "", {}, Price::Per::Each, dice.small(0, 99'999)});
  return prices;
}

void bought(Job& job, Dice& dice) {
  job.settings.spares = {dice.small(0, 12), dice.small(0, 2)};
  job.settings.sharing.reach = dice.oneIn(2) ? Sharing::Reach::On : Sharing::Reach::Off;
  if (dice.oneIn(3)) {
    for (Profile& profile : job.profiles) profile.lengths.stocked = {Length::feet(12), Length::feet(20)};
  }
  job.prices = randomPrices(job, dice);
}

JobCost costOfJob(const Job& job, const Plan& of) { return costOf(job, of.layouts(), of.order); }

// Cents are the nearest to price x quantity, a tie to the even cent: |2 (cents x below - above)| <= below.
void checkAmount(const CostLine& line) {
  REQUIRE(line.price);
  if (!line.amount || line.price->cents == 0) return;
  Int128 above = line.price->cents, below = 1;
  const Measure& of = line.measure;
  switch (line.thing.what == Price::What::Sheet ? line.price->per : Price::Per::Each) {
    case Price::Per::Each:
      above *= of.pieces;
      break;
    case Price::Per::Foot:
      above *= of.length.nanometres();
      below = 304'800'000;
      break;
    case Price::Per::Metre:
      above *= of.length.nanometres();
      below = 1'000'000'000;
      break;
    case Price::Per::SquareFoot:
      above *= of.area.halfSquareNanometres();
      below = Int128(304'800'000) * 304'800'000 * 2;
      break;
    case Price::Per::SquareMetre:
      above *= of.area.halfSquareNanometres();
      below = Int128(1'000'000'000) * 1'000'000'000 * 2;
      break;
    case Price::Per::Pound:
      above *= Int128(*of.grams) * 100'000;
      below = 45'359'237;
      break;
    case Price::Per::Kilogram:
      above *= *of.grams;
      below = 1000;
      break;
  }
  const Int128 off = 2 * (line.amount->cents() * below - above);
  CHECK((off <= below && off >= -below));
  if (off == below || off == -below) CHECK(line.amount->cents() % 2 == 0);
}

template <class Map>
Money sum(const Map& parts) {
  return std::accumulate(parts.begin(), parts.end(), Money(),
                         [](Money all, const auto& one) { return all + one.second; });
}

}  // namespace

TEST_CASE("costs of random buildings: every amount exact, walls and kinds add up to the cent") {
  int priced = 0, unpriced = 0, cuts = 0, shared = 0;
  for (int index = 0; index < pricedBuildings; ++index) {
    Dice dice(kSeed + 77, index);
    Job job = randomJob(kSeed, index);
    bought(job, dice);
    const Plan made = plan(job);
    const JobCost cost = costOfJob(job, made);
    Money lines;
    for (const CostLine& line : cost.lines) {
      ++(line.amount ? priced : unpriced);
      cuts += line.thing.what == Price::What::Cut;
      if (line.price) checkAmount(line);
      lines += line.amount.value_or(Money());
      CHECK(line.forWaste >= Money());
      CHECK(line.forWaste <= line.amount.value_or(Money()));
      if (line.amount) CHECK(line.forSpares <= *line.amount);
    }
    CHECK(lines == cost.total);
    CHECK(sum(cost.walls()) == cost.total);
    CHECK(sum(cost.kinds()) == cost.total);
    const auto kinds = cost.kinds();
    CHECK((kinds.contains(CostKind::Spare) ? kinds.at(CostKind::Spare) : Money()) == cost.spares);
    for (const auto& [wall, money] : cost.walls()) CHECK((wall.empty() || byLetter(job.walls, wall)));
    for (const Blank& blank : made.order.blanks) shared += blank.parts.size() > 1;
  }
  CHECK(priced > 200);
  CHECK(unpriced > 20);
  CHECK(cuts > 5);
  WARN("lines priced " << priced << ", not priced " << unpriced << ", blanks shared " << shared);
}

TEST_CASE("a wall alone pays what its own part of each sheet costs") {
  int shared = 0;
  for (int index = 0; index < pricedBuildings; ++index) {
    Dice dice(kSeed + 79, index);
    Job job = randomJob(kSeed, index);
    bought(job, dice);
    job.settings.sharing.reach = Sharing::Reach::On;
    std::erase_if(job.prices.items, [](const Price& price) { return price.what != Price::What::Sheet; });
    const Plan made = plan(job);
    const JobCost cost = costOfJob(job, made);
    std::map<std::string, long double> due;
    long double lines = 0;
    for (const OrderedSheet& sheet : made.order.sheets) {
      const auto at = static_cast<std::size_t>(sheet.line);
      if (!cost.lines[at].amount) continue;
      long double all = 0;
      std::map<std::string, long double> areas;
      for (const int blank : sheet.blanks) {
        for (const BlankPart& part : made.order.blanks[static_cast<std::size_t>(blank)].parts) {
          const WallLayout& wall = made.walls[static_cast<std::size_t>(part.piece.wall)]->layout;
          const long double area = wall.pieces[static_cast<std::size_t>(part.piece.piece)].area.inSquareMetres();
          areas[wall.letter] += area;
          all += area;
        }
      }
      shared += areas.size() > 1;
      const long double each = static_cast<long double>(cost.lines[at].amount->cents()) / made.order.lines[at].hung();
      for (const auto& [wall, area] : areas) due[wall] += each * area / all;
    }
    // A cent at most for each kind of piece, and spares, of each line.
    for (const CostLine& line : cost.lines) lines += line.amount ? 8 : 0;
    const auto walls = cost.walls();
    for (const auto& [wall, cents] : due) {
      const Money got = walls.contains(wall) ? walls.at(wall) : Money();
      CHECK(std::abs(static_cast<long double>(got.cents()) - cents) <= lines);
    }
  }
  CHECK(shared > 20);
}

TEST_CASE("two states differ by what their lines differ by") {
  int differing = 0;
  for (int index = 0; index < pricedBuildings; ++index) {
    Dice dice(kSeed + 78, index);
    Job before = randomJob(kSeed, index);
    bought(before, dice);
    Job after = edited(before, dice);
    if (dice.oneIn(4)) after.prices = randomPrices(after, dice);
    const JobCost was = costOfJob(before, plan(before)), is = costOfJob(after, plan(after));
    const OrderDifference difference = orderDifference(was, is);
    const bool allPriced = was.unpriced().empty() && is.unpriced().empty();
    if (allPriced) REQUIRE(difference.costMore);
    if (allPriced) CHECK(*difference.costMore == is.total - was.total);
    Length more;
    std::int64_t sheets = 0;
    for (const CostLine& line : is.lines) {
      if (line.thing.what == Price::What::Sheet) more += line.measure.length, sheets += line.quantity;
    }
    for (const CostLine& line : was.lines) {
      if (line.thing.what == Price::What::Sheet) more -= line.measure.length, sheets -= line.quantity;
    }
    CHECK(difference.lengthMore == more);
    CHECK(difference.sheetsMore == sheets);
    CHECK(orderDifference(was, was).none());
    const OrderDifference back = orderDifference(is, was);
    CHECK(back.lines.size() == difference.lines.size());
    if (difference.costMore) CHECK(*back.costMore == -*difference.costMore);
    differing += !difference.none();
  }
  CHECK(differing > 40);
}
