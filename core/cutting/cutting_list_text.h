// A cutting list as plain text in whole numbers of any one unit, a statement a line:
//
//   # trim of the north wall, sixteenths of an inch
//   stock 1952 3888        lengths of stock
//   cost 14 27             what one costs, parallel to stock; left out: see costOf
//   supply 40 -            how many there are, parallel to stock; - or left out: as many as wanted
//   kerf 2                 lost between two pieces; left out: 0
//   trim 8                 lost at both ends of each stock together; left out: 0
//   1520 12                length and count, as many lines as wanted
#pragma once

#include <string_view>

#include "core/cutting/cutting_list.h"
#include "core/units/outcome.h"

namespace ribwright {

// Whether the text begins as such a list does, and not as a table.
bool looksLikeCuttingList(std::string_view text);

// Faults: of the text, each with its line ("line 3"); those of faultsOf() of the list, with their line where they have
// one.
Outcome<CuttingList> readCuttingList(std::string_view text);

}  // namespace ribwright
