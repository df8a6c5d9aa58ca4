// Work that is not saved yet, as a file beside the job's: which job file it belongs to, who kept it and when, and the
// job itself.
//
// JSON text, in which the job's text stands whole and is sealed by a digest, so that a torn or half-written file is
// seen for what it is. Whatever a strange file holds, reading it gives a value within these limits or a fault.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

struct KeptWork {
  std::string file;        // path of the job's file; empty: the job has none yet
  std::string fileDigest;  // of that file when it was read or saved last: 64 hexadecimal digits; empty without a file
  std::string when;        // in Greenwich: "2026-03-02T16:05:09Z"
  std::string host;        // name of the computer
  std::uint64_t process = 0;  // its number there
  std::string window;         // whose work it is: 16 hexadecimal digits, anew for every job that is opened
  std::uint64_t number = 0;   // 1, 2, ...: of the same window's, the higher is the newer
  std::string job;            // text of a job file
  bool operator==(const KeptWork&) const = default;
};

std::string keptText(const KeptWork& kept);
// `name` begins every fault's place. Faults: no JSON, a key that is missing, strange or double, a value that is none of
// the above, a job's text that is not the one that was kept. Whether the text is a job is for readJob to say.
Outcome<KeptWork> readKept(std::string_view text, std::string_view name);

bool isWindowId(std::string_view text);

}  // namespace ribwright
