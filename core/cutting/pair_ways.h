// How two pieces come out of one blank, and what that saves.
#pragma once

#include <optional>

#include "core/cutting/share_piece.h"

namespace ribwright {

struct PairWay {
  Blank::Way way = Blank::Way::RakePair;
  bool turned = false;  // the second part
  Length length;        // of the blank
  Length saved;         // of length bought, > 0
};

// The way that saves most, by the kinds that are on, of ways that save as much the first of Blank::Way, not turned
// rather than turned; absent: none saves. `first` is the longer (then the one of the lower mark); both of one class.
//   Rake pair: both tops slope, rising alike as they lie; one stands on the blank's lower end, one hangs from its upper
//   end. So it is of walls hung in opposite directions; of one direction, the second is turned.
//   Rip pair: side by side, a kerf between; the second turned where it would not lie beside otherwise.
//   Drop: of a piece shorter than the shortest length made. Two that fit that length together are a gang, where gangs
//   are on. Never off the shelf: there the cutting of the stock does it.
std::optional<PairWay> pairWay(const SharePiece& first, const SharePiece& second, const Settings& settings);

// The longer comes first, then the lower mark.
bool comesFirst(const SharePiece& a, const SharePiece& b);

}  // namespace ribwright
