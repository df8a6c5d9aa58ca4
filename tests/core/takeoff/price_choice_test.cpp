// Which price applies, and what a quantity comes to.
#include "core/takeoff/price_choice.h"

#include <catch2/catch.hpp>

using namespace ribwright;

namespace {

const Length thin = Length::nanometres(454'660), thick = Length::nanometres(606'040);

Price price(int cents, const std::string& item, const std::string& colour = {}, std::optional<Length> of = {},
            Price::What what = Price::What::Sheet) {
  return {what, item, colour, of, Price::Per::Foot, cents};
}

Prices listOf(std::vector<Price> items) { return {"USD", "", "", std::move(items)}; }

int centsFor(const Prices& prices, const BoughtThing& thing) {
  const Price* found = priceOf(prices, thing);
  return found ? found->cents : -1;
}

BoughtThing sheet(const std::string& item, const std::string& colour, Length of) {
  return {Price::What::Sheet, item, colour, of};
}

}  // namespace

TEST_CASE("the most specific price applies, colour before thickness") {
  const Prices all = listOf({price(1, "rib"), price(2, "rib", "", thick), price(3, "rib", "red"),
                             price(4, "rib", "red", thick), price(9, "other")});
  CHECK(centsFor(all, sheet("rib", "red", thick)) == 4);
  CHECK(centsFor(all, sheet("rib", "red", thin)) == 3);
  CHECK(centsFor(all, sheet("rib", "blue", thick)) == 2);
  CHECK(centsFor(all, sheet("rib", "blue", thin)) == 1);
  CHECK(centsFor(all, sheet("rib", "", thin)) == 1);
  CHECK(centsFor(all, sheet("flat", "red", thin)) == -1);
  CHECK(centsFor(all, {Price::What::Trim, "rib", "red", thin}) == -1);
  CHECK(centsFor(listOf({price(3, "rib", "red"), price(2, "rib", "", thick)}), sheet("rib", "red", thick)) == 3);
}

TEST_CASE("the order of the list decides only between prices that say the same") {
  CHECK(centsFor(listOf({price(4, "rib", "red"), price(1, "rib")}), sheet("rib", "red", thin)) == 4);
  CHECK(centsFor(listOf({price(5, "rib"), price(6, "rib")}), sheet("rib", "", thin)) == 5);
  CHECK(pricesNamedTwice(listOf({price(5, "rib"), price(7, "rib", "red"), price(6, "rib")})) ==
        std::vector<std::size_t>{2});
  CHECK(pricesNamedTwice(listOf({price(5, "rib"), price(6, "rib", "", thin), price(6, "rib", "red", thin)})).empty());
  // Whatever a cut's price names beside, it is of each cut.
  CHECK(pricesNamedTwice(listOf({price(5, "", "", {}, Price::What::Cut),
                                 price(6, "a", "b", thin, Price::What::Cut)})) == std::vector<std::size_t>{1});
}

TEST_CASE("translucent sheets have prices of their own") {
  const Prices steel = listOf({price(1, "rib"), price(2, "rib", "", thin)});
  CHECK(centsFor(steel, sheet("rib", "translucent", thin)) == -1);
  CHECK(centsFor(listOf({price(1, "rib"), price(8, "rib", "translucent")}), sheet("rib", "translucent", thin)) == 8);
}

TEST_CASE("a price counts what it is for: 10 sheets of 12 ft 3 in, cover 3 ft") {
  Measure sheets{10, Length::feet(122, 6), Length::feet(3) * Length::feet(122, 6), 45'359'237};
  const auto at = [&](Price::Per per, int cents) {
    Price one = price(cents, "rib");
    one.per = per;
    return amountOf(sheets, one);
  };
  CHECK(at(Price::Per::Each, 4125) == Money::cents(41250));
  CHECK(at(Price::Per::Foot, 325) == Money::cents(39812));          // 398.125, to the even cent
  CHECK(at(Price::Per::SquareFoot, 99) == Money::cents(36382));     // 367.5 sq ft: 363.825
  CHECK(at(Price::Per::Metre, 1000) == Money::cents(37338));        // 37.338 m
  CHECK(at(Price::Per::SquareMetre, 1000) == Money::cents(34142));  // 34.1418... m2
  CHECK(at(Price::Per::Pound, 1) == Money::cents(100'000));
  CHECK(at(Price::Per::Kilogram, 100) == Money::cents(4'535'924));  // 45 359.237 kg
}

TEST_CASE("what has no weight has no price by weight, and no sum is more than can be reckoned with") {
  Price pound = price(100, "rib", "translucent");
  pound.per = Price::Per::Pound;
  CHECK(!amountOf({1, Length::feet(10), Length::feet(3) * Length::feet(10), std::nullopt}, pound));
  CHECK(!amountOf({1'000'000, Length::millimetres(9'000'000'000'000), Area(), 0}, price(2'000'000'000, "rib")));
}

TEST_CASE("whole grams, half to even") {
  CHECK(gramsOf(12.3455) == 12346);
  CHECK(gramsOf(0.0005) == 0);
  CHECK(gramsOf(0.0015) == 2);
}
