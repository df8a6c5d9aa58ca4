// What a job costs: its order and its trim at the user's prices, line by line, by wall and by kind.
//
// Every line's amount is its quantity times its price, rounded once to the cent (price_choice.h); all sums are of
// those. What has no price is no line of nothing: it has no amount and is named.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/takeoff/order_account.h"
#include "core/takeoff/price_choice.h"
#include "core/takeoff/trim_cuts.h"

namespace ribwright {

// Sheets by the kind of piece that they are bought for, then all else.
enum class CostKind { Full, Rip, Rake, Notched, Above, Below, Mixed, Spare, Trim, Cut, Charge };

struct CostLine {
  BoughtThing thing;
  Length length;              // of each sheet or stick; 0: a cut or a charge
  std::int64_t quantity = 0;  // sheets (spares too), sticks, cuts; 1 of a charge
  std::int64_t spares = 0;    // of them
  Measure measure;
  std::optional<Price> price;   // that applies
  std::optional<Money> amount;  // absent: no price, or one that cannot be reckoned with
  Money forSpares, forWaste;    // of the amount, to the cent; a drop that is kept is not waste

  // A price by weight of what has none stated, or a sum beyond mostCents.
  bool isUnreckoned() const { return price && !amount; }
};

// Trim and how it is cut; none where a job states no rules.
struct CutTrim {
  TrimTakeoff takeoff;
  std::vector<TrimBatch> batches;
};

CutTrim cutTrim(const Job& job, const std::vector<const WallLayout*>& layouts, const CuttingOptions& options = {});

struct JobCost {
  // Sheets by order line, trim by trim, colour and stock length, cuts, charges as the list has them.
  std::vector<CostLine> lines;
  // By letter of the wall and kind; they add up to the total to the cent. A sheet's cost is divided over its pieces by
  // their areas, a stick's over its cuts by their lengths, cuts over the pieces that they part, spares over the walls
  // as the sheets of their line, charges as all else; a corner's trim is of the wall whose right corner it is. Whole
  // cents by the largest remainder, line by line.
  std::map<std::pair<std::string, CostKind>, Money> cells;
  Money total, spares, waste;

  std::map<std::string, Money> walls() const;
  std::map<CostKind, Money> kinds() const;
  // Indices of lines without an amount.
  std::vector<std::size_t> unpriced() const;
};

// `order` made of these layouts, `trim` of the same. A job that has neither sheets nor trim pays its charges all the
// same, with no wall ("").
JobCost costOf(const Job& job, const std::vector<const WallLayout*>& layouts, const SheetOrder& order,
               const CutTrim& trim = {});

// Of sheets alone, as an order that was placed has them: no cells, cuts, charges or waste.
JobCost costOf(const Job& job, const std::vector<SheetLot>& lots);

// What all sheets of an order cost, spares too: quick, after every edit. Nothing where no price is stated at all, or
// some sheets have none that can be reckoned with.
std::optional<Money> sheetsCost(const Prices& prices, const SheetOrder& order);

// Each thing that a job buys once, in the order of its lines: what a price list is wanted for.
std::vector<BoughtThing> boughtThings(const JobCost& cost);

}  // namespace ribwright
