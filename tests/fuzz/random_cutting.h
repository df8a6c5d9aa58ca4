// Made-up lists of lengths to be cut.
#pragma once

#include "core/cutting/cutting_list.h"
#include "tests/fuzz/dice.h"

namespace ribwright::fuzz {

// A handful of pieces that brute force can go through, of all kinds that a list may be: kerf, end trim, costs,
// supplies, equal lengths in several lines, lines of which none is wanted.
CuttingList tinyCuttingList(Dice& dice);

// Trim as a steel building makes it, in sixteenths of an inch with a kerf of 1/8 in: `stocks` lengths of stock, up to
// 60 lengths and 2 000 pieces.
CuttingList trimCuttingList(Dice& dice, int stocks);

}  // namespace ribwright::fuzz
