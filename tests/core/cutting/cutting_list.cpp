// What a cutting list is refused for, and what it is not.
#include "core/cutting/cutting_list.h"

#include <catch2/catch.hpp>

using namespace ribwright;

namespace {

std::string firstFault(const CuttingList& list) {
  const auto faults = faultsOf(list);
  return faults.empty() ? "" : oneLine(faults.front());
}

}  // namespace

TEST_CASE("A cutting list is refused with the place, what is wrong, and what would be right") {
  const std::int64_t far = 1'000'000'000'000'001;
  struct Case {
    CuttingList list;
    const char* fault;
  };
  const Case cases[] = {
      {{{}, 0, 0, {{5, 1}}}, "stocks: no stock is stated; state at least one length"},
      {{{{10}}, 0, 0, {}}, "demands: no length is wanted; state at least one"},
      {{{{10}}, 0, 0, {{11, 1}}},
       "demands[0].length: 11 is longer than any stock leaves (10); state a longer stock or make the piece of two"},
      {{{{10}}, 0, 2, {{3, 1}, {9, 1}}},
       "demands[1].length: 9 is longer than any stock leaves (8); state a longer stock or make the piece of two"},
      {{{{10}, {20, {}, 0}}, 0, 0, {{11, 1}}},
       "demands[0].length: 11 is longer than any stock leaves (10); state a longer stock or make the piece of two"},
      {{{{0}}, 0, 0, {{1, 1}}}, "stocks[0].length: 0 is out of range; it is 1 to 1000000000000000"},
      {{{{far}}, 0, 0, {{1, 1}}}, "stocks[0].length: 1000000000000001 is out of range; it is 1 to 1000000000000000"},
      {{{{10, -1}}, 0, 0, {{1, 1}}}, "stocks[0].cost: -1 is out of range; it is 0 to 1000000000000000"},
      {{{{10, {}, -1}}, 0, 0, {{1, 1}}}, "stocks[0].supply: -1 is out of range; it is 0 to 9223372036854775807"},
      {{{{10}}, -1, 0, {{1, 1}}}, "kerf: -1 is out of range; it is 0 to 1000000000000000"},
      {{{{10}}, 0, -1, {{1, 1}}}, "endTrim: -1 is out of range; it is 0 to 1000000000000000"},
      {{{{10}}, 0, 0, {{0, 1}}}, "demands[0].length: 0 is out of range; it is 1 to 1000000000000000"},
      {{{{10}}, 0, 0, {{1, -1}}}, "demands[0].count: -1 is out of range; it is 0 to 10000000"},
      {{{{10}}, 0, 0, {{1, 9'000'000}, {2, 9'000'000}}},
       "demands: are more than 10000000 pieces; cut them in several lists"},
      {{{{far - 1}}, 0, 0, {{1, 1'001}}},
       "demands: lengths or costs times pieces are more than 1000000000000000000; use a coarser unit"},
  };
  for (const Case& one : cases) CHECK(firstFault(one.list) == one.fault);
}

TEST_CASE("A cutting list may hold 2000 lines and 200 stocks, and no more") {
  CuttingList list{std::vector<Stock>(200, {10}), 0, 0, std::vector<CutDemand>(2'000, {5, 1})};
  CHECK(firstFault(list).empty());
  list.stocks.push_back({10});
  CHECK(firstFault(list) == "stocks: are more than 200; leave out those that are not used");
  list.stocks.pop_back();
  list.demands.push_back({5, 1});
  CHECK(firstFault(list) == "demands: are more than 2000 lines; cut them in several lists");
}

TEST_CASE("A length of which none is wanted may be longer than the stock") {
  CHECK(firstFault({{{10}}, 0, 0, {{11, 0}, {5, 1}}}).empty());
}

TEST_CASE("A stock counts for its cost; without one for 1 when it is alone, else for its length") {
  const CuttingList one{{{10}}, 0, 0, {}}, two{{{10}, {20}}, 0, 0, {}}, priced{{{10, 3}, {20, 0}}, 0, 0, {}};
  CHECK(costOf(one, 0) == 1);
  CHECK(costOf(two, 1) == 20);
  CHECK(costOf(priced, 0) == 3);
  CHECK(costOf(priced, 1) == 0);
}
