// Edits of a wall's survey. Each gives the job as it is afterwards and leaves the one it was given alone.
//
// `wall` is an index into Job::walls. Stations stay from left to right, one reading at each place.
#pragma once

#include <cstddef>
#include <optional>
#include <string>

#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

// `girt` as GirtSurvey::girt names it: a girt's id, or "eave". A reading at the same station is replaced.
Job setReading(const Job& job, std::size_t wall, const std::string& girt, const GirtReading& reading);
// The girt is struck from the survey with its last reading. Nothing there: nothing changes.
Job clearReading(const Job& job, std::size_t wall, const std::string& girt, Length u);

Job setSlab(const Job& job, std::size_t wall, const SlabReading& reading);
Job clearSlab(const Job& job, std::size_t wall, Length u);

Job setProps(const Job& job, std::size_t wall, bool inPlace);
// Absent: at the sheets' bottom by the plans.
Job setChalkLine(const Job& job, std::size_t wall, const std::optional<Length>& z);

enum class Diagonal { Rising, Falling };  // from the bottom left; from the top left
// Absent: not measured. A diagonal of nothing or less is a fault.
Outcome<Job> setDiagonal(const Job& job, std::size_t wall, Diagonal which, const std::optional<Length>& length);

}  // namespace ribwright
