// The text of a job file: stable, short, and the same as the committed schema and sample jobs.
#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdlib>
#include <filesystem>

#include "core/job/file_reading.h"
#include "core/job/file_writing.h"
#include "core/job/job_file.h"
#include "core/job/job_file_tree.h"

namespace ribwright {
namespace {

const std::string root = RIBWRIGHT_ROOT;

std::string textOf(const std::string& path) {
  const auto text = readWhole(path, mostBytes);
  REQUIRE(text);
  return text.value();
}

}  // namespace

TEST_CASE("a job of nothing but defaults is two lines of facts") {
  CHECK(writeJob(Job()) == "{\"ribwright\": 1, \"units\": \"feet and inches\"}\n");
}

TEST_CASE("keys stand in their table's order, short things on one line, defaults are left out") {
  Job job;
  job.units = UnitSystem::Millimetres;
  job.name = "Hall \"2\"";
  job.site.trueNorth = Angle{-1'500'000};
  job.building.roof = {
      Roof::Kind::Gable, Roof::Ends::AC, Length::millimetres(4200), Length::millimetres(9000), {}, {}, {}, {}};
  Wall wall;
  wall.letter = "A";
  wall.bands = {{{}, {}, "", "red", false, {}, Start(), {2, 5}}};
  wall.columns.bays = {Length::millimetres(6000), Length::inches(1)};
  wall.openings = {{"T1",
                    Opening::Kind::OverheadDoor,
                    {Anchor::From::Column, 2, Length::millimetres(-500), Anchor::To::Centre},
                    Length::millimetres(4000),
                    Length::millimetres(4000),
                    {},
                    {},
                    {}}};
  job.walls = {wall};
  CHECK(writeJob(job) == R"({
  "ribwright": 1,
  "name": "Hall \"2\"",
  "units": "millimetres",
  "site": {"true_north": -1.5},
  "building": {"roof": {"kind": "gable", "ends": "A and C", "eave": "4200 mm", "ridge_at": "9000 mm"}},
  "walls": [
    {
      "letter": "A",
      "bands": [
        {"colour": "red", "start": {}, "translucent": [2, 5]}
      ],
      "columns": {"bays": ["6000 mm", "25.4 mm"]},
      "openings": [
        {
          "id": "T1",
          "kind": "overhead door",
          "place": {"from": "column", "column": 2, "distance": "-500 mm", "to": "centre"},
          "width": "4000 mm",
          "height": "4000 mm"
        }
      ]
    }
  ]
}
)");
}

TEST_CASE("resources/job.schema.json is the schema of the tables") {
  const std::string path = root + "/resources/job.schema.json";
  // RIBWRIGHT_ACCEPT=1 takes the tables' word and writes the file anew.
  if (std::getenv("RIBWRIGHT_ACCEPT")) {
    DiskStorage disk;
    REQUIRE(writeWhole(path, jobSchema(), disk).empty());
  }
  const std::string file = textOf(path), tables = jobSchema();
  const auto differs = std::mismatch(file.begin(), file.end(), tables.begin(), tables.end()).first - file.begin();
  INFO("from here on the file differs: " << file.substr(static_cast<std::size_t>(differs), 200));
  const bool same = file == tables;
  CHECK(same);
}

TEST_CASE("every sample job reads, and stands in the file as the program writes it") {
  int samples = 0;
  for (const auto& file : std::filesystem::directory_iterator(root + "/sample-jobs")) {
    if (file.path().extension() != ".json") continue;
    INFO(file.path().string());
    const auto job = loadJob(file.path().string());
    if (!job) FAIL(oneLine(job.faults().front()));
    CHECK(writeJob(job.value()) == textOf(file.path().string()));
    ++samples;
  }
  CHECK(samples >= 5);
}

TEST_CASE("a profile is written and read by the same table as in a job, in either units") {
  REQUIRE_FALSE(shippedProfiles().empty());
  for (const Profile& profile : shippedProfiles()) {
    INFO(profile.id);
    for (const UnitSystem units : {UnitSystem::FeetInches, UnitSystem::Millimetres}) {
      const auto read = readProfile(writeProfile(profile, units), "profile.json");
      REQUIRE(read);
      CHECK(read.value() == profile);
    }
  }
  const auto none = readProfile(R"({"id": "p", "cover": 36})", "p.json");
  REQUIRE_FALSE(none);
  CHECK(none.faults().front().place == "p.json: cover");
}

}  // namespace ribwright
