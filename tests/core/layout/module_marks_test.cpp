// Where leading edges are marked.
#include "core/layout/module_marks.h"

#include <catch2/catch.hpp>

#include "core/layout/lay_out_wall.h"
#include "tests/core/layout/example_walls.h"

using namespace ribwright;
using namespace ribwright::examples;

namespace {

std::vector<ModuleMark> marksOf(const Job& job) { return moduleMarks(layOutWall(job, job.walls[0]).value()); }

}  // namespace

// The first sheet's factory edge stands on the corner: its leading edge at 1-1/2 + 36 + 3/4, each further one a cover
// on, the last one at the corner where it is cut.
TEST_CASE("leading edges run from the start corner, whichever hand the wall hangs") {
  Job job = freeWall(Length::feet(12));
  const Length running[] = {Length::inches(38, 16), Length::inches(74, 16), Length::inches(110, 16), Length::feet(12)};
  for (const Hang hang : {Hang::LeftToRight, Hang::RightToLeft}) {
    job.walls[0].hang = hang;
    const std::vector<ModuleMark> marks = marksOf(job);
    REQUIRE(marks.size() == 4);
    for (std::size_t i = 0; i < marks.size(); ++i) {
      CHECK(marks[i].mark == "A" + std::to_string(i + 1));
      CHECK(marks[i].running == running[i]);
      CHECK(marks[i].u == (hang == Hang::LeftToRight ? running[i] : Length::feet(12) - running[i]));
    }
  }
}

// Every fifth (common practice).
TEST_CASE("every fifth sheet of a run is held against a plumb line") {
  const std::vector<ModuleMark> marks = marksOf(freeWall(Length::feet(37)));
  REQUIRE(marks.size() >= 12);
  for (std::size_t i = 0; i < marks.size(); ++i) CHECK(marks[i].plumb == ((i + 1) % 5 == 0));
}

TEST_CASE("marks start anew at an expansion joint") {
  Job job = freeWall(Length::feet(24));
  job.walls[0].expansionJoints = {Length::feet(12)};
  const std::vector<ModuleMark> marks = marksOf(job);
  REQUIRE(marks.size() == 8);
  CHECK(marks[4].mark == "A5");
  CHECK(marks[4].running == Length::inches(38, 16));
  CHECK(marks[4].u == Length::feet(12) + Length::inches(38, 16));
}
