// How rows of a table are put in order by what stands in a column.
#pragma once

#include <QString>

#include "core/units/length_text.h"

namespace ribwright {

// Numbers within words count as numbers (W2 before W10), capitals do not count.
bool naturallyBefore(const QString& a, const QString& b);

// Lengths by how long they are; what is no length behind them, naturally.
bool lengthBefore(const QString& a, const QString& b, const LengthStyle& style);

}  // namespace ribwright
