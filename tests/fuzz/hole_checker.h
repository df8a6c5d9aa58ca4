// The independent proof of a wall's screws. It reads the trade's rules from the job, the sheets from the layout's
// results, and holds the holes against them; it calls nothing of core/fastening.
#pragma once

#include <string>

#include "tests/fuzz/complaints.h"
#include "tests/fuzz/screwed_wall.h"

namespace ribwright::fuzz {

// Every stretch of steel, part by part; jambs; the order of rows.
void checkSupports(const ScrewedWall& wall, Complaints& complaints);
// Which pattern each run takes, the corner zone, kinds without screws.
void checkPatterns(const ScrewedWall& wall, Complaints& complaints);
// Every hole by itself: metal, edges, cuts, seat, screw face, sheets it goes through; and its neighbours on a sheet.
void checkEachHole(const ScrewedWall& wall, Complaints& complaints);
// Every place that supports, pattern and sheets give is a hole, refused for the first reason that holds, or merged; and
// there is nothing else.
void checkPlaces(const ScrewedWall& wall, Complaints& complaints);

// All of it for one wall, and for all walls.
void checkScrews(const ScrewedWall& wall, Complaints& complaints);
Complaints checkScrews(const Job& job, const Plan& plan);

}  // namespace ribwright::fuzz
