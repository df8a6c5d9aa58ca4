// What is to be ordered now, against what was ordered: every way to serve the needs tried on small ones.
#include "core/takeoff/delta_order.h"

#include <catch2/catch.hpp>
#include <functional>
#include <random>

#include "core/takeoff/served_needs.h"

using namespace ribwright;

namespace {

const SheetClass red{"rib-36", Length::nanometres(454'660), "red", false};
const SheetClass blue{"rib-36", Length::nanometres(454'660), "blue", false};

Length ft(std::int64_t feet) { return Length::feet(feet); }
SheetKind kind(std::int64_t feet, const SheetClass& sheet = red) { return {sheet, ft(feet)}; }

SheetNeed need(std::int64_t feet, const std::string& marks, bool hung = false) {
  return {kind(feet), ft(feet), marks, hung};
}

PlacedOrder placed(const std::string& id, std::vector<std::pair<std::int64_t, int>> lots) {
  PlacedOrder order;
  order.id = id;
  for (const auto& [feet, quantity] : lots) order.placed.push_back(lotOf(kind(feet), quantity));
  return order;
}

using Marks = std::vector<std::string>;

struct Found {
  std::int64_t served = 0, taken = 0;  // nanometres
  bool operator<(const Found& b) const { return std::pair(-served, taken) < std::pair(-b.served, b.taken); }
  bool operator==(const Found&) const = default;
};

// Every need with every sheet, or none.
Found bestOf(const std::vector<Length>& needs, const std::vector<Length>& sheets) {
  std::vector<bool> used(sheets.size());
  Found best, now;
  const std::function<void(std::size_t)> go = [&](std::size_t i) {
    if (i == needs.size()) {
      if (now < best) best = now;
      return;
    }
    go(i + 1);
    for (std::size_t s = 0; s < sheets.size(); ++s) {
      if (used[s] || sheets[s] < needs[i]) continue;
      used[s] = true;
      now.served += needs[i].nanometres();
      now.taken += sheets[s].nanometres();
      go(i + 1);
      used[s] = false;
      now.served -= needs[i].nanometres();
      now.taken -= sheets[s].nanometres();
    }
  };
  go(0);
  return best;
}

}  // namespace

TEST_CASE("no way to serve needs serves more length, or takes less from what is there") {
  std::mt19937_64 dice(3);
  for (int round = 0; round < 3000; ++round) {
    std::vector<Length> needs(dice() % 6), sheets(dice() % 6);
    for (Length& one : needs) one = ft(1 + static_cast<std::int64_t>(dice() % 9));
    for (Length& one : sheets) one = ft(1 + static_cast<std::int64_t>(dice() % 9));
    const auto served = servedNeeds(needs, sheets);
    Found found;
    std::vector<bool> used(sheets.size());
    for (std::size_t i = 0; i < needs.size(); ++i) {
      if (!served[i]) continue;
      REQUIRE(!used[*served[i]]);
      REQUIRE(sheets[*served[i]] >= needs[i]);
      used[*served[i]] = true;
      found.served += needs[i].nanometres();
      found.taken += sheets[*served[i]].nanometres();
    }
    REQUIRE(found == bestOf(needs, sheets));
  }
}

TEST_CASE("nothing was ordered: everything is to be ordered, spares too") {
  const DeltaOrder delta = deltaOrder({need(12, "A1"), need(12, "A2"), need(12, ""), need(10, "A3")}, {});
  REQUIRE(delta.toOrder.size() == 2);
  CHECK(kindOf(delta.toOrder[0]) == kind(12));
  CHECK(delta.toOrder[0].quantity == 3);
  CHECK(delta.toOrder[0].marks == Marks{"A1", "A2"});
  CHECK(delta.toOrder[1].quantity == 1);
  CHECK(delta.served.empty());
  CHECK(delta.leftOver.empty());
}

TEST_CASE("a wall grew after the order: the longer sheet is ordered, the shorter ones serve, one is left") {
  PlacedOrder order = placed("1", {{12, 2}, {10, 2}});
  order.received = {lotOf(kind(12), 2)};
  const DeltaOrder delta = deltaOrder({need(14, "A1"), need(12, "A2"), need(9, "A3")}, {order});
  REQUIRE(delta.toOrder.size() == 1);
  CHECK(kindOf(delta.toOrder[0]) == kind(14));
  CHECK(delta.toOrder[0].marks == Marks{"A1"});
  REQUIRE(delta.served.size() == 2);
  CHECK(delta.served[0] == ServedNeeds{kind(12), ft(12), false, {"A2"}, {}});
  CHECK(delta.served[1] == ServedNeeds{kind(10), ft(9), true, {"A3"}, {}});  // still to come, cut by a foot
  CHECK(delta.served[1].cutOff() == ft(1));
  REQUIRE(delta.leftOver.size() == 2);
  CHECK(delta.leftOver[0] == UnneededSheets{kind(12), 1, 0});
  CHECK(delta.leftOver[1] == UnneededSheets{kind(10), 0, 1});
  REQUIRE(delta.toCome.size() == 1);
  CHECK(delta.toCome[0].quantity == 2);
}

TEST_CASE("a sheet that hangs came out of what was received") {
  PlacedOrder order = placed("1", {{12, 2}});
  order.received = {lotOf(kind(12), 1)};
  const DeltaOrder delta = deltaOrder({need(12, "A1"), need(12, "A2", true)}, {order});
  CHECK(delta.toOrder.empty());
  REQUIRE(delta.served.size() == 2);
  CHECK(delta.served[0] == ServedNeeds{kind(12), ft(12), false, {"A2"}, {"A2"}});
  CHECK(delta.served[1] == ServedNeeds{kind(12), ft(12), true, {"A1"}, {}});
}

TEST_CASE("a longer piece that comes later does not take what a shorter one was cut from") {
  PlacedOrder order = placed("1", {{12, 1}});
  order.received = {lotOf(kind(12), 1)};
  const DeltaOrder delta = deltaOrder({need(11, "C2"), need(10, "A1", true)}, {order});
  REQUIRE(delta.served.size() == 1);
  CHECK(delta.served[0] == ServedNeeds{kind(12), ft(10), false, {"A1"}, {"A1"}});
  REQUIRE(delta.toOrder.size() == 1);
  CHECK(kindOf(delta.toOrder[0]) == kind(11));
  CHECK(delta.toOrder[0].marks == Marks{"C2"});
}

TEST_CASE("a sheet that hangs did not come out of one that is still to come") {
  PlacedOrder order = placed("1", {{12, 1}, {13, 1}});
  order.received = {lotOf(kind(13), 1)};
  const DeltaOrder delta = deltaOrder({need(12, "A1", true), need(13, "A2")}, {order});
  REQUIRE(delta.served.size() == 1);
  CHECK(delta.served[0] == ServedNeeds{kind(13), ft(12), false, {"A1"}, {"A1"}});
  CHECK(delta.toOrder.at(0).marks == Marks{"A2"});
}

TEST_CASE("what came short is ordered again unless something there serves") {
  PlacedOrder order = placed("1", {{12, 3}});
  order.received = {lotOf(kind(12), 2)};
  order.shortfall = {lotOf(kind(12), 1)};
  const std::vector<SheetNeed> needs{need(12, "A1"), need(12, "A2"), need(12, "A3")};
  CHECK(deltaOrder(needs, {order}).toOrder.at(0).quantity == 1);
  CHECK(deltaOrder(needs, {order, placed("2", {{13, 1}})}).toOrder.empty());
}

TEST_CASE("spares of what was ordered before are there to be used, not to be bought anew") {
  PlacedOrder order = placed("1", {{12, 3}});
  order.received = {lotOf(kind(12), 2)};
  order.shortfall = {lotOf(kind(12), 1)};
  CHECK(deltaOrder({need(12, "A1"), need(12, "A2"), need(12, "")}, {order}).toOrder.empty());
}

TEST_CASE("a sheet of another colour serves nothing") {
  PlacedOrder order;
  order.id = "1";
  order.placed = {lotOf(kind(20, blue), 5)};
  const DeltaOrder delta = deltaOrder({need(12, "A1")}, {order});
  CHECK(delta.toOrder.at(0).quantity == 1);
  CHECK(delta.leftOver.at(0).toCome == 5);
}

TEST_CASE("a blank shorter than its order length is cut from what is long enough for it") {
  const SheetNeed made{kind(12), Length::feet(11, 3), "A1", false};
  const DeltaOrder delta = deltaOrder({made}, {placed("1", {{11, 1}})});
  CHECK(delta.toOrder.at(0).length == ft(12));
  CHECK(deltaOrder({made}, {placed("1", {{12, 1}})}).toOrder.empty());
}

TEST_CASE("received and short together more than ordered is told; what one order has too many is no other's") {
  PlacedOrder one = placed("1", {{12, 2}});
  one.received = {lotOf(kind(12), 3)};
  CHECK(countsOf(one).at(kind(12)).tooMany() == 1);
  const auto supply = supplyOf({one, placed("2", {{12, 1}})});
  CHECK(supply.at(kind(12)).toCome == 1);
  CHECK(supply.at(kind(12)).there() == 4);
}

TEST_CASE("a delta order placed leaves nothing to be ordered, and every sheet is accounted for") {
  std::mt19937_64 dice(5);
  for (int round = 0; round < 500; ++round) {
    std::vector<SheetNeed> needs;
    for (std::size_t i = dice() % 12; i > 0; --i) {
      const auto feet = 2 + static_cast<std::int64_t>(dice() % 8);
      needs.push_back(need(feet, dice() % 9 == 0 ? "" : "A" + std::to_string(i), dice() % 5 == 0));
    }
    std::vector<PlacedOrder> orders;
    for (int id = 0; id < 3; ++id) {
      PlacedOrder order =
          placed(std::to_string(id), {{2 + static_cast<std::int64_t>(dice() % 8), static_cast<int>(dice() % 5)}});
      const int many = order.placed[0].quantity, came = static_cast<int>(dice() % static_cast<unsigned>(many + 1));
      order.received = {lotOf(kindOf(order.placed[0]), came)};
      order.shortfall = {
          lotOf(kindOf(order.placed[0]), static_cast<int>(dice() % static_cast<unsigned>(many - came + 1)))};
      orders.push_back(order);
    }
    const DeltaOrder delta = deltaOrder(needs, orders);
    std::int64_t used = 0, left = 0, there = 0;
    for (const ServedNeeds& served : delta.served) used += static_cast<std::int64_t>(served.marks.size());
    for (const UnneededSheets& sheets : delta.leftOver) left += sheets.onSite + sheets.toCome;
    for (const auto& [of, supply] : supplyOf(orders)) there += supply.there();
    CHECK(used + left == there);
    PlacedOrder next;
    next.id = "next";
    next.placed = delta.toOrder;
    orders.push_back(next);
    CHECK(deltaOrder(needs, orders).toOrder.empty());
  }
}
