// What of a piece decides whom it may share a blank with.
#pragma once

#include <optional>
#include <vector>

#include "core/cutting/blank.h"
#include "core/cutting/top_edge.h"

namespace ribwright {

struct SharePiece {
  PieceRef ref;
  SheetClass sheet;
  const Profile* profile = nullptr;
  bool mayShare = false;  // its wall lets it, and its sheet does not hang yet
  // It lies or hangs cut, out of one sheet with others that have this number (cut_marks.h): it shares with those alone.
  std::optional<int> cutWith;
  Length cutFrom;            // what that sheet was ordered at
  bool mayTurn = false;      // a turned sheet laps alike and looks alike
  bool rightToLeft = false;  // so its wall hangs: as it lies in a blank its lower end is up
  Length left, right;        // x of its metal as its wall's sheets lie in a blank
  Length height;             // from its lowest end to its highest
  Length needed;             // height and what is added where the rake is cut in place
  Length alone;              // blank of its own: needed, up to the increment unless it comes off the shelf
  Length bought;             // of a blank of its own
  // As it lies in a blank, x rising; empty where it cannot share along a sloped cut: its rake is cut in place, its top
  // has no one slope, or its lower end is cut.
  TopEdge rake;
  bool rises = false;  // with x, of its upper edge as the blank lies
};

// All of the layouts, by PieceRef. Throws as sheetClassOf.
std::vector<SharePiece> sharePieces(const Job& job, const std::vector<const WallLayout*>& layouts);

// Turned end for end: what lay by the lip lies by the leg. Its `rises` stays, as any line's does that is turned so.
SharePiece turned(const SharePiece& piece);

}  // namespace ribwright
