// Rows and kinds of screws as findings name them: words from resources/words.en.json under "screws.".
#pragma once

#include <string>
#include <vector>

#include "core/checks/wall_look.h"

namespace ribwright {

// "end-lap": never translated, for keys.
std::string kindId(HoleKind kind);
// "end lap".
std::string kindWords(HoleKind kind);
// The kind under which a row of a pattern is stated: "end lap", in a corner's rows "corner end lap".
std::string kindWords(SupportKind kind, Zone zone);

// "girt g2", "base angle", "head of W1", "left jamb of W1". `row`: as in Hole.
std::string rowWords(const WallSupports& supports, HoleKind kind, std::int32_t row);

// ", band 2" on a wall of several bands; nothing where there is one.
std::string bandWords(const Wall& wall, int band);
// Tells bands of one wall apart in a key; nothing where there is one.
std::string bandPart(const Wall& wall, int band);

// "B3, B7, B9 and 12 more".
std::string listed(const std::vector<std::string>& names, std::size_t most = 6);

// A text of the shipped words, without lengths in it.
std::string said(const std::string& id, const WordValues& values = {});

}  // namespace ribwright
