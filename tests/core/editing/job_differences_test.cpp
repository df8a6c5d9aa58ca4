// What differs between two jobs is told by walls and openings.
#include "core/editing/job_differences.h"

#include <catch2/catch.hpp>

namespace ribwright {
namespace {

Wall wall(const std::string& letter, const std::vector<std::string>& openings) {
  Wall made;
  made.letter = letter;
  for (const std::string& id : openings) {
    made.openings.push_back({id, Opening::Kind::Window, {}, Length::feet(3), Length::feet(3), {}, {}, {}});
  }
  return made;
}

Job threeWalls() {
  Job job;
  job.name = "Shed";
  job.walls = {wall("A", {"W1", "W2"}), wall("B", {"D1"}), wall("C", {})};
  return job;
}

}  // namespace

TEST_CASE("a job differs in nothing from itself") { CHECK(differences(threeWalls(), threeWalls()).none()); }

TEST_CASE("name, building and all else are told apart") {
  Job job = threeWalls();
  job.name = "Barn";
  CHECK(differences(threeWalls(), job) == JobDifferences{true, false, false, {}, {}, {}, 0, 0, 0});
  job = threeWalls();
  job.building.roof.kind = Roof::Kind::Gable;
  CHECK(differences(threeWalls(), job) ==
        JobDifferences{false, job.building != Building(), false, {}, {}, {}, 0, 0, 0});
  job = threeWalls();
  job.note = "Bring the long ladder";
  CHECK(differences(threeWalls(), job) == JobDifferences{false, false, true, {}, {}, {}, 0, 0, 0});
}

TEST_CASE("walls that came, went and changed are told by letter, their openings counted") {
  Job job = threeWalls();
  job.walls = {wall("A", {"W1", "W3", "W4"}), wall("B", {"D1"}), wall("D", {"X"})};
  job.walls[0].openings[0].width = Length::feet(4);
  const JobDifferences found = differences(threeWalls(), job);
  CHECK(found.changed == std::vector<std::string>{"A"});
  CHECK(found.added == std::vector<std::string>{"D"});
  CHECK(found.taken == std::vector<std::string>{"C"});
  CHECK(found.openingsAdded == 2);
  CHECK(found.openingsTaken == 1);
  CHECK(found.openingsChanged == 1);
  CHECK_FALSE(found.other);
}

}  // namespace ribwright
