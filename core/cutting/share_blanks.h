// Which pieces come out of one blank.
#pragma once

#include <vector>

#include "core/cutting/blank.h"

namespace ribwright {

// Every piece of the layouts in exactly one blank, those of one class (SheetClass) together, classes in their order,
// then blanks in the order of their first part. What may be shared is what the job's settings and walls say (Sharing,
// Wall::shares). Throws as sheetClassOf.
// Pieces that were ordered out of one sheet stay together when one of them hangs (cut_marks.h).
std::vector<Blank> shareBlanks(const Job& job, const std::vector<const WallLayout*>& layouts);

}  // namespace ribwright
