// The sample jobs as they ship: each shows some rule of where screws go, on walls whose patterns fit their sheets.
#include <catch2/catch.hpp>

#include <algorithm>
#include <map>
#include <string>

#include "core/fastening/holes.h"
#include "core/job/job_file.h"
#include "core/job/pattern_numbers.h"
#include "core/layout/lay_out_wall.h"

namespace ribwright {
namespace {

Job sample(const std::string& name) {
  const auto job = loadJob(std::string(RIBWRIGHT_ROOT).append("/sample-jobs/").append(name).append(".json"));
  if (!job) FAIL(oneLine(job.faults().front()));
  return job.value();
}

WallHoles holesOfWall(const Job& job, const std::string& letter) {
  const auto wall = std::find_if(job.walls.begin(), job.walls.end(), [&](const Wall& w) { return w.letter == letter; });
  REQUIRE(wall != job.walls.end());
  const auto layout = layOutWall(job, *wall);
  REQUIRE(layout.ok());
  return holesOf(job, *wall, layout.value());
}

// Holes on each stretch of the girt rows, by the stretch's name.
std::map<std::string, int> girtHoles(const WallHoles& holes) {
  std::map<std::string, int> count;
  for (const Hole& hole : holes.holes) {
    if (hole.kind != HoleKind::Girt) continue;
    const SupportRow& row = holes.supports.rows.at(static_cast<std::size_t>(hole.row));
    ++count[row.stretches.at(static_cast<std::size_t>(hole.stretch)).name];
  }
  return count;
}

}  // namespace

TEST_CASE("every band of a sample's sheeted walls has a pattern for its profile, and nothing is left unstated") {
  for (const char* name : {"doe-warehouse", "gable-workshop", "l-shape", "lean-to", "metric-hall"}) {
    const Job job = sample(name);
    for (const Wall& wall : job.walls) {
      if (wall.cladding != Cladding::Sheeted) continue;
      INFO(name << " wall " << wall.letter);
      const WallHoles holes = holesOfWall(job, wall.letter);
      REQUIRE_FALSE(holes.patterns.empty());
      for (const RunPattern& run : holes.patterns) {
        CHECK_FALSE(run.pattern.empty());
        CHECK_FALSE(run.otherProfile);
      }
      CHECK(holes.unstated.empty());
      CHECK(holes.cornerZone.has_value());
      CHECK(holes.holes.size() > 10 * holes.refusals.size());
    }
  }
}

TEST_CASE("sample workshop: confirmed; clubhouse: the jamb row came after the confirmation, and it has fallen") {
  const Job workshop = sample("gable-workshop");
  CHECK(confirmedIs(workshop.patterns.at(0), workshop.screws) == Confirmed::Yes);
  Job clubhouse = sample("l-shape");
  CHECK(confirmedIs(clubhouse.patterns.at(0), clubhouse.screws) == Confirmed::Fallen);
  std::erase_if(clubhouse.patterns[0].rows, [](const PatternRow& row) { return row.support == SupportKind::Jamb; });
  CHECK(confirmedIs(clubhouse.patterns[0], clubhouse.screws) == Confirmed::Yes);
  for (const char* name : {"doe-warehouse", "lean-to", "metric-hall"}) {
    const Job job = sample(name);
    for (const ScrewPattern& pattern : job.patterns) CHECK(confirmedIs(pattern, job.screws) == Confirmed::No);
  }
}

TEST_CASE("sample lean-to: on wall D flush girts stop at the columns, whose flanges take their holes") {
  const Job job = sample("lean-to");
  auto count = girtHoles(holesOfWall(job, "D"));
  CHECK(count["1"] == 1);  // 2-1/2 in from the corner; the upper band's first screw, at 3-1/2 in, meets the girt itself
  CHECK(count["g1"] > 0);
  const WallHoles holes = holesOfWall(job, "D");
  for (const SupportRow& row : holes.supports.rows) {
    if (row.kind != SupportKind::Girt) continue;
    CHECK(std::any_of(row.stretches.begin(), row.stretches.end(), [](const Stretch& stretch) {
      return stretch.steel == Stretch::Steel::Column && stretch.name == "2" && stretch.from == Length::feet(7, 9) &&
             stretch.to == Length::feet(8, 3);
    }));
  }
}

TEST_CASE("sample hall: on wall C two girts nest over the middle column, and one row of holes goes through both") {
  const Job job = sample("metric-hall");
  const WallHoles holes = holesOfWall(job, "C");
  auto count = girtHoles(holes);
  for (const char* name : {"g1", "g1b", "g1+g1b", "g2", "g2b", "g2+g2b"}) {
    INFO(name);
    CHECK(count[name] > 0);
  }
  CHECK(count["g1+g1b"] == 3);  // 800 mm of lap; screws 414, 414 and 207 mm apart
  CHECK(std::none_of(holes.refusals.begin(), holes.refusals.end(),
                     [](const Refusal& refusal) { return refusal.kind == HoleKind::Girt; }));
}

}  // namespace ribwright
