// Which walls and kinds of pieces the things of a cost line were bought for, in whole shares.
#pragma once

#include <map>
#include <string>
#include <utility>
#include <vector>

#include "core/takeoff/cost.h"

namespace ribwright {

using CostCell = std::pair<std::string, CostKind>;
using CostShares = std::map<CostCell, Int128>;

// Of each line of the order: one sheet has a thousand million shares, divided over its pieces by their areas.
std::vector<CostShares> sheetShares(const SheetOrder& order, const std::vector<const WallLayout*>& layouts);

// Cuts that part a sheet: between the parts of a blank, between blanks of a sheet off the shelf and behind the last one
// where something is left.
std::int64_t cutsOf(const OrderedSheet& sheet, const SheetOrder& order);
// Between the cuts of a stick, and behind the last one where something is left.
std::int64_t cutsOf(const TrimStick& stick);

// Of all cuts of the order and the trim: one cut has a thousand million shares, divided evenly over what it parts.
struct CutShares {
  std::int64_t cuts = 0;
  CostShares shares;
};
CutShares cutShares(const SheetOrder& order, const std::vector<const WallLayout*>& layouts, const CutTrim& trim);

// `money` over the cells; of no shares at all to ("", kind).
void divide(Money money, const CostShares& shares, CostKind kind, std::map<CostCell, Money>& cells);
// The same shares by wall alone, under one kind.
CostShares byWall(const CostShares& shares, CostKind kind);

}  // namespace ribwright
