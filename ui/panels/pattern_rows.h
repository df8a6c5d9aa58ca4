// A pattern's numbers as they are held against a plan sheet, in words.
#pragma once

#include <QString>
#include <QStringList>
#include <vector>

#include "core/job/screws.h"
#include "ui/session/session.h"

namespace ribwright {

struct PatternRowText {
  QString where, numbers, screw;  // "girt, field", "0", 12"", "12-24x1.25"
};

// Everything that its confirmation stands for (pattern_numbers.h).
std::vector<PatternRowText> patternRows(const Session& session, const ScrewPattern& pattern);

// "Not confirmed", "Confirmed: ...", "Its confirmation has fallen: ...".
QString standingText(const Session& session, const ScrewPattern& pattern);

}  // namespace ribwright
