#include "core/plan/plan.h"

#include <catch2/catch.hpp>

#include "../layout/example_walls.h"

using namespace ribwright;

namespace {

Job twoWalls() {
  Job job = examples::gable40();
  job.walls.push_back(job.walls[0]);
  job.walls[1].letter = "B";
  return job;
}

}  // namespace

TEST_CASE("only walls whose statements changed are worked anew") {
  Job job = twoWalls();
  const Plan before = plan(job);
  job.walls[1].start.rule = Start::Rule::EqualRips;
  const Plan after = plan(job, before);
  CHECK(after.walls[0] == before.walls[0]);  // the same object
  CHECK(after.walls[1] != before.walls[1]);
  CHECK(after.walls[1]->layout.runs[0].offset == Length::inches(24));
}

TEST_CASE("what concerns no wall changes no wall") {
  Job job = twoWalls();
  const Plan before = plan(job);
  job.name = "renamed";
  job.note = "a note";
  const Plan after = plan(job, before);
  CHECK(after.walls[0] == before.walls[0]);
  CHECK(after.walls[1] == before.walls[1]);
}

TEST_CASE("one order over all walls") {
  const Plan made = plan(twoWalls());
  int quantity = 0;
  for (const OrderLine& line : made.order.lines) quantity += line.quantity();
  CHECK(quantity == 28);
  CHECK(made.layouts().size() == 2);
}

TEST_CASE("a wall that cannot be laid out stops the job and leaves the others") {
  Job job = twoWalls();
  job.walls[1].bands[0].profile = "missing";
  const Plan made = plan(job);
  CHECK(made.hasStop());
  CHECK(made.walls[0]->layout.pieces.size() == 14);
  CHECK(made.walls[1]->layout.pieces.empty());
}
