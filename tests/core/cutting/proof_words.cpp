// The proof as sentences.
#include "core/cutting/proof_words.h"

#include <catch2/catch.hpp>

#include "core/cutting/stock_cutter.h"

using namespace ribwright;

namespace {

std::string said(const CuttingList& list, const CuttingPlan& plan, const char* language = "en") {
  const auto digits = [](std::int64_t number) { return std::to_string(number); };
  std::string text;
  for (const Phrase& phrase : proofWords(list, plan, digits, digits))
    text += Words::of(language).say(phrase, {}) + "\n";
  return text;
}

const CuttingList bars{{{100}}, 0, 0, {{88, 1}, {60, 4}, {55, 2}, {51, 0}, {30, 3}}};

}  // namespace

TEST_CASE("Lengths that count the same are one range as long as no other length lies between") {
  const PriceList prices{{2, 1, 1, 5, 1}, {2}};
  CHECK(pointRanges(bars, prices) == std::vector<PointRange>{{88, 88, 2}, {60, 30, 1}});
  CHECK(worthOf(bars, prices) == 11);
  const PriceList broken{{1, 0, 2, 5, 1}, {2}};
  CHECK(pointRanges(bars, broken) == std::vector<PointRange>{{88, 88, 1}, {60, 60, 0}, {55, 55, 2}, {30, 30, 1}});
}

TEST_CASE("With one stock the proof says what counts how much, what a stock holds, and how many that makes") {
  const auto plan = cutStock(bars);
  REQUIRE(plan.ok());
  CHECK(plan.value().total == 7);
  CHECK(said(bars, plan.value()) ==
        "Pieces of 55 to 88 count 1 point each.\n"
        "Pieces of 30 count 0 points each.\n"
        "No stock of 100 can hold more than 1 points.\n"
        "The order is worth 7 points.\n"
        "6 stock lengths hold at most 6 points: so 7 are needed, and no plan uses fewer.\n");
}

TEST_CASE("The proof is said in Spanish too") {
  const auto plan = cutStock(bars);
  REQUIRE(plan.ok());
  CHECK(said(bars, plan.value(), "es").find("hacen falta 7, y ningún plan usa menos") != std::string::npos);
}

TEST_CASE("With several stocks each list is said, and that cheaper choices hold too little in one of them") {
  const CuttingList list{{{100}, {70}}, 0, 0, {{60, 1}, {40, 1}}};
  CuttingPlan plan;
  plan.total = plan.bound = 100;
  plan.proof = {{{1, 1}, {2, 1}}, {{3, 2}, {5, 3}}};
  CHECK(said(list, plan) ==
        "List 1.\nPieces of 40 to 60 count 1 point each.\nNo stock of 100 can hold more than 2 points.\n"
        "No stock of 70 can hold more than 1 points.\nThe order is worth 2 points.\n"
        "List 2.\nPieces of 60 count 3 points each.\nPieces of 40 count 2 points each.\n"
        "No stock of 100 can hold more than 5 points.\nNo stock of 70 can hold more than 3 points.\n"
        "The order is worth 5 points.\n"
        "Whatever choice of stock comes to less than 100 holds, in at least one of these lists, fewer points than the "
        "order is worth: no plan comes to less.\n");
}

TEST_CASE("What was searched through, and what is not settled, is said plainly") {
  CuttingPlan plan;
  plan.total = 9;
  plan.bound = 7;
  plan.provedBySearch = true;
  plan.proof = {{{1, 1, 1, 0, 1}, {2}}};
  const std::string text = said(bars, plan);
  CHECK(text.find("every way to cut was tried by the program, which cannot be checked by hand.\n") !=
        std::string::npos);
  CHECK(text.ends_with("No plan comes to less than 7; whether one comes to less than 9 is not settled.\n"));
  CHECK(text.find("are needed") == std::string::npos);
}

TEST_CASE("What costs nothing needs no proof") { CHECK(said({{{100, 0}}, 0, 0, {{50, 1}}}, CuttingPlan{}).empty()); }
