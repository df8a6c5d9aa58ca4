// How far delivered sheets and steel may differ from what is ordered. All lengths exact; a limit belongs to the named
// document.
#pragma once

#include <optional>

#include "core/units/length.h"

namespace ribwright {

// least <= measured <= most.
struct ToleranceRange {
  Length least, most;
  bool operator==(const ToleranceRange&) const = default;
};

// EN 508-1 Annex D.1.9: an end may be out of square by 0.005 of the cover width.
Length squarenessLimit(Length coverWidth);

// EN 508-1 Annex D.1.10: +10/-5 mm up to 3000 mm. Absent for longer sheets, whose row was not at hand.
std::optional<ToleranceRange> lengthTolerance(Length ordered);

// EN 508-1 Annex D.1.4: pitch +/-2 mm up to 50 mm deep, +/-3 mm up to 100 mm, +/-4 mm deeper.
Length pitchTolerance(Length depth);

enum class ThicknessTolerance { Normal, Special };  // Special: marked S on the order

// EN 10143:2006, steel with a yield strength under 260 MPa (stronger grades have wider tables): thickness with its
// coating, of coil `width` wide. Absent outside 0.20 to 1.60 mm.
std::optional<ToleranceRange> thicknessTolerance(Length thickness, Length width, ThicknessTolerance which);

// MBMA Metal Building Systems Manual 2012, Table 9.1: cold-formed steel is delivered at no less than 0.95 of its design
// thickness. Rounded half to even to the nanometre.
Length leastDeliveredThickness(Length design);

}  // namespace ribwright
