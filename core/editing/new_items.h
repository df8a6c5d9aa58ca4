// What a new item of a list begins as: like its neighbour, with an id and a place of its own, or with sizes that a
// person sees at once and types over.
#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

// Puts an item in before the one at `at`. Empty: it stands there. Faults: there is nothing that it could be.
std::vector<Fault> addItem(Job& job, std::string_view list, std::size_t at);

// An optional object that has just come to be there takes what is known of it: a wall's line its width, a confirmation
// the pattern's numbers.
void fillStated(Job& job, std::string_view path);

}  // namespace ribwright
