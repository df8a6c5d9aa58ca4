// Why a batch is held and what to do about it, in words: phrases under "held." and "remedy.".
#pragma once

#include "core/fastening/drill_batches.h"
#include "core/words/words.h"

namespace ribwright {

Phrase whyHeld(const DrillBatch& batch, const HoldReason& reason);
Phrase whatToDo(const DrillBatch& batch, const Remedy& remedy);

// "base angle", "girt g1", "eave purlin": the row of a template.
Phrase rowWords(const BatchRow& row);
// "sheets B3 to B7", "sheet B9": of a batch, by its first and last sheet.
Phrase sheetsOf(const DrillBatch& batch, const WallLayout& layout);

}  // namespace ribwright
