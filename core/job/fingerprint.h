// Fingerprints: what a page was printed from, so that a stale sheet of paper can be known.
//
// One for the job and one for each wall: a letter and six groups, "A.k3f.9bq.77a.0c4.e2d.55b", one group for each part
// of what is stated, so that not only a change but where it lies can be told. Left out: revision, date, note, name and
// number of the job, what has been hung or ordered, prices, and silenced findings. How
// sheets are bought and what is trimmed is on no wall's page: it is in the job's own alone, with the sheets. Each group
// is 15 bits of a digest of the part's text in the job file's own form: of 32,768 changes one would go unseen.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

// In the order of the groups.
enum class StatedPart { Building, Sheets, Openings, Steel, Screws, Survey };
inline constexpr std::size_t kStatedParts = 6;

struct Fingerprint {
  std::string of;  // a wall's letter; empty: the whole job
  std::array<std::string, kStatedParts> groups;
  std::string text() const;  // the job's own begins with "job"
  bool operator==(const Fingerprint&) const = default;
};

Fingerprint fingerprintOf(const Job& job);
Fingerprint fingerprintOf(const Job& job, const Wall& wall);

// As printed, capitals or not, blanks around it allowed. Faults: no fingerprint.
Outcome<Fingerprint> readFingerprint(std::string_view text);

// The parts in which the job is no longer what the page was printed from. Faults: the job has no such wall.
Outcome<std::vector<StatedPart>> changedSince(const Job& job, const Fingerprint& printed);

}  // namespace ribwright
