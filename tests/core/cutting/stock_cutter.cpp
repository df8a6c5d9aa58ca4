// Cutting plans that can be worked out by hand.
#include "core/cutting/stock_cutter.h"

#include <catch2/catch.hpp>

using namespace ribwright;

namespace {

CuttingPlan planOf(const CuttingList& list) {
  auto plan = cutStock(list);
  REQUIRE(plan.ok());
  CHECK(plan.value().proved());
  return std::move(plan).value();
}

std::string refusalOf(const CuttingList& list, std::int64_t effort = CuttingOptions{}.effort) {
  CuttingOptions options;
  options.effort = effort;
  const auto plan = cutStock(list, options);
  return plan ? "" : oneLine(plan.faults().front());
}

}  // namespace

TEST_CASE("A kerf is lost between two pieces, and none at the end") {
  CHECK(planOf({{{100}}, 1, 0, {{33, 3}}}).total == 2);  // 33 + 1 + 33 + 1 + 33 = 101
  CHECK(planOf({{{101}}, 1, 0, {{33, 3}}}).total == 1);
  CHECK(planOf({{{100}}, 50, 0, {{100, 2}}}).total == 2);  // no cut, no kerf
}

TEST_CASE("The end trim is lost once from each stock") {
  CHECK(planOf({{{100}}, 0, 0, {{50, 4}}}).total == 2);
  CHECK(planOf({{{100}}, 0, 1, {{50, 4}}}).total == 4);
  CHECK(planOf({{{101}}, 0, 1, {{50, 4}}}).total == 2);
}

TEST_CASE("Exactly what is wanted is cut, never more") {
  const CuttingPlan plan = planOf({{{100}}, 0, 0, {{30, 4}, {45, 1}}});
  CHECK(plan.total == 2);
  std::vector<std::int64_t> cut(2, 0);
  for (const CutPattern& pattern : plan.patterns)
    for (std::size_t i = 0; i < 2; ++i) cut[i] += pattern.times * pattern.counts[i];
  CHECK(cut == std::vector<std::int64_t>{4, 1});
}

TEST_CASE("Equal lengths in several lines are cut for each line, and count the same") {
  const CuttingPlan plan = planOf({{{100}}, 0, 0, {{50, 1}, {50, 3}, {25, 0}}});
  CHECK(plan.total == 2);
  CHECK(plan.patterns.size() == 2);
  REQUIRE(plan.proof.size() == 1);
  CHECK(plan.proof[0].points[0] == plan.proof[0].points[1]);
  CHECK(plan.proof[0].points[2] == 0);
}

TEST_CASE("What lies on site at no cost is used first, and what must be bought is the least") {
  const CuttingList list{{{240, 0, 2}, {240, 240}, {144, 144}}, 0, 0, {{120, 7}}};
  const CuttingPlan plan = planOf(list);  // four of seven from the two on site; then one of 240 and one of 144
  CHECK(plan.total == 384);
  std::int64_t onSite = 0;
  for (const CutPattern& pattern : plan.patterns) onSite += pattern.stock == 0 ? pattern.times : 0;
  CHECK(onSite == 2);
}

TEST_CASE("Where all that is wanted comes out of what lies on site nothing is bought") {
  const CuttingPlan plan = planOf({{{100, 0, 5}, {100, 7}}, 0, 0, {{60, 3}}});
  CHECK(plan.total == 0);
  CHECK(plan.bound == 0);
  CHECK(plan.stockPieces() == 3);
}

TEST_CASE("A dearer stock is taken where it is worth its price, and left where it is not") {
  CHECK(planOf({{{100, 10}, {200, 19}}, 0, 0, {{100, 2}}}).total == 19);
  CHECK(planOf({{{100, 10}, {200, 21}}, 0, 0, {{100, 2}}}).total == 20);
}

TEST_CASE("A list of which nothing is wanted is an empty plan") {
  const CuttingPlan plan = planOf({{{100}}, 0, 0, {{50, 0}}});
  CHECK(plan == CuttingPlan{});
}

TEST_CASE("What supply cannot serve is refused, and so is what no plan was found for with no work") {
  CHECK(refusalOf({{{100, {}, 1}}, 0, 0, {{60, 2}}}) ==
        "stocks: hold too little for what is wanted; state more supply");
  CHECK(refusalOf({{{100}}, 0, 0, {{101, 1}}}).starts_with("demands[0].length: 101 is longer than any stock"));
  // First fit puts 6 4 and 4 4 3 and has no room for a 3; 6 3 3 and 4 4 4 need thought.
  const CuttingList tight{{{12, {}, 2}}, 0, 0, {{6, 1}, {4, 3}, {3, 2}}};
  CHECK(refusalOf(tight, 0) ==
        "stocks: no plan was found with so little effort; state more supply, or allow more effort");
  CHECK(planOf(tight).total == 2);
}

TEST_CASE("Lengths in nanometres and in sixteenths make the same plan") {
  CuttingList list{{{1952}, {2304}}, 2, 0, {{700, 9}, {433, 7}, {1201, 4}, {95, 11}}};
  const CuttingPlan plan = planOf(list);
  CuttingList fine = list;
  for (Stock& stock : fine.stocks) stock.length *= 1'587'500;
  for (CutDemand& demand : fine.demands) demand.length *= 1'587'500;
  fine.kerf *= 1'587'500;
  const CuttingPlan finePlan = planOf(fine);
  CHECK(finePlan.patterns == plan.patterns);
  CHECK(finePlan.proof == plan.proof);
  CHECK(finePlan.total == plan.total * 1'587'500);
}

TEST_CASE("Odd nanometres that have nothing in common are cut too") {
  const CuttingPlan plan =
      planOf({{{6'096'000'000}}, 3'175'001, 0, {{1'234'567'891, 7}, {987'654'321, 5}, {2'345'678'917, 4}}});
  CHECK(plan.total == 4);
}
