// What a typed reading does to sheets that were cleared for drilling: wall B of the sample workshop, 40 ft wide, its
// girts measured at both ends and between.
#include "core/editing/batch_changes.h"

#include <catch2/catch.hpp>

#include "core/editing/pattern_edits.h"
#include "core/editing/survey_edits.h"
#include "tests/core/editing/sample_workshop.h"

using namespace ribwright;

namespace {

constexpr std::size_t gableEnd = 1;

std::size_t clearedIn(const Plan& plan) {
  std::size_t count = 0;
  for (const auto& wall : plan.walls) {
    for (const DrillBatch& batch : wall->batches) count += batch.isCleared();
  }
  return count;
}

GirtReading reading(std::int64_t feet, Length height) {
  return {Length::feet(feet), height, {}, "M. Reed", "2026-03-10"};
}

}  // namespace

TEST_CASE("nothing happens to the batches when nothing is changed") {
  const Plan before = plan(sampleWorkshop());
  CHECK(batchChanges(before, plan(sampleWorkshop())).none());
  CHECK(batchChanges(before, plan(sampleWorkshop(), before)).none());
}

// Cleared only when the pattern is confirmed.
TEST_CASE("a withdrawn confirmation holds every batch again, a new one clears the same") {
  const Plan before = plan(sampleWorkshop());
  REQUIRE(clearedIn(before) > 0);
  const Job withdrawn = withdrawConfirmation(sampleWorkshop(), sampleWorkshop().patterns[0].id);
  const Plan after = plan(withdrawn, before);
  const BatchChanges held = batchChanges(before, after), again = batchChanges(after, before);
  CHECK(held.heldAgain.size() == clearedIn(before));
  CHECK(held.cleared.empty());
  CHECK(again.cleared == held.heldAgain);
  CHECK(again.heldAgain.empty());
}

TEST_CASE("a girt found out of place holds the batches on its two spans and no others") {
  const Plan before = plan(sampleWorkshop());
  const Job moved = setReading(sampleWorkshop(), gableEnd, "g2", reading(0, Length::feet(8, 9)));
  const BatchChanges changes = batchChanges(before, plan(moved, before));
  REQUIRE_FALSE(changes.heldAgain.empty());
  for (const std::string& id : changes.heldAgain) CHECK(id.starts_with("B/"));
  CHECK(changes.heldAgain.size() < clearedIn(before));
}

// A template on paper is of the rows as they were.
TEST_CASE("a batch that stays cleared with another ordinate is drawn anew") {
  const Plan before = plan(sampleWorkshop());
  Job moved = sampleWorkshop();
  for (GirtSurvey& girt : moved.walls[gableEnd].survey.girts) {
    for (GirtReading& one : girt.readings) one.height += girt.girt == "g1" ? Length::inches(0, 8) : Length();
  }
  const BatchChanges changes = batchChanges(before, plan(moved, before));
  CHECK_FALSE(changes.redrawn.empty());
  CHECK(changes.heldAgain.empty());
}

TEST_CASE("in a wall that is new nothing was cleared before") {
  Job without = sampleWorkshop();
  without.walls.erase(without.walls.begin() + gableEnd);
  const Plan whole = plan(sampleWorkshop());
  const BatchChanges changes = batchChanges(plan(without), whole);
  CHECK(changes.heldAgain.empty());
  CHECK_FALSE(changes.cleared.empty());
  for (const std::string& id : changes.cleared) CHECK(id.starts_with("B/"));
}
