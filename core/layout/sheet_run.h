// The module lines of a run, in hanging coordinates t (from the start corner; see hanging_frame.h).
//
// Module k covers [offset + k c, offset + (k+1) c]; its metal reaches `over` back past its own line and `under` past
// the next, cut to the wall and its reach. A module whose metal adds no uncovered face is not hung. A hung sheet is a
// fact: its metal ends at its measured leading edge, and the run goes on from there.
#pragma once

#include <map>
#include <set>
#include <vector>

#include "core/units/length.h"

namespace ribwright {

struct RunRules {
  Length length;                // of the run: the face is [0, length]
  Length cover, over, under;    // cover > over + under
  Length reachStart, reachEnd;  // around the corners
  Length offset;                // of the first module line, 0 <= offset < cover
  std::map<int, Length>
      leadingEdges;  // measured t of the leading metal edge of the n-th hung sheet of the run (0, 1 ...)
  // Places in the run where none hangs, since the sheets beside them hang and follow each other.
  std::set<int> passedOver;
};

struct RunModule {
  Length line, lead;          // t of its module line and of the next
  Length from, to;            // t of its metal, cut to the wall and its reach
  Length wholeFrom, wholeTo;  // t of its metal before that
  bool hung = false;
  int place = 0;  // 0, 1 ... in the run, those passed over counted
};

std::vector<RunModule> modulesOf(const RunRules& rules);

}  // namespace ribwright
