// Reading a whole file into memory.
#pragma once

#include <cstddef>
#include <string>

#include "core/units/outcome.h"

namespace ribwright {

// Faults: it is not there, is a folder, may not be read, is larger than `most` bytes. The place is the path.
Outcome<std::string> readWhole(const std::string& path, std::size_t most);

}  // namespace ribwright
