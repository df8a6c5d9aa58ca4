// How far apart screws may be, and rows of them: sets to choose from, as data.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/job/screws.h"

namespace ribwright {

struct SpacingLimits {
  std::optional<Length> atSupports;   // between screws of one row on a support
  std::optional<Length> atEndLaps;    // between screws of an end lap's row
  std::optional<Length> atSideLaps;   // between screws along a side lap
  std::optional<Length> betweenRows;  // between rows up a sheet; and then at least one between bottom and top
  std::optional<Length> endLap;       // least end lap
  std::string source;                 // of all that is stated above
  bool operator==(const SpacingLimits&) const = default;
};

// Plan's own: nothing but the pattern's own stated limit. UFGS 07413 3.1.1.1: 8 in at end laps and at intermediate
// supports, 18 in at side laps. NZ Metal Roof and Wall Cladding Code of Practice: wall end lap about 150 mm; no screw
// spacing of it was at hand. BRANZ Build 146: top, bottom and one row between up to 2.4 m, then rows at most 1200 mm
// apart. The pattern's own limit, between screws of a row, holds beside whichever set is chosen, the smaller of the
// two.
SpacingLimits spacingLimits(const ScrewPattern& pattern);

// Below, a limit of 0 or less limits nothing.

// Fewest equal spaces of at most `limit` that fill `length`: at least 1 (0 when length is 0 or less).
std::int64_t evenSpaces(Length length, Length limit);
// Fewest screws across one cover so that a row from sheet to sheet keeps the limit: at least 1.
std::int64_t fewestPerCover(Length cover, Length limit);
// BRANZ Build 146: rows between bottom and top of a sheet: ceil(height / limit) - 1, at least 1.
std::int64_t rowsBetween(Length height, Length limit);

}  // namespace ribwright
