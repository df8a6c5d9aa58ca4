// Edits of a wall's girts. Each gives the job as it is afterwards and leaves the one it was given alone.
//
// `wall` is an index into Job::walls; heights are of the edge or line that the girt is typed by, places are u. Girts
// keep their order in the list, whatever their heights. What was measured is a fact from site: readings of a girt that
// is deleted stay in the survey, where a finding says that they are of no girt, and the next girt is not given that id.
// Readings of a girt that is split go with the part that they were read on. End laps at a girt that is split are at
// both parts; those at a deleted one stay and are found. Faults of every call but adding: the wall has no such girt.
#pragma once

#include <cstddef>
#include <optional>
#include <string>

#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

// A girt as the highest one below this height, or the lowest of all (the member, the flange, how it is typed), running
// from corner to corner under the next id.
Girt girtAtHeight(const Job& job, std::size_t wall, Length height);

// Put in below the first that is higher. A girt without an id is given the next one. Fault: its id is taken.
Outcome<Job> addGirt(const Job& job, std::size_t wall, Girt girt);
Outcome<Job> girtMovedTo(const Job& job, std::size_t wall, const std::string& id, Length height);

enum class GirtEnd { Left, Right };
// Stopped at u; absent: run on to the corner. Fault: nothing of it would be left.
Outcome<Job> girtEndMovedTo(const Job& job, std::size_t wall, const std::string& id, GirtEnd end,
                            const std::optional<Length>& u);

// In two: the left part keeps the id, the right part is put in behind it under the next one. Fault: it does not pass
// these places. A reading on a jamb belongs to the part that ends there; one within the opening to the left part.
Outcome<Job> girtSplitAt(const Job& job, std::size_t wall, const std::string& id, Length u);
// The parts end at the jambs' steel; a girt that ends within the opening is stopped at its jamb.
Outcome<Job> girtSplitRound(const Job& job, std::size_t wall, const std::string& id, const std::string& opening);

// Run on from corner to corner. Other girts of its height, member, flange and clip on that line become part of it, with
// their readings. Fault: two of them were measured at one station.
Outcome<Job> girtRunThrough(const Job& job, std::size_t wall, const std::string& id);

Outcome<Job> girtRemoved(const Job& job, std::size_t wall, const std::string& id);

}  // namespace ribwright
