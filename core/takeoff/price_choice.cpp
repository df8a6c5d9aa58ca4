#include "core/takeoff/price_choice.h"

#include <cmath>
#include <set>
#include <tuple>

namespace ribwright {
namespace {

bool countsItem(const Price& price) { return price.what != Price::What::Cut; }
bool countsMetal(const Price& price) { return price.what == Price::What::Sheet || price.what == Price::What::Trim; }

bool applies(const Price& price, const BoughtThing& thing) {
  if (price.what != thing.what || (countsItem(price) && price.item != thing.item)) return false;
  if (!countsMetal(price)) return true;
  const bool colour = price.colour.empty() ? thing.colour != translucentColour : price.colour == thing.colour;
  return colour && (!price.thickness || *price.thickness == thing.thickness);
}

int rank(const Price& price) {
  return countsMetal(price) ? (price.colour.empty() ? 0 : 2) + (price.thickness ? 1 : 0) : 0;
}

// All that counts of what it is for.
using Name = std::tuple<Price::What, std::string, std::string, std::optional<Length>>;

Name nameOf(const Price& price) {
  return {price.what, countsItem(price) ? price.item : "", countsMetal(price) ? price.colour : "",
          countsMetal(price) ? price.thickness : std::nullopt};
}

Price::Per perOf(const Price& price) { return countsMetal(price) ? price.per : Price::Per::Each; }

Int128 square(Length side) { return (side * side).halfSquareNanometres(); }

std::optional<ExactRatio> quantityOf(const Measure& measure, Price::Per per) {
  switch (per) {
    case Price::Per::Each:
      return ratio(measure.pieces, 1);
    case Price::Per::Foot:
      return ratio(measure.length.nanometres(), Length::feet(1).nanometres());
    case Price::Per::Metre:
      return ratio(measure.length.nanometres(), Length::millimetres(1000).nanometres());
    case Price::Per::SquareFoot:
      return ratio(measure.area.halfSquareNanometres(), square(Length::feet(1)));
    case Price::Per::SquareMetre:
      return ratio(measure.area.halfSquareNanometres(), square(Length::millimetres(1000)));
    case Price::Per::Pound:
      return measure.grams ? ratio(Int128(*measure.grams) * 100'000, 45'359'237) : std::nullopt;
    case Price::Per::Kilogram:
      return measure.grams ? ratio(*measure.grams, 1000) : std::nullopt;
  }
  return std::nullopt;
}

}  // namespace

const Price* priceOf(const Prices& prices, const BoughtThing& thing) {
  const Price* best = nullptr;
  for (const Price& price : prices.items) {
    if (applies(price, thing) && (!best || rank(price) > rank(*best))) best = &price;
  }
  return best;
}

bool nameTheSame(const Price& a, const Price& b) { return nameOf(a) == nameOf(b); }

std::vector<std::size_t> pricesNamedTwice(const Prices& prices) {
  std::vector<std::size_t> twice;
  std::set<Name> seen;
  for (std::size_t i = 0; i < prices.items.size(); ++i) {
    if (!seen.insert(nameOf(prices.items[i])).second) twice.push_back(i);
  }
  return twice;
}

std::optional<Money> amountOf(const Measure& measure, const Price& price) {
  const auto quantity = quantityOf(measure, perOf(price));
  return quantity ? amount(*quantity, Money::cents(price.cents)) : std::nullopt;
}

std::int64_t gramsOf(double kilograms) { return static_cast<std::int64_t>(std::nearbyint(kilograms * 1000)); }

}  // namespace ribwright
