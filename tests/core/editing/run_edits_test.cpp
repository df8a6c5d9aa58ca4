// Tops, bases, starts, joints, bands and sight points of a wall.
#include "core/editing/run_edits.h"

#include "core/editing/outline_edits.h"
#include "core/editing/sight_edits.h"
#include "core/layout/module_marks.h"
#include "tests/core/editing/edited_walls.h"

using namespace ribwright;

namespace {

constexpr std::size_t S = 4;

// A free wall S of 24 ft with a step in its top at 12 ft.
Job withFreeWall() {
  Job job = workshop();
  Wall wall = job.walls[1];
  wall.letter = "S";
  wall.width = ft(24);
  wall.hang = Hang::LeftToRight;
  wall.top = {{Length(), ft(8)}, {ft(12), ft(8)}, {ft(12), ft(10)}, {ft(24), ft(10)}};
  job.walls.push_back(wall);
  return job;
}

std::vector<FacePoint> topOf(const Outcome<Job>& job) { return given(job).walls[S].top; }

}  // namespace

TEST_CASE("points of a stated top stay from left to right") {
  const Job job = withFreeWall();
  CHECK(topOf(topPointAdded(job, S, {ft(6), ft(9)}))[1] == FacePoint{ft(6), ft(9)});
  CHECK(topOf(topPointAdded(job, S, {ft(12), ft(9)}))[3] == FacePoint{ft(12), ft(9)});
  CHECK(topOf(topPointMovedTo(job, S, 1, {ft(11), ft(8)}))[1] == FacePoint{ft(11), ft(8)});
  CHECK(topOf(topPointRemoved(job, S, 0)).size() == 3);
  refusal(topPointMovedTo(job, S, 1, {ft(13), ft(8)}));
  refusal(topPointMovedTo(job, S, 4, {ft(13), ft(8)}));
  refusal(topPointMovedTo(job, S, 3, {ft(12) + Length::nanometres(1), ft(12)}));  // no step, and too steep a slope
}

TEST_CASE("a top that follows from the roof takes no points, and a stated one keeps one") {
  refusal(topPointAdded(workshop(), A, {ft(6), ft(9)}));
  Job job = withFreeWall();
  job.walls[S].top.resize(1);
  refusal(topPointRemoved(job, S, 0));
}

TEST_CASE("steps of the base stand apart, and its form stays") {
  Job job = workshop();
  job.walls[A].base.form = Base::Form::Notch;
  job = given(baseStepAdded(given(baseStepAdded(job, A, {ft(30), in(8)})), A, {ft(10), in(4)}));
  CHECK(job.walls[A].base.steps == std::vector<FacePoint>{{ft(10), in(4)}, {ft(30), in(8)}});
  const Job moved = given(baseStepMovedTo(job, A, 0, {ft(12), in(6)}));
  CHECK(moved.walls[A].base.steps[0] == FacePoint{ft(12), in(6)});
  CHECK(moved.walls[A].base.form == Base::Form::Notch);
  refusal(baseStepMovedTo(job, A, 0, {ft(30), in(6)}));
  refusal(baseStepAdded(job, A, {ft(10), in(6)}));
  refusal(baseStepRemoved(job, A, 2));
  CHECK(given(baseStepRemoved(job, A, 1)).walls[A].base.steps.size() == 1);
}

TEST_CASE("a module line that is dragged types the start, whichever hand the wall hangs") {
  for (const Hang hang : {Hang::LeftToRight, Hang::RightToLeft}) {
    Job job = workshop();
    job.walls[A].hang = hang;
    job = given(moduleLineMovedTo(job, plan(job), A, 0, ft(7, 5)));
    CHECK(job.walls[A].start.rule == Start::Rule::Typed);
    CHECK(job.walls[A].start.offset == (hang == Hang::LeftToRight ? ft(1, 5) : ft(1, 7)));
    bool stands = false;
    const Plan after = plan(job);
    for (const Module& module : after.walls[A]->layout.runs[0].modules) stands |= module.startLine == ft(7, 5);
    CHECK(stands);
  }
}

TEST_CASE("beyond an expansion joint the offset counts from the joint; a band's own start stays its own") {
  Job job = given(jointAdded(workshop(), A, ft(31)));
  job.walls[A].hang = Hang::LeftToRight;
  job.walls[A].bands[0].start = Start{};
  job = given(moduleLineMovedTo(job, plan(job), A, 1, ft(32)));
  CHECK(job.walls[A].bands[0].start->offset == ft(1));
  CHECK(job.walls[A].start == Start{});
  refusal(moduleLineMovedTo(job, plan(job), A, 2, ft(32)));
  CHECK(given(hungFrom(job, A, Hang::ByRule)).walls[A].hang == Hang::ByRule);
}

TEST_CASE("joints stand on the wall, apart and in order") {
  Job job = given(jointAdded(given(jointAdded(workshop(), A, ft(40))), A, ft(20)));
  CHECK(job.walls[A].expansionJoints == std::vector<Length>{ft(20), ft(40)});
  CHECK(given(jointMovedTo(job, A, 0, ft(25))).walls[A].expansionJoints[0] == ft(25));
  CHECK(given(jointRemoved(job, A, 0)).walls[A].expansionJoints == std::vector<Length>{ft(40)});
  refusal(jointAdded(job, A, ft(20)));
  refusal(jointAdded(job, A, ft(60)));
  refusal(jointMovedTo(job, A, 0, ft(40)));
  refusal(jointMovedTo(job, A, 0, Length()));
  refusal(jointRemoved(job, A, 2));
}

TEST_CASE("a band is split at a height into two of the same sheets") {
  Job job = workshop();
  job.walls[A].bands[0].colour = "stone";
  job.walls[A].bands[0].gap = in(1);
  job = given(bandSplitAt(given(bandSplitAt(job, A, ft(9))), A, ft(4)));
  REQUIRE(job.walls[A].bands.size() == 3);
  CHECK(job.walls[A].bands[1].from == ft(4));
  CHECK(job.walls[A].bands[2].from == ft(9));
  CHECK(job.walls[A].bands[2].colour == "stone");
  CHECK(job.walls[A].bands[2].gap == Length());
  CHECK(plan(job).walls[A]->layout.runs.size() == 3);
  refusal(bandSplitAt(job, A, ft(9)));
  refusal(bandSplitAt(job, A, ft(99)));
  refusal(bandSplitAt(job, A, -ft(9)));
}

TEST_CASE("a band's limit stays between the limits beside it") {
  const Job job = given(bandSplitAt(given(bandSplitAt(workshop(), A, ft(9))), A, ft(4)));
  CHECK(given(bandLimitMovedTo(job, A, 1, ft(5))).walls[A].bands[1].from == ft(5));
  refusal(bandLimitMovedTo(job, A, 1, ft(9)));
  refusal(bandLimitMovedTo(job, A, 2, ft(4)));
  refusal(bandLimitMovedTo(job, A, 2, ft(14)));
  refusal(bandLimitMovedTo(job, A, 0, ft(2)));
  refusal(bandLimitMovedTo(job, A, 3, ft(2)));
}

TEST_CASE("a band that is removed is covered by the one below, the lowest by the one above") {
  const Job job = given(bandSplitAt(given(bandSplitAt(workshop(), A, ft(9))), A, ft(4)));
  CHECK(given(bandRemoved(job, A, 1)).walls[A].bands[1].from == ft(9));
  const Job above = given(bandRemoved(job, A, 0));
  CHECK_FALSE(above.walls[A].bands[0].from.has_value());
  CHECK(above.walls[A].bands[1].from == ft(9));
  refusal(bandRemoved(workshop(), A, 0));
  refusal(bandRemoved(job, A, 3));
}

TEST_CASE("sight points are put up, moved, named, weighed and taken away") {
  Job job = given(sightPointAdded(workshop(), {"road", {ft(30), -ft(90)}, 2}));
  job = given(sightPointMovedTo(job, 0, {ft(10), -ft(90)}));
  job = given(sightPointRenamed(job, 0, "gate"));
  job = given(sightPointWeighted(job, 0, 100));
  CHECK(job.site.sightPoints == std::vector<SightPoint>{{"gate", {ft(10), -ft(90)}, 100}});
  refusal(sightPointWeighted(job, 0, 0));
  refusal(sightPointWeighted(job, 0, 101));
  refusal(sightPointRenamed(job, 0, "two\nlines"));
  refusal(sightPointMovedTo(job, 1, {}));
  CHECK(given(sightPointRemoved(job, 0)) == workshop());
  refusal(sightPointRemoved(workshop(), 0));
}
