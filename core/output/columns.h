// Names of a table's columns in the units of the table.
#pragma once

#include <string>
#include <vector>

#include "core/units/length_text.h"

namespace ribwright {

// Columns are named for feet and inches; in metric tables the unit at the end changes: _in to _mm, _ft to _m, _sqft to
// _m2, _lb to _kg.
std::vector<std::string> columnsIn(UnitSystem units, std::vector<std::string> columns);

}  // namespace ribwright
