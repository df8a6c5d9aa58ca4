#include "core/takeoff/placed_sheets.h"

namespace ribwright {

SheetKind kindOf(const SheetLot& lot) {
  return {{lot.profile, lot.thickness, lot.translucent ? "" : lot.colour, lot.translucent}, lot.length};
}

SheetLot lotOf(const SheetKind& kind, std::int64_t quantity) {
  SheetLot lot;
  lot.profile = kind.sheet.profile;
  lot.thickness = kind.sheet.thickness;
  lot.colour = kind.sheet.colour;
  lot.translucent = kind.sheet.translucent;
  lot.length = kind.length;
  lot.quantity = static_cast<int>(quantity);
  return lot;
}

PlacedCounts countsOf(const PlacedOrder& order) {
  PlacedCounts counts;
  for (const SheetLot& lot : order.placed) counts[kindOf(lot)].placed += lot.quantity;
  for (const SheetLot& lot : order.received) counts[kindOf(lot)].received += lot.quantity;
  for (const SheetLot& lot : order.shortfall) counts[kindOf(lot)].missing += lot.quantity;
  return counts;
}

std::map<SheetKind, SheetSupply> supplyOf(const std::vector<PlacedOrder>& orders) {
  std::map<SheetKind, SheetSupply> supply;
  for (const PlacedOrder& order : orders) {
    for (const auto& [kind, count] : countsOf(order)) {
      SheetSupply& all = supply[kind];
      all.placed += count.placed;
      all.received += count.received;
      all.missing += count.missing;
      all.toCome += count.toCome();
    }
  }
  return supply;
}

}  // namespace ribwright
