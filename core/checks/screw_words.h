// Rows and kinds of screws as findings name them: phrases of the words under "screws.", said once a language is known.
#pragma once

#include <string>
#include <vector>

#include "core/checks/wall_look.h"

namespace ribwright {

// "end-lap": never translated, for keys.
std::string kindId(HoleKind kind);
// "end lap".
WordValue kindWords(HoleKind kind);
// The kind under which a row of a pattern is stated: "end lap", in a corner's rows "corner end lap".
WordValue kindWords(SupportKind kind, Zone zone);

// "girt g2", "base angle", "head of W1", "left jamb of W1". `row`: as in Hole.
WordValue rowWords(const WallSupports& supports, HoleKind kind, std::int32_t row);

// ", band 2" on a wall of several bands; nothing where there is one.
WordValue bandWords(const Wall& wall, int band);
// Tells bands of one wall apart in a key; nothing where there is one.
std::string bandPart(const Wall& wall, int band);

// "B3, B7, B9 and 12 more". A name that stands alone is given as it is.
WordValue listed(const std::vector<std::string>& names, std::size_t most = 6);
WordValue listed(const std::vector<WordValue>& names, std::size_t most = 6);

WordValue phrase(std::string id, WordValues values = {});

}  // namespace ribwright
