// The job file: JSON text that people can read, compare and mend (resources/job.schema.json).
//
// Lengths are text with a unit ("12' 3-1/2\"", "3750 mm"), slopes text ("4:12", "150 in 250", "9.5 deg"), angles
// numbers of degrees, choices plain words. Keys stand in a fixed order; what equals its default is left out. writeJob
// gives the same bytes for the same job everywhere, and readJob(writeJob(job)) is the job.
//
// The reader refuses what has no meaning, every fault at once, each with its place ("job.json:
// walls[1].girts[3].height"). What an edit can bring about (an opening off its wall, a column that is gone, no profile
// chosen) reads, and is found later.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

class Storage;

// `name` is what faults call the file.
Outcome<Job> readJob(std::string_view text, std::string_view name);
std::string writeJob(const Job& job);

// What would keep this job from being read again; empty: it can be saved.
std::vector<Fault> faultsOf(const Job& job);

// The bytes of a job file, for readJob. Faults: as readWhole, or too large to be one.
Outcome<std::string> jobText(const std::string& path);
Outcome<Job> loadJob(const std::string& path);

struct SavedFile {
  std::string path;
  std::size_t bytes = 0;
};
// Whole or not at all (file_writing.h). A job that could not be read again is refused before anything is touched.
Outcome<SavedFile> saveJob(const Job& job, const std::string& path);
Outcome<SavedFile> saveJob(const Job& job, const std::string& path, Storage& storage);

// JSON Schema 2020-12 of a job file; resources/job.schema.json holds this text.
std::string jobSchema();

// A profile in a file of its own: the same table as in a job.
Outcome<Profile> readProfile(std::string_view text, std::string_view name);
std::string writeProfile(const Profile& profile, UnitSystem units);
// Those that ship inside the program (resources/profiles), by file name.
const std::vector<Profile>& shippedProfiles();

}  // namespace ribwright
