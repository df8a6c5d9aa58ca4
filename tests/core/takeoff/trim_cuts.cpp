// Parts cut from sticks.
#include <catch2/catch.hpp>

#include "core/takeoff/trim_cuts.h"
#include "trimmed_by_hand.h"

namespace ribwright {
namespace {

// Sills of these widths, and nothing else, from 10 ft.
Job sillsOf(const std::vector<Length>& widths) {
  Job job = workshop();
  Length at = feet(1);
  for (std::size_t i = 0; i < widths.size(); ++i) {
    job.walls[0].openings.push_back(
        openingOf("W" + std::to_string(i + 1), Kind::Window, at, widths[i], feet(3), feet(3)));
    at += widths[i] + feet(1);
  }
  std::erase_if(job.trimRules, [](const TrimRule& rule) { return rule.where != Where::Sill; });
  job.trims[0].stocked = {feet(10)};
  return job;
}

std::vector<TrimBatch> batchesOf(const Job& job) { return trimBatches(job, Trimmed(job).takeoff()); }

TEST_CASE("Three windows of 4 ft, one of 2: two sticks of 10 ft, proved, and what is left of them") {
  const Job job = sillsOf({feet(4), feet(4), feet(2), feet(4)});
  const auto batches = batchesOf(job);
  REQUIRE(batches.size() == 1);
  const TrimBatch& batch = batches[0];
  CHECK(batch.trim == "sill-3x1.5x1");
  CHECK(batch.colour == "white");
  CHECK(batch.proved());
  REQUIRE(batch.sticks.size() == 2);
  CHECK(batch.cut() == feet(14));
  CHECK(batch.total(&TrimStick::stock) == feet(20));
  // 4 + 4 leaves 2 ft less a kerf, 4 + 2 leaves 4 ft less a kerf: the first is short of a drop of 2 ft, the other is
  // one, freed by one more cut.
  const TrimStick& first = batch.sticks[0];
  CHECK(first.cuts.size() == 2);
  CHECK(first.cuts[1].at == feet(4, 0, 8));
  CHECK(first.kerfs == inch(0, 8));
  CHECK(first.drop == Length());
  CHECK(first.waste == feet(2) - inch(0, 8));
  CHECK(batch.sticks[1].kerfs == inch(0, 16));
  CHECK(batch.sticks[1].drop == feet(4) - inch(0, 16));
  CHECK(batch.sticks[1].waste == Length());
}

TEST_CASE("A kerf too many takes one more stick") {
  Job job = sillsOf({feet(5), feet(5)});
  CHECK(batchesOf(job)[0].sticks.size() == 2);
  job.settings.kerf = Length();
  CHECK(batchesOf(job)[0].sticks.size() == 1);
  job.trims[0].endTrim = inch(1);
  CHECK(batchesOf(job)[0].sticks.size() == 2);
}

TEST_CASE("Ends that are trimmed off: half of them before the first cut, an odd nanometre after the last") {
  Job job = sillsOf({feet(4)});
  job.trims[0].endTrim = Length::nanometres(7);
  const TrimStick stick = batchesOf(job)[0].sticks.at(0);
  CHECK(stick.cuts[0].at == Length::nanometres(3));
  CHECK(stick.ends == Length::nanometres(7));
  CHECK(stick.drop == feet(6) - inch(0, 8) - Length::nanometres(7));
}

TEST_CASE("Of several stocked lengths the least steel is bought") {
  Job job = sillsOf({feet(6), feet(6)});
  job.trims[0].stocked = {feet(12, 2), feet(10), feet(6)};
  const TrimBatch batch = batchesOf(job)[0];
  CHECK(batch.proved());
  CHECK(batch.plan.total == feet(12).nanometres());
  REQUIRE(batch.sticks.size() == 2);
  CHECK(batch.sticks[0].stock == feet(6));
  CHECK(batch.total(&TrimStick::waste) == Length());
}

TEST_CASE("Each colour of a trim is cut on its own") {
  Job job = sillsOf({feet(4), feet(4)});
  job.walls[0].openings[1].kind = Kind::Louvre;
  job.trimRules.push_back(job.trimRules[0]);
  job.trimRules[1].id = "louvre sill";
  job.trimRules[1].of = TrimRule::Of::Louvres;
  job.trimRules[1].colour = "red";
  const auto batches = batchesOf(job);
  REQUIRE(batches.size() == 2);
  CHECK(batches[0].colour == "red");
  CHECK(batches[0].sticks.size() == 1);
}

TEST_CASE("What is not stocked is ordered to length, a stick a part") {
  Job job = sillsOf({feet(4), feet(12)});
  job.trims[0].stocked.clear();
  const TrimBatch batch = batchesOf(job)[0];
  CHECK(batch.madeToLength);
  CHECK(batch.proved());
  REQUIRE(batch.sticks.size() == 2);
  CHECK(batch.sticks[0].stock == feet(12));
  CHECK(batch.sticks[0].waste == Length());
}

TEST_CASE("What the cutter does not take has a stick for each part, and no proof") {
  Job job = sillsOf({feet(4), feet(12)});
  for (int i = 0; i < 300; ++i) job.trims[0].stocked.push_back(feet(11, 0, i));
  const TrimBatch batch = batchesOf(job)[0];
  CHECK_FALSE(batch.faults.empty());
  CHECK_FALSE(batch.proved());
  CHECK(batch.sticks.size() == 3);
}

TEST_CASE("10 ft of a girth of 6 in, 0.5 mm: 1.951 kg") {
  Trim trim;
  trim.girth = inch(6);
  trim.thickness = Length::nanometres(500'000);
  // 0.1524 m x 3.048 m x (0.5 mm x 7850 kg/m3 + 0.275 kg/m2)
  CHECK(trimKilograms(trim, feet(10)) == Approx(0.1524 * 3.048 * (3.925 + 0.275)));
}

}  // namespace
}  // namespace ribwright
