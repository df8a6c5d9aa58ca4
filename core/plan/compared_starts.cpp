#include "core/plan/compared_starts.h"

#include <algorithm>

#include "core/job/by_id.h"
#include "core/layout/lay_out_wall.h"

namespace ribwright {

namespace {

Start by(Start::Rule rule) {
  Start start;
  start.rule = rule;
  return start;
}

std::optional<Length> ripOf(const Module& module) {
  if (!module.startRipped && !module.leadRipped) return std::nullopt;
  return module.metalRight - module.metalLeft;
}

void takeRips(ComparedStart& compared, const WallLayout& layout) {
  std::vector<const Module*> modules;
  for (const SheetRun& run : layout.runs) {
    for (const Module& module : run.modules) modules.push_back(&module);
  }
  if (modules.empty()) return;
  compared.firstRip = ripOf(*modules.front());
  compared.lastRip = ripOf(*modules.back());
}

Area steelOf(const Job& job, const Wall& wall, const WallLayout& layout) {
  Area steel;
  for (const Piece& piece : layout.pieces) {
    const SheetRun& run = layout.runs[static_cast<std::size_t>(piece.run)];
    const Profile* profile = byId(job.profiles, wall.bands[static_cast<std::size_t>(run.band)].profile);
    steel += piece.blankLength * profile->metalWidth();
  }
  return steel;
}

bool hasRidge(const WallLayout& layout) {
  return std::any_of(layout.runs.begin(), layout.runs.end(), [&](const SheetRun& run) {
    return layout.face.ridge && *layout.face.ridge > run.left && *layout.face.ridge < run.right;
  });
}

}  // namespace

const Start& startOf(const Wall& wall) {
  return wall.bands.empty() || !wall.bands.front().start ? wall.start : *wall.bands.front().start;
}

Job withStart(const Job& job, std::size_t wall, const Start& start) {
  Job made = job;
  Wall& on = made.walls.at(wall);
  (on.bands.empty() || !on.bands.front().start ? on.start : *on.bands.front().start) = start;
  return made;
}

std::vector<Start> startsFor(const Job& job, const Plan& plan, std::size_t wall) {
  const WallLayout& layout = plan.walls.at(wall)->layout;
  if (!layout.sheeted) return {};
  std::vector<Start> starts{by(Start::Rule::Flush), by(Start::Rule::ModuleLine), by(Start::Rule::EqualRips)};
  if (hasRidge(layout)) {
    starts.push_back(by(Start::Rule::SeamOnRidge));
    starts.push_back(by(Start::Rule::SheetOnRidge));
  }
  for (const CutRegion& cut : layout.cuts) {
    if (cut.penetration || cut.right <= Length() || cut.left >= layout.face.width) continue;
    for (const Start::Side side : {Start::Side::Left, Start::Side::Right}) {
      Start start = by(Start::Rule::SeamAtJamb);
      start.opening = cut.id;
      start.side = side;
      starts.push_back(start);
    }
  }
  starts.push_back(by(Start::Rule::BestOfSearch));
  const Start& now = startOf(job.walls.at(wall));
  if (std::find(starts.begin(), starts.end(), now) == starts.end()) starts.push_back(now);
  return starts;
}

ComparedStart comparedStart(const Job& job, const Plan& plan, std::size_t wall, const Start& start) {
  const Job other = withStart(job, wall, start);
  const Plan planned = ribwright::plan(other, plan);
  const Wall& on = other.walls.at(wall);
  const WallLayout& layout = planned.walls.at(wall)->layout;
  ComparedStart compared;
  compared.start = start;
  compared.stands = start == startOf(job.walls.at(wall));
  takeRips(compared, layout);
  compared.rank = rankOf(other, on, layout);
  compared.sheets = compared.rank.sheets;
  compared.lengths = compared.rank.lengths;
  compared.seamsNearJambs = compared.rank.seamsNearJambs;
  compared.narrowRips = compared.rank.narrowRips;
  for (const Finding& finding : planned.findings) {
    if (finding.wall != on.letter) continue;
    if (finding.grade == Grade::Stop) ++compared.stops;
    if (finding.grade == Grade::Look) ++compared.looks;
  }
  compared.steel = steelOf(other, on, layout);
  return compared;
}

std::vector<ComparedStart> comparedStarts(const Job& job, const Plan& plan, std::size_t wall) {
  std::vector<ComparedStart> all;
  for (const Start& start : startsFor(job, plan, wall)) all.push_back(comparedStart(job, plan, wall, start));
  std::stable_sort(all.begin(), all.end(),
                   [](const ComparedStart& a, const ComparedStart& b) { return a.rank < b.rank; });
  return all;
}

StartSearch searchStarts(const Job& job, std::size_t wall, const std::function<bool(double)>& goOn) {
  StartSearch search;
  const Wall& stated = job.walls.at(wall);
  const Profile* profile = stated.bands.empty() ? nullptr : byId(job.profiles, stated.bands.front().profile);
  if (!profile || stated.cladding != Cladding::Sheeted) return search;
  std::optional<StartRank> best;
  const Length step = tapeMark(job.units);
  for (Length at; at < profile->cover; at += step) {
    if (!goOn(static_cast<double>(at.nanometres()) / static_cast<double>(profile->cover.nanometres()))) return search;
    Start start = by(Start::Rule::Typed);
    start.offset = at;
    const Job other = withStart(job, wall, start);
    const auto layout = layOutWall(other, other.walls[wall]);
    if (!layout) return search;
    const StartRank rank = rankOf(other, other.walls[wall], layout.value());
    if (best && !(rank < *best)) continue;
    best = rank;
    search.best = start;
  }
  search.whole = true;
  return search;
}

}  // namespace ribwright
