// Which price of the list applies to something that is bought.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/job/ordering.h"
#include "core/units/area.h"
#include "core/units/money.h"

namespace ribwright {

// The colour by which the list names translucent sheets; as a table of sheets says it too.
inline constexpr std::string_view translucentColour = "translucent";

struct BoughtThing {
  Price::What what = Price::What::Sheet;
  std::string item;    // as Price::item
  std::string colour;  // translucentColour for translucent sheets
  Length thickness;    // base steel
  auto operator<=>(const BoughtThing&) const = default;
};

// The most specific: item, colour and thickness; item and colour; item and thickness; item alone. Of two that say the
// same the first. A price that names no colour is for steel, never for translucent sheets. Of a cut only what it is
// counts. Null: none applies.
const Price* priceOf(const Prices& prices, const BoughtThing& thing);

// Both name the same things, so that only the first of them can ever apply.
bool nameTheSame(const Price& a, const Price& b);
// Indices of prices that an earlier one of the list stands before.
std::vector<std::size_t> pricesNamedTwice(const Prices& prices);

// How much there is of something, in every way that a price can count it.
struct Measure {
  std::int64_t pieces = 0;
  Length length;                      // of all of them
  Area area;                          // sheets: cover x length; trim: girth x length
  std::optional<std::int64_t> grams;  // absent: what it weighs is not stated
};

// measure x price, rounded once to the cent, half to even. A foot, a pound (453.59237 g) and a square foot are exact.
// Nothing when the price is by weight and there is none, or when the sum is beyond mostCents.
std::optional<Money> amountOf(const Measure& measure, const Price& price);

// Whole grams, half to even. Weights are reckoned with doubles; from here on they are exact.
std::int64_t gramsOf(double kilograms);

}  // namespace ribwright
