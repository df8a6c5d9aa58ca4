// Writing files that belong together: all of them, or none.
//
// A packet whose order is new and whose cuts are old would be worse than no packet. So all new files are first written
// whole into a hidden folder inside the target, with a copy of each file that they replace, and only then take their
// places one by one, the last of the list last. When one cannot, those before it are put back.
#pragma once

#include <string>
#include <vector>

#include "core/job/file_writing.h"
#include "core/output/packet_tables.h"
#include "core/units/outcome.h"

namespace ribwright {

// `directory` is made if it is missing; what else lies in it stays. Faults name the file or folder; none: all is on the
// disk.
std::vector<Fault> writeFileSet(const std::string& directory, const std::vector<PacketFile>& files, Storage& storage);

}  // namespace ribwright
