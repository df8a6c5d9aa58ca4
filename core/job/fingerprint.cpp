#include "core/job/fingerprint.h"

#include <algorithm>
#include <cstdint>

#include "core/job/by_id.h"
#include "core/job/digest.h"
#include "core/job/job_file.h"
#include "core/units/typed_text.h"

namespace ribwright {
namespace {

// Digits that cannot be taken for each other: no i, l, o, u.
constexpr std::string_view digits = "0123456789abcdefghjkmnpqrstvwxyz";
constexpr std::size_t groupSize = 3;

std::string groupOf(const Job& part) {
  const std::string digest = fnv1a64(writeJob(part));
  std::uint64_t bits = std::stoull(digest, nullptr, 16);
  bits ^= bits >> 30;  // all of the digest has a say in the 15 bits that are kept
  bits ^= bits >> 15;
  std::string group;
  for (std::size_t i = 0; i < groupSize; ++i, bits >>= 5) group += digits[bits & 31];
  return group;
}

Wall plain(const Wall& wall) {
  Wall part;
  part.letter = wall.letter;
  return part;
}

Wall buildingOf(const Wall& wall) {
  Wall part = plain(wall);
  part.cladding = wall.cladding;
  part.line = wall.line;
  part.width = wall.width;
  part.top = wall.top;
  part.eaveHoldDown = wall.eaveHoldDown;
  part.rakeHoldDown = wall.rakeHoldDown;
  part.base = wall.base;
  part.slabOffset = wall.slabOffset;
  part.columns.offset = wall.columns.offset;
  part.columns.bays = wall.columns.bays;
  return part;
}

Wall sheetsOf(const Wall& wall) {
  Wall part = plain(wall);
  part.reachLeft = wall.reachLeft;
  part.reachRight = wall.reachRight;
  part.expansionJoints = wall.expansionJoints;
  part.hang = wall.hang;
  part.start = wall.start;
  part.bands = wall.bands;
  for (Band& band : part.bands) band.pattern.clear();
  part.rakeCut = wall.rakeCut;
  part.endLaps = wall.endLaps;
  return part;
}

Wall openingsOf(const Wall& wall) {
  Wall part = plain(wall);
  part.openings = wall.openings;
  for (Opening& opening : part.openings) opening.frame = FrameSteel();
  part.penetrations = wall.penetrations;
  return part;
}

Wall steelOf(const Wall& wall) {
  Wall part = plain(wall);
  part.girtSetting = wall.girtSetting;
  part.girts = wall.girts;
  part.baseAngle = wall.baseAngle;
  part.eavePurlin = wall.eavePurlin;
  part.rakeAngle = wall.rakeAngle;
  part.columns.member = wall.columns.member;
  part.columns.flange = wall.columns.flange;
  for (const Opening& opening : wall.openings) {
    Opening frame;
    frame.id = opening.id;
    frame.frame = opening.frame;
    part.openings.push_back(frame);
  }
  return part;
}

Wall screwsOf(const Wall& wall) {
  Wall part = plain(wall);
  part.pattern = wall.pattern;
  for (const Band& band : wall.bands) {
    Band one;
    one.pattern = band.pattern;
    part.bands.push_back(one);
  }
  return part;
}

Wall surveyOf(const Wall& wall) {
  Wall part = plain(wall);
  part.survey = wall.survey;
  return part;
}

using WallPart = Wall (*)(const Wall&);
constexpr WallPart wallParts[kStatedParts] = {buildingOf, sheetsOf, openingsOf, steelOf, screwsOf, surveyOf};

bool namesPattern(const Wall& wall, const std::string& id) {
  return wall.pattern == id ||
         std::any_of(wall.bands.begin(), wall.bands.end(), [&](const Band& band) { return band.pattern == id; });
}

bool hangs(const Wall& wall, const std::string& profile) {
  return std::any_of(wall.bands.begin(), wall.bands.end(), [&](const Band& band) { return band.profile == profile; });
}

template <class Uses>
bool anyWall(const std::vector<Wall>& walls, const Uses& uses) {
  return std::any_of(walls.begin(), walls.end(), uses);
}

void takeOrdering(Settings& to, const Settings& from) {
  to.mostOrderLengths = from.mostOrderLengths;
  to.kerf = from.kerf;
  to.leastDrop = from.leastDrop;
  to.sharing = from.sharing;
  to.spares = from.spares;
  to.bundles = from.bundles;
}

// What pages of the whole job say beyond those of its walls: how sheets are bought, and trim.
void addOrdering(Job& some, const Job& job) {
  takeOrdering(some.settings, job.settings);
  some.trims = job.trims;
  some.trimRules = job.trimRules;
  for (std::size_t i = 0; i < some.walls.size(); ++i) some.walls[i].shares = job.walls[i].shares;
}

// The job less all that is no part of this, and with these walls alone.
Job reduced(const Job& job, StatedPart part, const std::vector<Wall>& walls) {
  Job some;
  some.units = job.units;  // how lengths are written: pages show it
  if (part == StatedPart::Building) {
    some.site = job.site;
    some.building = job.building;
    some.building.name.clear();
    some.settings = job.settings;
    some.settings.cornerZones = CornerZones();
    takeOrdering(some.settings, Settings());
  }
  if (part == StatedPart::Steel) some.members = job.members;
  for (const Profile& profile : job.profiles) {
    const auto uses = [&](const Wall& wall) { return hangs(wall, profile.id); };
    if (part == StatedPart::Sheets && anyWall(walls, uses)) some.profiles.push_back(profile);
  }
  if (part == StatedPart::Screws) {
    some.screws = job.screws;
    some.settings.cornerZones = job.settings.cornerZones;
    for (const ScrewPattern& pattern : job.patterns) {
      if (anyWall(walls, [&](const Wall& wall) { return namesPattern(wall, pattern.id); }))
        some.patterns.push_back(pattern);
    }
  }
  for (const Wall& wall : walls) some.walls.push_back(wallParts[static_cast<std::size_t>(part)](wall));
  return some;
}

Fingerprint fingerprint(const Job& job, std::string of, const std::vector<Wall>& walls) {
  Fingerprint made{std::move(of), {}};
  for (std::size_t i = 0; i < kStatedParts; ++i) {
    const auto part = static_cast<StatedPart>(i);
    Job some = reduced(job, part, walls);
    if (made.of.empty() && part == StatedPart::Sheets) addOrdering(some, job);
    made.groups[i] = groupOf(some);
  }
  return made;
}

Fault noFingerprint(std::string_view text) {
  return {std::string(text),
          "is no fingerprint; it reads like A.k3f.9bq.77a.0c4.e2d.55b, or job. and six groups, and stands in the "
          "page's title "
          "block"};
}

}  // namespace

std::string Fingerprint::text() const {
  std::string all = of.empty() ? "job" : of;
  for (const std::string& group : groups) all.append(1, '.').append(group);
  return all;
}

Fingerprint fingerprintOf(const Job& job) { return fingerprint(job, "", job.walls); }

Fingerprint fingerprintOf(const Job& job, const Wall& wall) { return fingerprint(job, wall.letter, {wall}); }

Outcome<Fingerprint> readFingerprint(std::string_view text) {
  std::string trimmed(text);
  trimmed.erase(0, trimmed.find_first_not_of(" \t"));
  trimmed.erase(trimmed.find_last_not_of(" \t") + 1);
  std::vector<std::string> words(1);
  for (const char letter : trimmed) {
    if (letter == '.') {
      words.emplace_back();
    } else {
      words.back() += letter;
    }
  }
  if (words.size() != kStatedParts + 1 || words[0].empty()) return noFingerprint(text);
  const auto lower = [](std::string word) {
    for (char& letter : word) {
      if (letter >= 'A' && letter <= 'Z') letter = static_cast<char>(letter - 'A' + 'a');
    }
    return word;
  };
  Fingerprint read;
  if (lower(words[0]) != "job") read.of = words[0];
  for (std::size_t i = 0; i < kStatedParts; ++i) {
    const std::string group = lower(words[i + 1]);
    if (group.size() != groupSize || group.find_first_not_of(digits) != std::string::npos) return noFingerprint(text);
    read.groups[i] = group;
  }
  return read;
}

Outcome<std::vector<StatedPart>> changedSince(const Job& job, const Fingerprint& printed) {
  Fingerprint now;
  if (printed.of.empty()) {
    now = fingerprintOf(job);
  } else {
    const Wall* wall = byLetter(job.walls, printed.of);
    if (!wall)
      return Fault{printed.text(), std::string("the job has no wall ")
                                       .append(printed.of)
                                       .append("; the page is of another job, and is to be checked against that one")};
    now = fingerprintOf(job, *wall);
  }
  std::vector<StatedPart> changed;
  for (std::size_t part = 0; part < kStatedParts; ++part) {
    if (now.groups[part] != printed.groups[part]) changed.push_back(static_cast<StatedPart>(part));
  }
  return changed;
}

}  // namespace ribwright
