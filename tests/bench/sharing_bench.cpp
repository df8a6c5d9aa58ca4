// Steel bought for each sample job with and without each kind of sharing, and how long sharing takes. Judges nothing.
#include <cstdio>

#include "core/cutting/bought_length.h"
#include "core/cutting/sharing_savings.h"
#include "core/job/by_id.h"
#include "core/job/sample_jobs.h"
#include "core/plan/plan.h"
#include "tests/bench/large_building.h"

using namespace ribwright;
using Way = Blank::Way;

namespace {

struct Bought {
  Length length;
  Area steel;
  int blanks = 0, shared = 0;
};

Bought bought(const Job& job, const std::vector<const WallLayout*>& layouts) {
  Bought all;
  for (const Blank& blank : shareBlanks(job, layouts)) {
    const Profile& profile = *byId(job.profiles, blank.sheet.profile);
    const Length length = boughtLength(profile.lengths, blank.length);
    all.length += length;
    all.steel += length * profile.metalWidth();
    ++all.blanks;
    all.shared += blank.parts.size() > 1;
  }
  return all;
}

Job sharing(Job job, bool all) {
  job.settings.sharing = {};
  job.settings.sharing.reach = all ? Sharing::Reach::On : Sharing::Reach::Off;
  return job;
}

void tell(const char* with, const Bought& is, const Bought& off) {
  std::printf("  %-10s %5d sheets (%3d shared)  %10.2f ft  %10.2f sq ft  saved %8.2f ft %8.2f sq ft %5.2f %%\n", with,
              is.blanks, is.shared, is.length.inFeet(), is.steel.inSquareFeet(), (off.length - is.length).inFeet(),
              (off.steel - is.steel).inSquareFeet(),
              100 * (off.steel.inSquareFeet() - is.steel.inSquareFeet()) / off.steel.inSquareFeet());
}

void tellJob(const char* name, const Job& job) {
  const Plan planned = plan(job);
  const auto layouts = planned.layouts();
  std::printf("%s\n", name);
  const Bought off = bought(sharing(job, false), layouts);
  tell("off", off, off);
  const char* const names[] = {"", "rake pairs", "rip pairs", "drops", "gangs"};
  for (const Way way : {Way::RakePair, Way::RipPair, Way::Drop, Way::Gang})
    tell(names[int(way)], bought(withWayAlone(sharing(job, true), way), layouts), off);
  const Job all = sharing(job, true);
  tell("all", bought(all, layouts), off);
  const double seconds = bench::seconds([&] { shareBlanks(all, layouts); }, 9);
  std::printf("  sharing takes %.2f ms, without sharing %.2f ms\n", seconds * 1e3,
              bench::seconds([&] { shareBlanks(sharing(job, false), layouts); }, 9) * 1e3);
}

}  // namespace

int main() {
  for (const std::string_view name : sampleNames()) tellJob(std::string(name).c_str(), sampleJob(name));
  // Gable ends of some 200 sheets together, laid so that each can be turned.
  Job large = bench::building(Length::feet(750), 60);
  for (Profile& profile : large.profiles) {
    profile.section = {{-profile.over, Length()}, {profile.cover + profile.under, Length()}};
    profile.lengths.longest = Length::feet(120);
  }
  tellJob("750 x 300 ft, 60 openings, turnable", large);
}
