// At which lengths the blanks of one class are bought, and which of them come out of one sheet.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/cutting/cut_marks.h"
#include "core/takeoff/length_tradeoff.h"
#include "core/takeoff/sheet_order.h"

namespace ribwright {

// The least length made that a blank can come from: whole steps of the increment, at least the shortest. Longer than
// the longest made: its own length in whole steps.
Length lengthMade(const SheetLengths& lengths, Length blank);

struct SoldSheet {
  Length length;
  PieceRef first;           // of its pieces the one hung first
  std::vector<int> blanks;  // indices into `blanks`, from its lower end up
  Length used;              // its blanks and the kerfs between them
};

struct SoldClass {
  std::vector<SoldSheet> sheets;  // in the order of their blanks
  std::optional<ShelfCut> cut;    // of sheets off the shelf, if the cutter had anything to cut
};

// The blanks from index `from` to before `to`, all of one class, of this profile. Off the shelf, what came out of one
// of the sheets in `cut` stays with it while it fits there.
SoldClass soldOf(const Settings& settings, const Profile& profile, const std::vector<Blank>& blanks, int from, int to,
                 const std::vector<CutSheet>& cut);

// How often each length is wanted that may be chosen among (Settings::mostOrderLengths): lengths made for these blanks,
// but for what is longer than the longest made. Empty for sheets off the shelf.
std::vector<WantedLength> wantedLengths(const Profile& profile, std::span<const Blank> blanks);

}  // namespace ribwright
