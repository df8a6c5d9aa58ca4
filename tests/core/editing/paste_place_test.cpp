// Pasting moves along by bays until there is room.
#include "core/editing/paste_place.h"

#include "tests/core/editing/workshop_parts.h"

using namespace ribwright;

namespace {

Job pastedOnce(const Job& job, std::size_t wall, const std::vector<Part>& parts) {
  const auto made = pastedWhereFree(job, wall, copiedParts(workshop(), A, parts).value());
  REQUIRE(made);
  return made.value().job;
}

}  // namespace

TEST_CASE("where there is room it is pasted as it was copied") {
  CHECK(leftOn(workshop(), "W1", A) == ft(28));
  Job job = workshop();
  job.walls[A].openings.clear();
  CHECK(leftOn(pastedOnce(job, A, {w1}), "W1", A) == ft(28));
}

TEST_CASE("where it was copied it is pasted a bay to the right, then to the left, then beside") {
  Job job = pastedOnce(workshop(), A, {w1});
  CHECK(leftOn(job, "W3", A) == ft(48));
  job = pastedOnce(job, A, {w1});
  CHECK(leftOn(job, "W4", A) == ft(8));
  job = pastedOnce(job, A, {w1});
  CHECK(leftOn(job, "W5", A) == ft(33));
}

TEST_CASE("where there is no room at all it is pasted as it was copied") {
  Job job = workshop();
  job.walls[A].openings[0].width = ft(58);
  job.walls[A].openings[0].place = Anchor{Anchor::From::LeftCorner, 0, ft(1), Anchor::To::NearJamb};
  CHECK(leftOn(pastedOnce(job, A, {w1}), "W3", A) == ft(28));
}

TEST_CASE("a wall without columns is gone along by the width of what is pasted and a foot") {
  Job job = workshop();
  REQUIRE(job.walls[B].columns.bays.empty());
  job = pastedOnce(job, B, {w1});
  CHECK(leftOn(job, "W3", B) == ft(28));
  job = pastedOnce(job, B, {w1});
  CHECK(leftOn(job, "W4", B) == ft(33));
  job = pastedOnce(job, B, {w1});  // 38 ft would end beyond the corner at 40 ft
  CHECK(leftOn(job, "W5", B) == ft(23));
}

TEST_CASE("a girt is not pasted on one that is there") {
  const CopiedParts copied = copiedParts(workshop(), A, {g1}).value();
  const auto refused = pastedWhereFree(workshop(), A, copied);
  REQUIRE_FALSE(refused);
  CHECK(oneLine(refused.faults().front()) ==
        "walls.A: girt g1 would lie on girt g1; copy without it, or move that one");
  Job job = workshop();
  job.walls[B].girts[0].height += in(1);
  const auto made = pastedWhereFree(job, B, copied);
  REQUIRE(made);
  CHECK(made.value().job.walls[B].girts.size() == 3);
  job.walls[B].girts[0].height = ft(5);
  job.walls[B].girts[0].from = ft(10);
  CopiedParts part = copied;
  part.girts[0].to = ft(10);
  CHECK(pastedWhereFree(job, B, part));
  part.girts[0].to = ft(11);
  CHECK_FALSE(pastedWhereFree(job, B, part));
}
