// What is stated of a wall and cannot be followed, its lower end and corners, the site, and facts from it.
#include <algorithm>

#include "core/editing/remedy_ways.h"
#include "core/editing/run_edits.h"
#include "core/editing/sight_edits.h"
#include "core/editing/wall_items.h"

namespace ribwright {
namespace {

void addProfiles(const SoughtFor& sought, RemedyWays& ways) {
  const auto& profiles = sought.job.profiles;
  for (std::size_t i = 0; i < profiles.size() && i < mostOffered; ++i)
    ways.push_back({wallRemedy({"offer.profile", {{"profile", profiles[i].id}}}, *sought.wall,
                               [profile = profiles[i].id](Wall& wall) {
                                 if (wall.bands.empty()) wall.bands.resize(1);
                                 for (Band& band : wall.bands) {
                                   if (band.profile.empty()) band.profile = profile;
                                 }
                               })});
  ways.push_back(
      {wallRemedy({"offer.by-others"}, *sought.wall, [](Wall& wall) { wall.cladding = Cladding::ByOthers; })});
  ways.push_back({wallRemedy({"offer.open"}, *sought.wall, [](Wall& wall) { wall.cladding = Cladding::Open; })});
}

void addStarts(const SoughtFor& sought, RemedyWays& ways) {
  const auto over = sought.length("over");
  if (sought.is("reach-too-short") && over) {
    const bool rightward = sought.planned().layout.direction.hand == Hand::LeftToRight;
    ways.push_back({wallRemedy({"offer.reach", {{"over", *over}}}, *sought.wall, [rightward, over = *over](Wall& wall) {
      (rightward ? wall.reachLeft : wall.reachRight) = over;
    })});
  }
  ways.push_back({wallRemedy({"offer.flush"}, *sought.wall, [](Wall& wall) {
    const auto mended = [](Start& start) {
      const bool follows = start.rule == Start::Rule::Flush || start.rule == Start::Rule::Typed;
      if (!follows) start = {};
    };
    mended(wall.start);
    for (Band& band : wall.bands) {
      if (band.start) mended(*band.start);
    }
  })});
}

void addBandOrder(const SoughtFor& sought, RemedyWays& ways) {
  ways.push_back({wallRemedy({"offer.band-order"}, *sought.wall, [](Wall& wall) {
    std::stable_sort(wall.bands.begin(), wall.bands.end(), [](const Band& a, const Band& b) {
      return (a.from ? 1 : 0) != (b.from ? 1 : 0) ? !a.from : a.from && *a.from < *b.from;
    });
  })});
  const auto& bands = sought.stated().bands;
  for (std::size_t i = 1; i < bands.size(); ++i) {
    if (sought.finding.mark != "band " + std::to_string(i + 1)) continue;
    ways.push_back({{{"offer.no-band", {{"band", std::int64_t(i + 1)}}},
                     [wall = *sought.wall, i](const Job& job) { return bandRemoved(job, wall, i); }}});
  }
}

void addModules(const SoughtFor& sought, RemedyWays& ways) {
  const auto module = sought.number("module");
  if (!module) return;
  ways.push_back({wallRemedy({"offer.not-translucent", {{"module", *module}}}, *sought.wall,
                             [module = static_cast<int>(*module)](Wall& wall) {
                               for (Band& band : wall.bands) std::erase(band.translucent, module);
                             })});
}

void addJoints(const SoughtFor& sought, RemedyWays& ways) {
  const auto joint = sought.length("joint");
  if (!joint) return;
  ways.push_back({wallRemedy({"offer.no-joint", {{"u", *joint}}}, *sought.wall,
                             [joint = *joint](Wall& wall) { std::erase(wall.expansionJoints, joint); })});
}

// Sheets' ends against grade, slab edge and chalk line.
void addLowerEnds(const SoughtFor& sought, RemedyWays& ways) {
  const std::size_t wall = *sought.wall;
  const Base& base = sought.stated().base;
  const auto gap = sought.length("gap"), limit = sought.length("limit"), lower = sought.length("lower");
  const auto drop = [&](Length to) {
    ways.push_back({wallRemedy({"offer.drop", {{"drop", to}}}, wall, [to](Wall& on) { on.base.drop = to; })});
  };
  const bool overhang = base.form == Base::Form::Overhang;
  if (sought.is("sheet-end-near-grade") && overhang && gap && limit && base.drop > *limit - *gap)
    drop(base.drop - (*limit - *gap));
  if (sought.is("slab-edge-open") && !lower && overhang) drop(Base{}.drop);
  if (sought.is("slab-edge-open") && lower && overhang) drop(base.drop + *lower);
  const auto by = sought.length("by");
  if (sought.is("chalk-off-sheets") && by) {
    if (overhang && sought.stated().survey.chalkLine && *sought.stated().survey.chalkLine < Length())
      drop(-*sought.stated().survey.chalkLine);
    ways.push_back({wallRemedy({"offer.no-chalk"}, wall, [](Wall& on) { on.survey.chalkLine.reset(); })});
  }
}

void addCorner(const SoughtFor& sought, RemedyWays& ways) {
  const auto reach = [&](const std::string& letter, bool right) {
    for (std::size_t i = 0; i < sought.job.walls.size(); ++i) {
      if (sought.job.walls[i].letter != letter) continue;
      ways.push_back({wallRemedy({"offer.no-reach", {{"wall", letter}}}, i,
                                 [right](Wall& wall) { (right ? wall.reachRight : wall.reachLeft) = Length(); })});
    }
  };
  reach(sought.finding.wall, true);
  reach(sought.text("other"), false);
}

// A wall of the outline stands among those by letter.
void addWall(const SoughtFor& sought, RemedyWays& ways) {
  for (const auto& [name, cladding] :
       {std::pair("offer.by-others", Cladding::ByOthers), {"offer.open", Cladding::Open}}) {
    ways.push_back({{{name}, [letter = sought.finding.wall, cladding = cladding](const Job& job) -> Outcome<Job> {
                       Job next = job;
                       Wall wall;
                       wall.letter = letter;
                       wall.cladding = cladding;
                       const auto after = std::find_if(next.walls.begin(), next.walls.end(),
                                                       [&](const Wall& each) { return each.letter > letter; });
                       next.walls.insert(after, wall);
                       return next;
                     }}});
  }
}

void addFacts(const SoughtFor& sought, RemedyWays& ways) {
  const std::string mark = sought.finding.mark;
  if (sought.is("hung-sheet-unknown"))
    ways.push_back({{{"offer.not-hung", {{"mark", mark}}}, [mark](const Job& job) -> Outcome<Job> {
                       Job next = job;
                       std::erase_if(next.facts.hung, [&](const HungSheet& hung) { return hung.mark == mark; });
                       return next;
                     }}});
  if (sought.is("survey-girt-unknown") && sought.wall)
    ways.push_back({wallRemedy({"offer.no-readings", {{"girt", mark}}}, *sought.wall, [mark](Wall& wall) {
      std::erase_if(wall.survey.girts, [&](const GirtSurvey& survey) { return survey.girt == mark; });
    })});
  if (sought.is("sight-point-inside"))
    ways.push_back({{{"offer.no-sight", {{"name", mark}}}, [mark](const Job& job) -> Outcome<Job> {
                       for (std::size_t i = 0; i < job.site.sightPoints.size(); ++i) {
                         if (job.site.sightPoints[i].name == mark) return sightPointRemoved(job, i);
                       }
                       return job;
                     }}});
}

}  // namespace

void addStatementWays(const SoughtFor& sought, RemedyWays& ways) {
  addFacts(sought, ways);
  if (sought.is("corner-reached-twice")) addCorner(sought, ways);
  if (sought.is("wall-not-stated")) addWall(sought, ways);
  if (!sought.wall) return;
  if (sought.is("no-sheets-stated")) addProfiles(sought, ways);
  if (sought.is("start-not-followed") || sought.is("reach-too-short")) addStarts(sought, ways);
  if (sought.is("band-limits")) addBandOrder(sought, ways);
  if (sought.is("translucent-missing")) addModules(sought, ways);
  if (sought.is("joint-off-wall")) addJoints(sought, ways);
  addLowerEnds(sought, ways);
  if (sought.is("hang-against-rule"))
    ways.push_back({wallRemedy({"offer.by-rule"}, *sought.wall, [](Wall& wall) { wall.hang = Hang::ByRule; })});
}

}  // namespace ribwright
