// sharing.csv: which pieces come out of one blank.
#pragma once

#include <string>

#include "core/cutting/blank.h"
#include "core/output/csv.h"
#include "core/plan/plan.h"
#include "core/units/length_text.h"

namespace ribwright {

// One row a part, of blanks that give two pieces or more. `length`: of the sheet as it is ordered; off the
// shelf: of the blank, once cut from its stock. line: of sheet-order.csv. left, right: from the blank's lip edge; from,
// to: from its lower end, of the room that the part takes; of a rake pair the rooms overlap. turned: end for end, other
// than its wall's sheets lie; upside_down: its lower end lies toward the blank's upper end. saved: length that need not
// be bought, on the first part's row of each blank alone, so that the column adds up. `plan` must be of `job`.
Table sharingTable(const Job& job, const Plan& plan, UnitSystem units);

// "rake pair", "rip pair", "drop", "gang", "alone": as in the table's column.
std::string wayWord(Blank::Way way);

}  // namespace ribwright
