// The checker of screws and the random patterns are tools of proof, so they are proved first: buildings have what they
// promise, and a wall with one screw wrong is found out.
#include <algorithm>
#include <catch2/catch.hpp>
#include <functional>
#include <map>

#include "core/job/job_file.h"
#include "tests/fuzz/hole_checker.h"
#include "tests/fuzz/screwed_job.h"

namespace ribwright::fuzz {
namespace {

using SpoilHoles = std::function<bool(WallHoles&)>;  // false: nothing to spoil here

bool complains(const Job& job, const WallPlan& plan) {
  Complaints complaints;
  checkScrews(ScrewedWall(job, job.walls.front(), plan), complaints);
  return !complaints.lines().empty();
}

struct SoundWall {
  Job job;
  WallPlan plan;  // of its first wall
};

// Of the first buildings, as they were planned.
const std::vector<SoundWall>& soundWalls() {
  static const std::vector<SoundWall> walls = [] {
    std::vector<SoundWall> sound;
    for (int i = 0; i < 120; ++i) {
      const Job job = screwedJob(i);
      const WallPlan wall = *plan(job).walls.front();
      if (!wall.holes.holes.empty() && !complains(job, wall)) sound.push_back({job, wall});
    }
    return sound;
  }();
  return walls;
}

// In how many of them a wall's screws were spoiled, and in how many of those the checker found it.
std::pair<int, int> holesSpoiledAndFound(const SpoilHoles& spoil) {
  int spoiled = 0, found = 0;
  for (const SoundWall& sound : soundWalls()) {
    WallPlan wall = sound.plan;
    if (spoiled == 20 || !spoil(wall.holes)) continue;
    ++spoiled;
    if (complains(sound.job, wall)) ++found;
  }
  return {spoiled, found};
}

void checkAllFound(const std::map<std::string, SpoilHoles>& spoils) {
  for (const auto& [name, spoil] : spoils) {
    INFO(name);
    const auto [spoiled, found] = holesSpoiledAndFound(spoil);
    CHECK(spoiled >= 10);
    CHECK(found == spoiled);
  }
}

const Length kMillimetre = Length::millimetres(1);

Hole& middle(WallHoles& h) { return h.holes[h.holes.size() / 2]; }

// The first hole for which it holds.
bool first(WallHoles& h, const std::function<bool(Hole&)>& spoil) {
  return std::any_of(h.holes.begin(), h.holes.end(), [&](Hole& hole) { return spoil(hole); });
}

template <class T>
bool dropMiddle(std::vector<T>& all) {
  if (all.empty()) return false;
  all.erase(all.begin() + static_cast<std::ptrdiff_t>(all.size() / 2));
  return true;
}

void count(const WallHoles& holes, std::map<std::string, int>& seen) {
  for (const Hole& hole : holes.holes) {
    const std::string kind = std::to_string(static_cast<int>(hole.kind));
    seen["hole " + kind]++;
    seen["four sheets"] += hole.sheets == 4;
    seen["corner"] += hole.corner;
    if (hole.throughLap) seen["through the lap " + kind]++;
    if (hole.stretch < 0) continue;
    const Stretch& stretch =
        holes.supports.rows[static_cast<std::size_t>(hole.row)].stretches[static_cast<std::size_t>(hole.stretch)];
    seen["steel " + std::to_string(static_cast<int>(stretch.steel))]++;
    seen["nested"] += stretch.girts.size() > 1;
    seen["unknown"] += !stretch.known;
  }
  for (const Refusal& refusal : holes.refusals) seen["why " + std::to_string(static_cast<int>(refusal.why))]++;
  for (const WideSpace& space : holes.wideSpaces) seen["wide " + std::to_string(static_cast<int>(space.kind))]++;
  seen["unstated"] += !holes.unstated.empty();
  seen["no zone"] += !holes.cornerZone;
}

}  // namespace

TEST_CASE("Random screws can be saved, and have every kind of hole, steel, refusal and wide space") {
  std::map<std::string, int> seen;
  for (int i = 0; i < 500; ++i) {
    const Job job = screwedJob(i);
    for (const Fault& fault : faultsOf(job)) FAIL_CHECK("building " << i << ": " << oneLine(fault));
    for (const auto& wall : plan(job).walls) count(wall->holes, seen);
  }
  for (const char* what : {"hole 0",
                           "hole 1",
                           "hole 2",
                           "hole 3",
                           "hole 4",
                           "hole 5",
                           "hole 6",
                           "hole 7",
                           "hole 8",
                           "four sheets",
                           "corner",
                           "through the lap 0",
                           "through the lap 3",
                           "through the lap 4",
                           "through the lap 7",
                           "steel 0",
                           "steel 1",
                           "steel 2",
                           "steel 3",
                           "nested",
                           "unknown",
                           "why 0",
                           "why 1",
                           "why 2",
                           "why 3",
                           "why 4",
                           "why 5",
                           "wide 0",
                           "wide 1",
                           "wide 2",
                           "wide 3",
                           "wide 4",
                           "wide 5",
                           "wide 6",
                           "wide 8",
                           "unstated",
                           "no zone"}) {
    INFO(what);
    CHECK(seen[what] >= 10);
  }
}

TEST_CASE("The checker notices a hole that is some nanometres off its place, or not there") {
  checkAllFound({
      {"along the wall", [](WallHoles& h) { return middle(h).u += kOne, true; }},
      {"up", [](WallHoles& h) { return middle(h).z += kOne * 3, true; }},
      {"a millimetre", [](WallHoles& h) { return h.holes.front().u += kMillimetre, true; }},
      {"dropped", [](WallHoles& h) { return dropMiddle(h.holes); }},
      {"twice", [](WallHoles& h) { return h.holes.push_back(h.holes.back()), true; }},
      {"one more",
       [](WallHoles& h) {
         Hole more = h.holes.back();
         more.z -= Length::inches(3);
         return h.holes.push_back(more), true;
       }},
      {"out of order", [](WallHoles& h) { return std::swap(h.holes.front(), h.holes.back()), h.holes.size() > 1; }},
  });
}

TEST_CASE("The checker notices a hole that says another thing of itself") {
  checkAllFound({
      {"another owner",
       [](WallHoles& h) {
         return first(h,
                      [](Hole& hole) { return hole.sheets > 1 && (std::swap(hole.pieces[0], hole.pieces[1]), true); });
       }},
      {"an extra twin",
       [](WallHoles& h) {
         Hole& hole = h.holes.front();
         return hole.sheets == 1 && (hole.sheets = 2, hole.pieces[1] = hole.pieces[0] + 1, true);
       }},
      {"no twin",
       [](WallHoles& h) {
         return first(h, [](Hole& hole) {
           if (hole.sheets == 1) return false;
           hole.pieces[static_cast<std::size_t>(hole.sheets - 1)] = -1;
           return --hole.sheets, true;
         });
       }},
      {"another sheet on top",
       [](WallHoles& h) {
         return first(h, [](Hole& hole) {
           return hole.sheets > 1 && (hole.upper = static_cast<std::int8_t>(hole.upper == 0), true);
         });
       }},
      {"through a lap", [](WallHoles& h) { return middle(h).throughLap = !middle(h).throughLap, true; }},
      {"in place", [](WallHoles& h) { return middle(h).inPlace = !middle(h).inPlace, true; }},
      {"corner", [](WallHoles& h) { return middle(h).corner = !middle(h).corner, true; }},
      {"screw", [](WallHoles& h) { return middle(h).screw = (middle(h).screw + 1) % 4, true; }},
      {"kind",
       [](WallHoles& h) {
         return first(h,
                      [](Hole& hole) { return hole.kind == HoleKind::Girt && (hole.kind = HoleKind::EndLap, true); });
       }},
      {"run", [](WallHoles& h) { return middle(h).run += 1, true; }},
      {"row", [](WallHoles& h) { return middle(h).row += 1, true; }},
  });
}

TEST_CASE("The checker notices a refusal or a wide space that is none, and one of which nothing is said") {
  checkAllFound({
      {"refusal dropped", [](WallHoles& h) { return dropMiddle(h.refusals); }},
      {"refusal twice",
       [](WallHoles& h) { return !h.refusals.empty() && (h.refusals.push_back(h.refusals.front()), true); }},
      {"another reason",
       [](WallHoles& h) {
         if (h.refusals.empty()) return false;
         Refusal::Why& why = h.refusals.back().why;
         why = why == Refusal::Why::NearEdge ? Refusal::Why::NearHole : Refusal::Why::NearEdge;
         return true;
       }},
      {"another piece", [](WallHoles& h) { return !h.refusals.empty() && (h.refusals.front().piece += 1, true); }},
      {"a hole refused too",
       [](WallHoles& h) {
         const Hole& hole = middle(h);
         h.refusals.push_back({Refusal::Why::NearEdge,
                               hole.kind,
                               hole.row,
                               hole.stretch,
                               hole.screw,
                               hole.run,
                               hole.pieces[0],
                               hole.u,
                               hole.z,
                               {}});
         return true;
       }},
      {"wide space dropped", [](WallHoles& h) { return dropMiddle(h.wideSpaces); }},
      {"wide space longer",
       [](WallHoles& h) { return !h.wideSpaces.empty() && (h.wideSpaces.front().to += kMillimetre, true); }},
      {"another limit",
       [](WallHoles& h) { return !h.wideSpaces.empty() && (h.wideSpaces.front().limit += kOne, true); }},
  });
}

TEST_CASE("The checker notices steel that stands a nanometre off, and patterns that are others") {
  const auto firstStretch = [](WallHoles& h) -> Stretch& { return h.supports.rows.front().stretches.front(); };
  checkAllFound({
      {"face lower", [=](WallHoles& h) { return firstStretch(h).low -= kOne, true; }},
      {"row higher", [=](WallHoles& h) { return firstStretch(h).row += kOne, true; }},
      {"shorter", [=](WallHoles& h) { return firstStretch(h).to -= kOne, true; }},
      {"a free end", [=](WallHoles& h) { return firstStretch(h).endsAtTo = !firstStretch(h).endsAtTo, true; }},
      {"steel dropped", [](WallHoles& h) { return h.supports.rows.back().stretches.pop_back(), true; }},
      {"a girt's face",
       [](WallHoles& h) {
         for (SupportRow& row : h.supports.rows) {
           if (row.kind == SupportKind::Girt && !row.stretches.empty()) {
             return row.stretches.back().high += kOne, true;
           }
         }
         return false;
       }},
      {"a jamb",
       [](WallHoles& h) { return !h.supports.jambs.empty() && (h.supports.jambs.back().head += kOne, true); }},
      {"zone", [](WallHoles& h) { return h.cornerZone && (*h.cornerZone += kOne, true); }},
      {"pattern", [](WallHoles& h) { return h.patterns.front().pattern += "x", true; }},
      {"unstated", [](WallHoles& h) { return h.unstated.empty() && (h.unstated = {HoleKind::Girt}, true); }},
  });
}

}  // namespace ribwright::fuzz
