// Trim by the piece: at each place what its rules say, and where a piece is longer than what is sold, in several parts.
#pragma once

#include <string>
#include <vector>

#include "core/job/trim.h"
#include "core/takeoff/trim_places.h"
#include "core/words/words.h"

namespace ribwright {

// One length of trim as it is cut. Of several of one piece each lies over the one before.
struct TrimPart {
  Length length;
  Length at;  // of its beginning, along the piece from the end that is set first
  bool operator==(const TrimPart&) const = default;
};

struct TrimPiece {
  std::string id;  // as it is written on the piece: "W1 head", "A rake 2", "AB corner"; each different; not translated
  std::string at;  // what it is of, the id's beginning: "W1", "A", "AB"
  int again = 1;   // 2, 3 ... of several that would be called alike
  TrimPlace place;
  std::string rule, trim;  // ids
  std::string colour;
  Length length;  // size x times / parts + allowance, half to even to the nanometre; > 0
  Length lip;     // of each end, within the length
  TrimRule::Laps laps = TrimRule::Laps::Butts;
  // Never empty; parts[i + 1].at = parts[i].at + parts[i].length - the trim's lap; the last ends where the piece does.
  // Upright and sloped pieces are set from below, level ones from the corner where the wall's sheets begin, so that
  // their laps too face away from the eye.
  std::vector<TrimPart> parts;
  bool operator==(const TrimPiece&) const = default;
};

// A place that has no piece.
struct TrimMiss {
  enum class Why {
    NoRule,    // no rule speaks of such a place
    NoTrim,    // the rule names no trim
    NoLength,  // the rule leaves no length beyond its lips
  };
  Why why = Why::NoRule;
  TrimPlace place;
  std::string rule;  // its id; empty with NoRule
  Length length;     // what came out, with NoLength
  bool operator==(const TrimMiss&) const = default;
};

struct TrimTakeoff {
  // In the order in which they are set, what lies under first: of each wall in the order of `layouts` base, openings in
  // the wall's hanging direction, transitions, eaves, rakes; corners last.
  std::vector<TrimPiece> pieces;
  std::vector<TrimMiss> misses;
};

// A job that states no rule has neither pieces nor misses. Throws std::invalid_argument when a layout's wall or a
// rule's trim is not in the job.
TrimTakeoff trimTakeoff(const Job& job, const std::vector<const WallLayout*>& layouts);

// The id in words that can be translated: "W1 dintel".
Phrase trimPieceName(const TrimPiece& piece);

}  // namespace ribwright
