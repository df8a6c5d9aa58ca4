// What a person types into a field of the window: as withField, where that is all; and what a person means by it.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

// An opening or a penetration that is measured from another corner or column, or to another edge, stays where it
// stands: its distance is restated. From "column": from the nearest one. Where it stands now must be known for that.
Outcome<Job> withTypedField(const Job& job, std::string_view path, std::string_view text);

// The ids that a field may name, in the job's order ("walls[0].bands[1].profile": its profiles); empty: it names
// nothing.
std::vector<std::string> namesFor(const Job& job, std::string_view path);
bool namesThings(std::string_view owner, std::string_view key);

// What holds in place of an optional field that is absent, where the job says so: of an opening's clearance the
// setting, of a band's thickness the profile's. Empty: nothing in the job.
std::string heldInstead(const Job& job, std::string_view path);

}  // namespace ribwright
