// Undo is without limit: what ten thousand edits of a large building take.
#include <malloc.h>
#include <unistd.h>

#include <catch2/catch.hpp>
#include <fstream>

#include "core/editing/girt_edits.h"
#include "core/editing/history.h"
#include "core/editing/opening_edits.h"
#include "core/editing/part_edits.h"
#include "core/editing/survey_edits.h"
#include "core/job/by_id.h"
#include "tests/bench/large_building.h"

using namespace ribwright;

namespace {

// 1,000 ft by 400 ft: 400 openings, nine girts a wall measured at 41 stations, 600 sheets hung.
Job measuredBuilding() {
  Job job = bench::building(Length::feet(1000), 400);
  for (std::size_t wall = 0; wall < job.walls.size(); ++wall) {
    for (int girt = 1; girt <= 9; ++girt) {
      Girt made;
      made.id = std::string("g").append(std::to_string(girt));
      made.height = Length::feet(2 * girt + 1);
      job.walls[wall].girts.push_back(made);
      GirtSurvey survey{made.id, {}};
      for (int station = 0; station <= 40; ++station)
        survey.readings.push_back(
            {Length::feet(10 * station), made.height, Length::inches(0, 8), "M. Reed and J. Ortiz", "2026-03-09"});
      job.walls[wall].survey.girts.push_back(survey);
    }
  }
  for (int sheet = 1; sheet <= 600; ++sheet)
    job.facts.hung.push_back({std::string("A").append(std::to_string(sheet)), Length::feet(sheet), "", ""});
  return job;
}

// MiB. A sanitizer keeps what was freed, to look at it.
#ifdef __SANITIZE_ADDRESS__
constexpr double most = 2000;
#else
constexpr double most = 200;
#endif

// What the program holds in memory now; 0 where the system does not tell.
std::size_t residentBytes() {
  malloc_trim(0);
  std::ifstream told("/proc/self/statm");
  std::size_t pages = 0, resident = 0;
  told >> pages >> resident;
  return resident * static_cast<std::size_t>(sysconf(_SC_PAGESIZE));
}

Job editedOnce(const Job& job, int step) {
  const std::size_t wall = static_cast<std::size_t>(step) % 4;
  const Length by = Length::sixtyFourths(step % 500 + 1);
  switch (step % 5) {
    case 0: {
      const GirtReading reading{
          Length::feet(10 * (step % 41)), Length::feet(5) + by, {}, "M. Reed and J. Ortiz", "2026-03-10"};
      return setReading(job, wall, "g3", reading);
    }
    case 1:
      return girtMovedTo(job, wall, "g4", Length::feet(9) + by).value();
    default: {
      const std::string id = std::to_string(step % 100);
      const auto box = openingBox(job, job.walls[wall], *byId(job.walls[wall].openings, id)).value();
      return openingMovedTo(job, wall, id, box.left + by, box.bottom).value();
    }
  }
}

}  // namespace

TEST_CASE("ten thousand edits of a large building are kept in less than 200 MiB") {
  Job job = measuredBuilding();
  History history(job);
  const Job begun = job;
  const std::size_t before = residentBytes();
  REQUIRE(before > 0);
  int steps = 0;
  for (int step = 0; step < 10'000; ++step) {
    job = editedOnce(job, step);
    steps += history.push("edit", job);
  }
  CHECK(steps == 10'000);
  const double taken = static_cast<double>(residentBytes() - before) / (1 << 20);
  INFO("ten thousand edits take " << taken << " MiB");
  CHECK(taken > 1);
  CHECK(taken < most);
  CHECK(history.job() == job);
  while (history.undo()) {
  }
  CHECK(history.job() == begun);
}

TEST_CASE("one opening that moves keeps one opening more") {
  const Job job = measuredBuilding();
  const KeptJob before = keep(job, nullptr);
  const Job moved = openingMovedTo(job, 0, "7", Length::feet(70), Length::feet(3)).value();
  const KeptJob after = keep(moved, &before);
  CHECK(after.walls[1] == before.walls[1]);
  CHECK(after.walls[0]->rest == before.walls[0]->rest);
  CHECK(after.walls[0]->girts == before.walls[0]->girts);
  CHECK(after.walls[0]->measured == before.walls[0]->measured);
  int other = 0;
  for (std::size_t i = 0; i < 100; ++i) other += (*after.walls[0]->openings)[i] != (*before.walls[0]->openings)[i];
  CHECK(other == 1);
  CHECK(after.hung == before.hung);
  CHECK(jobOf(after) == moved);
}

TEST_CASE("an opening that goes or comes leaves the others kept once") {
  const Job job = measuredBuilding();
  const KeptJob before = keep(job, nullptr);
  const KeptJob after = keep(openingRemoved(job, 0, "7").value(), &before);
  const KeptItems<Opening>&was = *before.walls[0]->openings, &is = *after.walls[0]->openings;
  REQUIRE(is.size() == was.size() - 1);
  for (std::size_t i = 0; i < is.size(); ++i) CHECK(is[i] == was[i < 7 ? i : i + 1]);
  CHECK(keep(job, &after).walls[0]->openings->front() == was.front());
}

TEST_CASE("between two openings that go the others are kept once all the same") {
  const Job job = measuredBuilding();
  const KeptJob before = keep(job, nullptr);
  const Job less = partsRemoved(job, {{Part::Kind::Opening, "A", "7"}, {Part::Kind::Opening, "A", "40"}}).value();
  const KeptJob after = keep(less, &before);
  CHECK((*after.walls[0]->openings)[20] == (*before.walls[0]->openings)[21]);
}
