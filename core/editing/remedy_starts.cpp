// Sheets that start elsewhere: so that seams keep from jambs, rips are wide, and cuts lie on pans.
#include <algorithm>
#include <memory>
#include <set>

#include "core/editing/remedy_ways.h"
#include "core/editing/run_edits.h"
#include "core/editing/wall_items.h"

namespace ribwright {
namespace {

const std::set<std::string_view> ofJambs = {"seam-near-jamb", "cut-on-rib", "uncovered-leg", "jamb-under-rib",
                                            "piece-fragile"};
const std::set<std::string_view> ofRuns = {"narrow-rip", "rip-on-rib", "rib-under-corner-trim", "sheet-without-screws"};

constexpr std::size_t mostTried = 150;  // of a wall on which many starts are tried
constexpr int mostSteps = 24;           // to each side

bool isOfMark(const SheetRun& run, const Wall& wall, const std::string& mark) {
  const std::string sheet = mark.substr(0, mark.find('.'));
  return std::any_of(run.modules.begin(), run.modules.end(),
                     [&](const Module& module) { return wall.letter + std::to_string(module.number) == sheet; });
}

// The run that the finding is of, by its sheet or its opening; else the first.
std::size_t runOf(const SoughtFor& sought) {
  const WallLayout& layout = sought.planned().layout;
  const CutRegion* cut = byId(layout.cuts, sought.finding.mark);
  for (std::size_t i = 0; i < layout.runs.size(); ++i) {
    const SheetRun& run = layout.runs[i];
    if (cut ? cut->left < run.right && cut->right > run.left : isOfMark(run, sought.stated(), sought.finding.mark))
      return i;
  }
  return 0;
}

// How far the start is moved, the least first: what the finding wants, then marks of a rule.
std::vector<Length> distancesOf(const SoughtFor& sought, Length cover) {
  std::vector<Length> all;
  const auto limit = sought.length("limit"), gap = sought.length("gap"), leg = sought.length("leg");
  const auto width = sought.length("width");
  const auto held = gap ? gap : leg ? leg : width;
  if (limit && held) {
    all.push_back(*limit - *held);
    all.push_back(*limit + *held);
  }
  const Length step = sought.job.units == UnitSystem::FeetInches ? Length::inches(0, 32) : Length::millimetres(10);
  const bool many = sought.planned().layout.pieces.size() > mostTried;
  for (int i = 1; i <= mostSteps && !many; ++i) all.push_back(step * i);
  std::erase_if(all, [&](Length by) { return by <= Length() || by >= cover; });
  std::sort(all.begin(), all.end());
  return all;
}

Start& startOf(Wall& wall, std::size_t band) {
  Band& own = wall.bands[band];
  return own.start ? *own.start : wall.start;
}

OfferedRemedy startRemedy(const char* name, WordValues values, const SoughtFor& sought, std::size_t band,
                          const Start& start) {
  return wallRemedy({name, std::move(values)}, *sought.wall, [band, start](Wall& wall) {
    if (band < wall.bands.size()) startOf(wall, band) = start;
  });
}

// Both ways by turns, the shorter first.
RemedyWay moves(const SoughtFor& sought, std::size_t index) {
  RemedyWay way;
  const SheetRun& run = sought.planned().layout.runs[index];
  const Profile* profile = byId(sought.job.profiles, sought.stated().bands[static_cast<std::size_t>(run.band)].profile);
  if (run.modules.empty() || !profile) return way;
  const Length line = run.modules.front().startLine;
  const std::size_t wall = *sought.wall;
  const auto planned = std::make_shared<const Plan>(sought.plan);
  const auto before = std::make_shared<const Wall>(sought.stated());
  for (const Length by : distancesOf(sought, profile->cover)) {
    for (const bool right : {true, false}) {
      const Length to = right ? line + by : line - by;
      way.push_back({{right ? "offer.start-right" : "offer.start-left", {{"by", by}}},
                     [wall, index, to, planned, before](const Job& job) -> Outcome<Job> {
                       const bool same = wall < job.walls.size() && job.walls[wall] == *before;
                       return moduleLineMovedTo(job, same ? *planned : plan(job, *planned), wall, index, to);
                     }});
    }
  }
  return way;
}

void addJambStarts(const SoughtFor& sought, std::size_t band, RemedyWays& ways) {
  const std::string& mark = sought.finding.mark;
  if (!byId(sought.stated().openings, mark)) return;
  Start start;
  start.rule = Start::Rule::SeamAtJamb;
  start.opening = mark;
  RemedyWay way;
  const bool right = sought.finding.part == "right jamb";
  for (const bool other : {false, true}) {
    start.side = right != other ? Start::Side::Right : Start::Side::Left;
    const char* name = start.side == Start::Side::Right ? "offer.seam-right-jamb" : "offer.seam-left-jamb";
    way.push_back(startRemedy(name, {{"opening", mark}}, sought, band, start));
  }
  ways.push_back(way);
}

}  // namespace

void addStartWays(const SoughtFor& sought, RemedyWays& ways) {
  const bool jamb = ofJambs.contains(sought.finding.id);
  if (!sought.wall || !(jamb || ofRuns.contains(sought.finding.id))) return;
  if (sought.planned().layout.runs.empty()) return;
  const std::size_t run = runOf(sought);
  const auto band = static_cast<std::size_t>(sought.planned().layout.runs[run].band);
  ways.push_back(moves(sought, run));
  if (jamb) addJambStarts(sought, band, ways);
  Start equal;
  equal.rule = Start::Rule::EqualRips;
  ways.push_back({startRemedy("offer.equal-rips", {}, sought, band, equal)});
}

}  // namespace ribwright
