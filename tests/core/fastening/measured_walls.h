// Walls of worked examples whose girts are measured.
#pragma once

#include "core/fastening/drill_batches.h"
#include "core/job/pattern_numbers.h"
#include "tests/core/fastening/example_screws.h"
#include "tests/core/tape_lengths.h"

namespace ribwright::examples {

using Why = HoldReason::Why;
using What = Remedy::What;

inline GirtReading at(Length u, Length height, std::optional<Length> within = {}) {
  return {u, height, within, "M", "day"};
}

inline void confirm(Job& job) {
  job.patterns[0].confirmation = {"S-4", "M", "day", numbersOf(job.patterns[0], job.screws)};
}

// A level wall 12 ft wide and 12 ft high with a confirmed pattern of screws at 2, 14, 26 in: four sheets, A4 ripped at
// its leading edge.
inline Job levelWall(std::vector<Girt> girts) {
  Job job = screwed(freeWall(Length::feet(12)), everywhere({in(2), in(14), in(26)}));
  job.walls[0].girts = std::move(girts);
  confirm(job);
  return job;
}

// Each girt measured at both corners, `above` its typed height.
inline void measure(Job& job, const std::string& girt, Length above = Length()) {
  Wall& wall = job.walls[0];
  for (const Girt& one : wall.girts) {
    if (one.id != girt) continue;
    const Length height = one.height + wall.base.drop + above;
    wall.survey.girts.push_back({girt, {at(Length(), height), at(*wall.width, height)}});
  }
}

inline std::vector<DrillBatch> batchesOf(const Job& job) {
  const ScrewedWall wall(job);
  return drillBatches(job, job.walls[0], wall.layout, wall.holes);
}

// The marks of each batch's sheets, "A1 A2".
inline std::vector<std::string> marksOf(const Job& job) {
  const ScrewedWall wall(job);
  std::vector<std::string> all;
  for (const DrillBatch& batch : drillBatches(job, job.walls[0], wall.layout, wall.holes)) {
    all.emplace_back();
    for (const std::int32_t piece : batch.pieces)
      all.back().append(all.back().empty() ? "" : " ").append(wall.layout.pieces[static_cast<std::size_t>(piece)].mark);
  }
  return all;
}

inline const BatchRow& girtRow(const DrillBatch& batch) {
  return *std::find_if(batch.rows.begin(), batch.rows.end(),
                       [](const BatchRow& row) { return row.key.kind == HoleKind::Girt; });
}

inline std::vector<Why> whys(const DrillBatch& batch) {
  std::vector<Why> all;
  for (const HoldReason& reason : batch.reasons) all.push_back(reason.why);
  return all;
}

inline std::vector<What> whats(const DrillBatch& batch) {
  std::vector<What> all;
  for (const Remedy& remedy : batch.remedies) all.push_back(remedy.what);
  return all;
}

}  // namespace ribwright::examples
