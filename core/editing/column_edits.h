// Edits of a wall's columns. Each gives the job as it is afterwards and leaves the one it was given alone.
//
// `wall` is an index into Job::walls, `column` counts 1, 2 ... from the left, places are u. Openings and penetrations
// that are anchored from columns stay anchored from the same column, by its new number where columns are counted anew.
// A wall without bays has one place to measure from, column 1 at the grid's offset, and no column; adding one makes the
// first bay.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

// What becomes of what is anchored from a column that moves or goes.
enum class Anchored {
  Follow,  // it stays at its stated distance and goes with the column; one whose column goes is measured at that
           // distance from the nearest that is left (the left one of two as near)
  Stay,    // its distance is restated so that it stays where it is
};

// The two bays beside it change, the others stay. Faults: there is no such column; it would come to or past another.
Outcome<Job> columnMovedTo(const Job& job, std::size_t wall, int column, Length u, Anchored anchored);
// All of them at once, from left to right; as many as there are.
Outcome<Job> columnsMovedTo(const Job& job, std::size_t wall, const std::vector<Length>& places, Anchored anchored);

// Nothing moves. Fault: a column stands there.
Outcome<Job> columnAdded(const Job& job, std::size_t wall, Length u);
// The bays beside it become one.
Outcome<Job> columnRemoved(const Job& job, std::size_t wall, int column, Anchored anchored);

// `text` as parseLengthString reads it in the job's own units ("20', 4@25', 20'"); column 1 stays where it is. What was
// anchored from a column beyond the last of the new ones stays where it is, measured from the last.
Outcome<Job> baysFromText(const Job& job, std::size_t wall, const std::string& text, Anchored anchored);

}  // namespace ribwright
