// Things of a wall that are called otherwise, with all that refers to them.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "core/job/job.h"

namespace ribwright {

using NewNames = std::vector<std::pair<std::string, std::string>>;  // old and new

// What names an opening of this wall, a penetration or a girt by its old id (starts at a jamb, end laps, readings,
// silenced findings) names it by the new one. The items themselves have their new ids already. Names may change places.
void renameOpenings(Job& job, std::size_t wall, const NewNames& names);
void renamePenetrations(Job& job, std::size_t wall, const NewNames& names);
void renameGirts(Job& job, std::size_t wall, const NewNames& names);

// Why a girt may not be called so: the name of another edge, or of readings that are of no girt. Empty: it may.
std::string troubleWithGirtName(const Wall& before, const std::string& id, const NewNames& names);

}  // namespace ribwright
