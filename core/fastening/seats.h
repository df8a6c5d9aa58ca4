// Where across a sheet a screw may sit.
//
// Structural screws: on a pan flat (y = 0: it bears on the supports), washer radius + 1/16 in away from a bend. Where
// the flat ends at the sheet's own edge there is no bend; the distance from metal edges is asked for elsewhere. On a
// curved (corrugated) sheet, given as short chords, the level chord at the bottom of a valley is the whole seat: two
// chords that turn by less than 15 degrees are one curve and no bend (our own rule; common practice: screws of a
// corrugated wall stand in the middle of the valley).
// Stitch screws: on a crown flat, no distance asked from its bends.
#pragma once

#include <optional>
#include <vector>

#include "core/job/profile.h"
#include "core/job/section.h"

namespace ribwright {

inline constexpr Length kFromBend = Length::inches(0, 4);  // 1/16 in, beside the washer's radius (common practice)

// x of the metal from the module line, rising, from <= to; ends included. `washer`: its diameter; an odd nanometre of
// its half counts as a whole one.
std::vector<Flat> structuralSeats(const Profile& profile, Length washer);

// Crown flats; none on a flat sheet.
std::vector<Flat> stitchSeats(const Profile& profile);

// Seats rising. True when x lies on one, ends included.
bool isOnSeat(const std::vector<Flat>& seats, Length x);

// The nearest x on a seat, within [from, to]; of two equally near the smaller. Absent: none there.
std::optional<Length> nearestOnSeat(const std::vector<Flat>& seats, Length x, Length from, Length to);

}  // namespace ribwright
