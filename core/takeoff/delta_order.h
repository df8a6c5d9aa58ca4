// What is to be ordered now, after the job changed or sheets came short: what is needed against what was ordered.
//
// Needed are the blanks of all pieces, those that hang included, since the sheets that they were cut from are counted
// as ordered too. There is what was ordered and did not come short. What is there is used first: as much needed length
// as possible comes from it, then as little as possible is cut off (served_needs.h), a longer sheet for a shorter need,
// one need a sheet.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/takeoff/placed_sheets.h"

namespace ribwright {

struct SheetNeed {
  SheetKind order;    // as the sheet order lists it
  Length least;       // that the sheet must measure: its blank; <= order.length
  std::string marks;  // of the pieces that come out of it: "B7", "A3+C4"; empty: a spare
  bool hung = false;
  bool operator==(const SheetNeed&) const = default;
};

// Sheets of one kind, there or to come, that serve needs of one length.
struct ServedNeeds {
  SheetKind sheet;
  Length need;
  bool toCome = false;             // ordered, not received yet
  std::vector<std::string> marks;  // one a sheet
  std::vector<std::string> hung;   // of them, those that hang: they came out of such sheets already
  Length cutOff() const { return sheet.length - need; }
  bool operator==(const ServedNeeds&) const = default;
};

struct UnneededSheets {
  SheetKind sheet;
  std::int64_t onSite = 0, toCome = 0;
  bool operator==(const UnneededSheets&) const = default;
};

struct DeltaOrder {
  std::vector<SheetLot> toOrder;         // by kind; marks of the needs that nothing there serves
  std::vector<ServedNeeds> served;       // by kind of sheet, then the longest need, received before to come
  std::vector<UnneededSheets> leftOver;  // by kind
  std::vector<SheetLot> toCome;          // by kind
  bool operator==(const DeltaOrder&) const = default;
};

// Any needs. Spares of a kind that was ordered before are not needed anew: what they were bought for may have happened.
DeltaOrder deltaOrder(const std::vector<SheetNeed>& needs, const std::vector<PlacedOrder>& orders);

}  // namespace ribwright
