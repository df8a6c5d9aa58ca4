// What the orders that were placed come to, kind by kind of sheet.
#pragma once

#include <algorithm>
#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "core/cutting/sheet_class.h"
#include "core/job/survey.h"

namespace ribwright {

// Sheets of one class and length: one kind to order.
struct SheetKind {
  SheetClass sheet;
  Length length;
  bool operator==(const SheetKind&) const = default;
  // By class, then the longest first.
  friend bool operator<(const SheetKind& a, const SheetKind& b) {
    return a.sheet != b.sheet ? a.sheet < b.sheet : a.length > b.length;
  }
};

SheetKind kindOf(const SheetLot& lot);
SheetLot lotOf(const SheetKind& kind, std::int64_t quantity);

// How many of one kind. What came fit to hang is received; what came unfit or will not come is short: a sheet is
// counted in one of them alone, or still to come.
struct PlacedCount {
  std::int64_t placed = 0, received = 0, missing = 0;
  std::int64_t toCome() const { return std::max<std::int64_t>(0, placed - received - missing); }
  // Received and short together are more than was ordered.
  std::int64_t tooMany() const { return std::max<std::int64_t>(0, received + missing - placed); }
  std::int64_t there() const { return received + toCome(); }
  bool operator==(const PlacedCount&) const = default;
};

using PlacedCounts = std::map<SheetKind, PlacedCount>;

PlacedCounts countsOf(const PlacedOrder& order);
// Of all orders together: what one has too many is not what another waits for.
struct SheetSupply {
  std::int64_t placed = 0, received = 0, missing = 0, toCome = 0;
  std::int64_t there() const { return received + toCome; }
  bool operator==(const SheetSupply&) const = default;
};
std::map<SheetKind, SheetSupply> supplyOf(const std::vector<PlacedOrder>& orders);

}  // namespace ribwright
