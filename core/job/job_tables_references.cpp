// What a job names, it must hold: profiles, members, screws, patterns and trims by id. Openings, girts and columns that
// a wall names are not asked for here: an edit can take them away, and the checks find that.
#include <string>
#include <string_view>

#include "core/job/job_file_held.h"
#include "core/job/job_tables.h"

namespace ribwright {
namespace {

std::string at(const std::string& before, std::string_view list, std::size_t i) {
  return joined(before, itemPath(list, i), ".");
}

void ofWall(const Wall& wall, const std::string& place, HeldIds& profiles, HeldIds& members, HeldIds& patterns) {
  for (std::size_t i = 0; i < wall.bands.size(); ++i) {
    profiles.hold(wall.bands[i].profile, at(place, "bands", i) + "profile");
    patterns.hold(wall.bands[i].pattern, at(place, "bands", i) + "pattern");
  }
  for (std::size_t i = 0; i < wall.openings.size(); ++i) {
    members.hold(wall.openings[i].frame.member, at(place, "openings", i) + "frame.member");
  }
  for (std::size_t i = 0; i < wall.girts.size(); ++i) {
    members.hold(wall.girts[i].member, at(place, "girts", i) + "member");
  }
  members.hold(wall.baseAngle.member, place + "base_angle.member");
  members.hold(wall.eavePurlin.member, place + "eave_purlin.member");
  members.hold(wall.rakeAngle.member, place + "rake_angle.member");
  members.hold(wall.columns.member, place + "columns.member");
  patterns.hold(wall.pattern, place + "pattern");
}

}  // namespace

void references(Fields<Job>& job) {
  const Job& read = job.read();
  HeldIds profiles(job.form(), "job", "profiles", read.profiles);
  HeldIds members(job.form(), "job", "members", read.members);
  HeldIds screws(job.form(), "job", "screws", read.screws);
  HeldIds patterns(job.form(), "job", "patterns", read.patterns);
  HeldIds trims(job.form(), "job", "trims", read.trims);
  for (std::size_t i = 0; i < read.trimRules.size(); ++i) {
    trims.hold(read.trimRules[i].trim, at("", "trim_rules", i) + "trim");
  }
  for (std::size_t i = 0; i < read.patterns.size(); ++i) {
    const std::string place = at("", "patterns", i);
    profiles.hold(read.patterns[i].profile, place + "profile");
    holdScrews(read.patterns[i], place, screws);
  }
  for (std::size_t i = 0; i < read.walls.size(); ++i) {
    ofWall(read.walls[i], at("", "walls", i), profiles, members, patterns);
  }
}

}  // namespace ribwright
