// Cutting plans of many made-up lists: right by the checker's sums, as good as trying everything, and the same however
// the list is written down.
#include <algorithm>
#include <catch2/catch.hpp>

#include "core/cutting/stock_cutter.h"
#include "tests/fuzz/cutting_checker.h"
#include "tests/fuzz/random_cutting.h"

namespace ribwright::fuzz {
namespace {

constexpr std::uint64_t kCutSeed = 20'260'701;

std::string listText(const CuttingList& list) {
  std::string text = "kerf " + std::to_string(list.kerf) + " trim " + std::to_string(list.endTrim) + "\n";
  for (const Stock& stock : list.stocks)
    text += "stock " + std::to_string(stock.length) + (stock.cost ? " cost " + std::to_string(*stock.cost) : "") +
            (stock.supply ? " supply " + std::to_string(*stock.supply) : "") + "\n";
  for (const CutDemand& demand : list.demands)
    text += std::to_string(demand.length) + " x " + std::to_string(demand.count) + "\n";
  return text;
}

CuttingPlan planned(const CuttingList& list, const CuttingOptions& options = {}) {
  auto plan = cutStock(list, options);
  REQUIRE(plan.ok());
  return std::move(plan).value();
}

void turnRound(CuttingList& list, Dice& dice) {
  for (std::size_t i = list.demands.size(); i > 1; --i)
    std::swap(list.demands[i - 1], list.demands[static_cast<std::size_t>(dice.between(0, static_cast<int>(i) - 1))]);
  std::reverse(list.stocks.begin(), list.stocks.end());
}

// Costs stated, so that they stay what they are when lengths are written in another unit.
CuttingList withCosts(CuttingList list) {
  std::vector<std::int64_t> costs;
  for (std::size_t k = 0; k < list.stocks.size(); ++k) costs.push_back(statedCost(list, k));
  for (std::size_t k = 0; k < costs.size(); ++k) list.stocks[k].cost = costs[k];
  return list;
}

void split(CuttingList& list) {
  for (std::size_t i = 0, lines = list.demands.size(); i < lines; ++i) {
    if (list.demands[i].count < 2) continue;
    --list.demands[i].count;
    list.demands.push_back({list.demands[i].length, 1});
  }
}

}  // namespace

TEST_CASE("Small lists are cut at the least cost that trying everything finds, and refused just where it finds none") {
  int cut = 0, refused = 0, limited = 0;
  for (int i = 0; i < 1'500; ++i) {
    Dice dice(kCutSeed, i);
    const CuttingList list = tinyCuttingList(dice);
    INFO("list " << i << "\n" << listText(list));
    const auto least = leastByTrying(list);
    const auto plan = cutStock(list);
    REQUIRE(plan.ok() == least.has_value());
    if (!least) {
      ++refused;
      continue;
    }
    ++cut;
    limited += std::any_of(list.stocks.begin(), list.stocks.end(), [](const Stock& s) { return s.supply.has_value(); });
    REQUIRE(plan.value().total == *least);
    REQUIRE(plan.value().proved());
    REQUIRE(checkCutting(list, plan.value()).text() == "");
  }
  CHECK(cut > 700);
  CHECK(refused > 30);
  CHECK(limited > 200);
}

TEST_CASE("Where points leave a choice of stock open that does not serve, every way to cut is tried, and it is said") {
  const CuttingList lists[] = {
      {{{52}}, 0, 0, {{27, 2}, {18, 3}, {17, 3}, {13, 5}, {10, 3}}},
      {{{60}, {38}}, 0, 0, {{16, 1}, {11, 3}, {23, 1}, {5, 3}, {18, 3}, {22, 2}}},
      {{{51}, {41, {}, 1}}, 0, 0, {{25, 5}, {16, 3}, {27, 3}, {12, 3}}},
  };
  for (const CuttingList& list : lists) {
    INFO(listText(list));
    CuttingPlan plan = planned(list);
    CHECK(plan.provedBySearch);
    CHECK(plan.proved());
    CHECK(plan.total == leastByTrying(list));
    CHECK(checkCutting(list, plan).text() == "");
    plan.provedBySearch = false;
    CHECK(checkCutting(list, plan).text() != "");
  }
}

TEST_CASE("A list in another unit, in another order or with its lines split comes to the same total") {
  for (int i = 0; i < 300; ++i) {
    Dice dice(kCutSeed + 1, i);
    const CuttingList list = withCosts(i % 3 == 0 ? trimCuttingList(dice, dice.small(1, 2)) : tinyCuttingList(dice));
    INFO("list " << i << "\n" << listText(list));
    const auto plan = cutStock(list);
    if (!plan || !plan.value().proved()) continue;
    CuttingList scaled = list, turned = list, splitUp = list;
    for (Stock& stock : scaled.stocks) stock.length = stock.length * 1'000 + dice.between(0, 999 / (list.kerf + 1));
    for (CutDemand& demand : scaled.demands) demand.length *= 1'000;
    scaled.kerf *= 1'000;
    scaled.endTrim *= 1'000;
    turnRound(turned, dice);
    split(splitUp);
    CHECK(planned(scaled).total == plan.value().total);
    CHECK(planned(turned).total == plan.value().total);
    CHECK(planned(splitUp).total == plan.value().total);
  }
}

TEST_CASE("Trim lists are proved, and the checker agrees with every plan and every proof") {
  for (int i = 0; i < 120; ++i) {
    Dice dice(kCutSeed + 2, i);
    const CuttingList list = trimCuttingList(dice, i % 4 == 0 ? 2 : 1);
    INFO("list " << i << "\n" << listText(list));
    const CuttingPlan plan = planned(list);
    CHECK((plan.proved() || i % 4 == 0));
    CHECK(checkCutting(list, plan).text() == "");
  }
}

TEST_CASE("However little work is allowed, the plan is valid, its bound holds, and it is the same each time") {
  for (int i = 0; i < 40; ++i) {
    Dice dice(kCutSeed + 3, i);
    const CuttingList list = trimCuttingList(dice, i % 2 == 0 ? 1 : 3);
    const CuttingPlan best = planned(list);
    std::int64_t before = INT64_MAX;
    for (const std::int64_t effort : {0, 1'000, 30'000, 300'000, 3'000'000}) {
      INFO("list " << i << ", effort " << effort << "\n" << listText(list));
      CuttingOptions options;
      options.effort = effort;
      const CuttingPlan plan = planned(list, options);
      CHECK(plan == planned(list, options));
      CHECK(plan.bound <= best.total);
      CHECK(plan.total >= best.bound);
      CHECK(plan.total <= before);
      CHECK(checkCutting(list, plan).text() == "");
      before = plan.total;
    }
  }
}

TEST_CASE("Stopped at any step, the best plan so far is kept, and progress only gets better") {
  for (int i = 0; i < 12; ++i) {
    Dice dice(kCutSeed + 4, i);
    const CuttingList list = trimCuttingList(dice, i % 2 == 0 ? 1 : 3);
    for (int stopAt = 1; stopAt < 12; ++stopAt) {
      INFO("list " << i << ", stopped at step " << stopAt << "\n" << listText(list));
      int calls = 0;
      CuttingProgress last{INT64_MAX, 0, 0};
      CuttingOptions options;
      options.progress = [&](const CuttingProgress& progress) {
        CHECK((progress.total <= last.total || last.total == 0));
        CHECK(progress.bound >= last.bound);
        CHECK(progress.spent >= last.spent);
        last = progress;
        return ++calls < stopAt;
      };
      const CuttingPlan plan = planned(list, options);
      CHECK(calls <= stopAt);
      CHECK(plan.total <= last.total);
      CHECK(checkCutting(list, plan).text() == "");
    }
  }
}

}  // namespace ribwright::fuzz
