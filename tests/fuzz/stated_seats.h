// Where across a sheet a screw may sit, read from the profile's cross-section by the trade's rules: this is the
// checker's own, nothing of core/fastening.
#pragma once

#include "core/job/profile.h"
#include "tests/fuzz/spans.h"

namespace ribwright::fuzz {

// x from the module line. Pan flats, washer radius + 1/16 in away from bends.
Spans statedSeats(const Profile& profile, Nm washer);
// x from the module line. Crown flats, whole.
Spans statedCrowns(const Profile& profile);

}  // namespace ribwright::fuzz
