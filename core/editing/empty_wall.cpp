#include "core/editing/empty_wall.h"

#include <algorithm>

#include "core/editing/held_edit.h"
#include "core/editing/new_job_file.h"
#include "core/editing/wall_items.h"
#include "core/job/job_file.h"
#include "core/layout/wall_face.h"

namespace ribwright {

namespace {

const Band* bandWithProfile(const Job& job) {
  for (const Wall& wall : job.walls) {
    for (const Band& band : wall.bands) {
      if (!band.profile.empty()) return &band;
    }
  }
  return nullptr;
}

std::vector<Girt> girtsToTake(const Job& job) {
  for (const Wall& wall : job.walls) {
    if (!wall.girts.empty()) return wall.girts;
  }
  std::vector<Girt> girts;
  const NewJob& shipped = shippedNewJob(job.units);
  const auto heights = parseLengthString(shipped.sideGirts, {job.units, '.'});
  for (const Length height : heights.value()) {
    Girt girt;
    girt.id = "g" + std::to_string(girts.size() + 1);
    girt.height = height;
    girts.push_back(std::move(girt));
  }
  return girts;
}

}  // namespace

WallLacks lacking(const Wall& wall) {
  if (wall.cladding != Cladding::Sheeted) return WallLacks::Sheets;
  const auto bare = [](const Band& band) { return band.profile.empty(); };
  if (wall.bands.empty() || std::any_of(wall.bands.begin(), wall.bands.end(), bare)) return WallLacks::Profile;
  return wall.girts.empty() ? WallLacks::Girts : WallLacks::Nothing;
}

Outcome<Job> sheetsHung(const Job& job, std::size_t wall) {
  const Band* like = bandWithProfile(job);
  return editedWall(job, wall, [&](Wall& on) {
    on.cladding = Cladding::Sheeted;
    if (!on.bands.empty()) return;
    Band band;
    if (like) band.profile = like->profile;
    if (like) band.colour = like->colour;
    on.bands.push_back(std::move(band));
  });
}

Outcome<Job> profileHung(const Job& job, std::size_t wall, const std::string& profile) {
  Job made = job;
  if (!byId(job.profiles, profile)) {
    const Profile* shipped = byId(shippedProfiles(), profile);
    if (!shipped)
      return Fault{"walls." + job.walls.at(wall).letter + ".bands",
                   "\"" + profile + "\" is neither a profile of this job nor a shipped one; choose one of those"};
    made.profiles.push_back(*shipped);
  }
  return editedWall(made, wall, [&](Wall& on) {
    if (on.bands.empty()) on.bands.push_back({});
    for (Band& band : on.bands) {
      if (band.profile.empty()) band.profile = profile;
    }
  });
}

Outcome<Job> girtsAdded(const Job& job, std::size_t wall) {
  const Wall& stated = job.walls.at(wall);
  if (!stated.girts.empty()) return Fault{listPlace(stated, "girts"), "are stated already"};
  const auto face = wallFace(job, stated);
  if (!face) return face.faults();
  const Length top = face.value().steel.highest(Length(), face.value().width);
  const Length bottom = face.value().bottom.lowest(Length(), face.value().width);
  std::vector<Girt> girts = girtsToTake(job);
  std::erase_if(girts, [&](const Girt& girt) { return girt.height >= top || girt.height <= bottom; });
  if (girts.empty())
    return Fault{listPlace(stated, "girts"), "at the ordinary heights none would stand on this wall; draw them"};
  for (Girt& girt : girts) {
    girt.from.reset();  // places along another wall say nothing here
    girt.to.reset();
  }
  return editedWall(job, wall, [&](Wall& on) { on.girts = std::move(girts); });
}

}  // namespace ribwright
