// Girts that are wanted, band limits and end laps that go by them.
#include <algorithm>
#include <charconv>

#include "core/editing/girt_edits.h"
#include "core/editing/remedy_ways.h"
#include "core/editing/run_edits.h"
#include "core/editing/wall_items.h"

namespace ribwright {
namespace {

constexpr int mostGirts = 4;  // that are put in at once

bool isWhole(const Girt& girt) { return !girt.from && !girt.to; }

// As they stand on another wall, from corner to corner.
void addGirtsOfOthers(const SoughtFor& sought, RemedyWays& ways) {
  for (const Wall& other : sought.job.walls) {
    std::vector<Girt> girts;
    std::copy_if(other.girts.begin(), other.girts.end(), std::back_inserter(girts), isWhole);
    if (girts.empty() || ways.size() == mostOffered) continue;
    ways.push_back({wallRemedy({"offer.girts-of-wall", {{"wall", other.letter}}}, *sought.wall,
                               [girts](Wall& wall) { wall.girts = girts; })});
  }
}

// At even distances between two heights: one, or as many as it takes.
void addGirtsBetween(const SoughtFor& sought, RemedyWays& ways) {
  const auto from = sought.length("from"), to = sought.length("to");
  if (!from || !to || *to <= *from) return;
  RemedyWay way;
  for (int count = 1; count <= mostGirts; ++count) {
    std::vector<Length> heights;
    for (int i = 1; i <= count; ++i)
      heights.push_back(roundTo(*from + scaled(*to - *from, i, count + 1), tapeMark(sought.job.units)));
    const Phrase name =
        count == 1 ? Phrase{"offer.girt", {{"z", heights[0]}}}
                   : Phrase{"offer.girts",
                            {{"count", std::int64_t(count)}, {"from", heights.front()}, {"to", heights.back()}}};
    way.push_back({name, [wall = *sought.wall, heights](const Job& job) {
                     Outcome<Job> next = job;
                     for (const Length height : heights) {
                       if (next) next = addGirt(next.value(), wall, girtAtHeight(next.value(), wall, height));
                     }
                     return next;
                   }});
  }
  ways.push_back(way);
}

// "band 2" is the second.
std::optional<std::size_t> bandOf(const std::string& mark) {
  constexpr std::string_view word = "band ";
  std::size_t number = 0;
  if (mark.starts_with(word)) std::from_chars(mark.data() + word.size(), mark.data() + mark.size(), number);
  return number > 0 ? std::optional(number - 1) : std::nullopt;
}

void addLimits(const SoughtFor& sought, RemedyWays& ways) {
  const auto z = sought.length("z");
  const auto band = bandOf(sought.finding.mark);
  if (!z || !band) return;
  std::vector<Length> heights;
  for (const Girt& girt : sought.stated().girts) heights.push_back(girt.height);
  std::sort(heights.begin(), heights.end(), [&](Length a, Length b) { return absolute(a - *z) < absolute(b - *z); });
  RemedyWay way;
  for (const Length height : heights)
    way.push_back({{"offer.limit", {{"z", height}}}, [wall = *sought.wall, band = *band, height](const Job& job) {
                     return bandLimitMovedTo(job, wall, band, height);
                   }});
  ways.push_back(way);
  ways.push_back({{{"offer.girt", {{"z", *z}}}, [wall = *sought.wall, z = *z](const Job& job) {
                     return addGirt(job, wall, girtAtHeight(job, wall, z));
                   }}});
}

void addEndLaps(const SoughtFor& sought, RemedyWays& ways) {
  const std::size_t wall = *sought.wall;
  if (sought.is("piece-too-long"))
    ways.push_back({wallRemedy({"offer.lap-where-needed"}, wall,
                               [](Wall& on) { on.endLaps.where = EndLaps::Where::WhereNeeded; })});
  const WallFace& face = sought.planned().layout.face;
  const Length middle = half(face.bottom.lowest(Length(), face.width) + face.steel.highest(Length(), face.width));
  std::vector<Girt> whole;
  for (const Girt& girt : sought.stated().girts) {
    if (isWhole(girt)) whole.push_back(girt);
  }
  std::sort(whole.begin(), whole.end(),
            [&](const Girt& a, const Girt& b) { return absolute(a.height - middle) < absolute(b.height - middle); });
  RemedyWay way;
  for (const Girt& girt : whole)
    way.push_back(wallRemedy({"offer.lap-at-girt", {{"girt", girt.id}}}, wall, [id = girt.id](Wall& on) {
      const bool atGirts = on.endLaps.where == EndLaps::Where::AtGirts;
      if (!atGirts) on.endLaps.girts.clear();
      on.endLaps.where = EndLaps::Where::AtGirts;
      if (std::find(on.endLaps.girts.begin(), on.endLaps.girts.end(), id) == on.endLaps.girts.end())
        on.endLaps.girts.push_back(id);
    }));
  ways.push_back(way);
}

// Those that girts of this job have are offered first.
void addMembers(const SoughtFor& sought, RemedyWays& ways) {
  std::vector<std::string> ids;
  for (const Wall& wall : sought.job.walls) {
    for (const Girt& girt : wall.girts) {
      if (!girt.member.empty() && std::find(ids.begin(), ids.end(), girt.member) == ids.end())
        ids.push_back(girt.member);
    }
  }
  if (ids.empty() && sought.job.members.size() == 1) ids.push_back(sought.job.members[0].id);
  for (std::size_t i = 0; i < ids.size() && i < mostOffered; ++i)
    ways.push_back({wallRemedy({"offer.member", {{"member", ids[i]}}}, *sought.wall, [id = ids[i]](Wall& wall) {
      for (Girt& girt : wall.girts) {
        if (girt.member.empty()) girt.member = id;
      }
    })});
}

}  // namespace

void addSupportWays(const SoughtFor& sought, RemedyWays& ways) {
  if (!sought.wall) return;
  if (sought.is("no-girts")) addGirtsOfOthers(sought, ways);
  if (sought.is("span-too-long") || sought.is("rows-too-far-apart") || sought.is("no-row-between"))
    addGirtsBetween(sought, ways);
  if (sought.is("sheet-end-unsupported")) addLimits(sought, ways);
  if (sought.is("piece-too-long") || sought.is("piece-heavy")) addEndLaps(sought, ways);
  if (sought.is("girt-face-unknown")) addMembers(sought, ways);
  if (sought.is("end-lap-off-girt")) {
    const std::string girt = sought.finding.mark;
    ways.push_back({wallRemedy({"offer.no-lap-at-girt", {{"girt", girt}}}, *sought.wall,
                               [girt](Wall& wall) { std::erase(wall.endLaps.girts, girt); })});
  }
  const auto limit = sought.length("limit");
  if (sought.is("end-lap-short") && limit)
    ways.push_back({wallRemedy({"offer.lap", {{"lap", *limit}}}, *sought.wall,
                               [lap = *limit](Wall& wall) { wall.endLaps.lap = lap; })});
}

}  // namespace ribwright
