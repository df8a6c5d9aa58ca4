// Worked examples of cutting with the results that their sources give.
#include <catch2/catch.hpp>

#include "core/cutting/stock_cutter.h"

namespace ribwright {
namespace {

struct Example {
  const char* source;
  CuttingList list;
  std::int64_t total;
};

// "From memory": the numbers are the source's, the page was not at hand.
const Example examples[] = {
    {"Gilmore and Gomory 1961, three stocks of 5, 6 and 9 at 6, 7 and 10",
     {{{5, 6}, {6, 7}, {9, 10}}, 0, 0, {{4, 20}, {3, 10}, {2, 20}}},
     170},
    {"Chvatal, Linear Programming, 1983, chapter 13",
     {{{100}}, 0, 0, {{45, 97}, {36, 610}, {31, 395}, {14, 211}}},
     453},
    {"the paper roll of 5600 mm in 13 widths",
     {{{5600}},
      0,
      0,
      {{1380, 22},
       {1520, 25},
       {1560, 12},
       {1710, 14},
       {1820, 18},
       {1880, 18},
       {1930, 20},
       {2000, 10},
       {2050, 12},
       {2100, 14},
       {2140, 16},
       {2150, 18},
       {2200, 20}}},
     73},
    {"Haessler, Management Science 34, 1988, table 2, in 1/8 in, without its limits of slitter and overrun",
     {{{1376}},
      0,
      0,
      {{200, 5},
       {198, 73},
       {144, 14},
       {140, 4},
       {124, 23},
       {123, 5},
       {111, 29},
       {100, 87},
       {98, 9},
       {96, 31},
       {82, 6},
       {81, 14},
       {80, 43},
       {70, 15},
       {68, 21},
       {62, 5}}},
     33},
    {"Winston, Operations Research, the lumber company", {{{17}}, 0, 0, {{9, 15}, {5, 20}, {3, 25}}}, 19},
    {"the bar of 7.4 m, a hundred sets of 2.9, 2.1 and 1.5 m", {{{74}}, 0, 0, {{29, 100}, {21, 100}, {15, 100}}}, 90},
    // The linear program over all patterns comes to 259/132 and to 59/30, so rounded up to 2, but 3 are needed (from
    // memory).
    {"132; 44, 33, 12", {{{132}}, 0, 0, {{44, 2}, {33, 3}, {12, 6}}}, 3},
    {"Fieldhouse, 30; 15, 10, 6", {{{30}}, 0, 0, {{15, 1}, {10, 2}, {6, 4}}}, 3},
};

}  // namespace

TEST_CASE("Published worked examples of cutting come to their published totals, and that is proved") {
  for (const Example& example : examples) {
    INFO(example.source);
    const auto plan = cutStock(example.list);
    REQUIRE(plan.ok());
    CHECK(plan.value().total == example.total);
    CHECK(plan.value().proved());
    CHECK(!plan.value().provedBySearch);
  }
}

}  // namespace ribwright
