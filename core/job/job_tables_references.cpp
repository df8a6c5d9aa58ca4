// What a job names, it must hold: profiles, members, screws and patterns by id. Openings, girts and columns that a wall
// names are not asked for here: an edit can take them away, and the checks find that.
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/job/job_file_text.h"
#include "core/job/job_tables.h"

namespace ribwright {
namespace {

// The ids of one list of the job, and complaints about names that are none of them.
class Ids {
 public:
  template <class M>
  Ids(Fields<Job>& job, std::string_view list, const std::vector<M>& items) : job_(job), list_(list) {
    known_ = job.soundAt(list);
    for (const M& item : items) {
      if (item.id.empty()) known_ = false;  // a fault already; what it was meant to be nobody knows
      ids_.push_back(item.id);
      sorted_.insert(item.id);
    }
  }

  void hold(const std::string& id, const std::string& place) {
    if (id.empty() || !known_ || sorted_.contains(id)) return;
    job_.wrong(place, joined(quoted(id), " is none of this job's ", list_, "; ", remedy(id)));
  }

 private:
  // Looking for the nearest takes its time: in a file that is wrong a thousand times over, not for each.
  std::string remedy(const std::string& id) {
    if (ids_.empty()) return "the job holds none";
    if (++missed_ > 100 || ids_.size() > 1000) return "name one that the job holds";
    return joined("the nearest is ", quoted(nearestOf(id, {ids_.begin(), ids_.end()})));
  }

  Fields<Job>& job_;
  std::string_view list_;
  std::vector<std::string> ids_;
  std::set<std::string, std::less<>> sorted_;
  std::size_t missed_ = 0;
  bool known_ = true;
};

std::string at(const std::string& before, std::string_view list, std::size_t i) {
  return joined(before, itemPath(list, i), ".");
}

void ofPattern(const ScrewPattern& pattern, const std::string& place, Ids& profiles, Ids& screws) {
  profiles.hold(pattern.profile, place + "profile");
  screws.hold(pattern.stitchScrew, place + "stitch_screw");
  for (std::size_t i = 0; i < pattern.rows.size(); ++i) {
    screws.hold(pattern.rows[i].screw, at(place, "rows", i) + "screw");
  }
}

void ofWall(const Wall& wall, const std::string& place, Ids& profiles, Ids& members, Ids& patterns) {
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
  Ids profiles(job, "profiles", read.profiles);
  Ids members(job, "members", read.members);
  Ids screws(job, "screws", read.screws);
  Ids patterns(job, "patterns", read.patterns);
  for (std::size_t i = 0; i < read.patterns.size(); ++i) {
    ofPattern(read.patterns[i], at("", "patterns", i), profiles, screws);
  }
  for (std::size_t i = 0; i < read.walls.size(); ++i) {
    ofWall(read.walls[i], at("", "walls", i), profiles, members, patterns);
  }
}

}  // namespace ribwright
