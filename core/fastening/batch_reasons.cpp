#include "core/fastening/batch_reasons.h"

#include <algorithm>
#include <map>

#include "core/fastening/crowded_rows.h"
#include "core/job/by_id.h"
#include "core/job/pattern_numbers.h"

namespace ribwright {
namespace {

const Piece& pieceOf(const BatchLook& look, std::int32_t piece) {
  return look.layout.pieces[static_cast<std::size_t>(piece)];
}

void confirmation(const BatchLook& look, DrillBatch& batch) {
  const std::string& id = look.holes.patterns[static_cast<std::size_t>(batch.lane.run)].pattern;
  const ScrewPattern* pattern = byId(look.job.patterns, id);
  if (pattern && confirmedIs(*pattern, look.job.screws) == Confirmed::Yes) return;
  batch.reasons.push_back({HoldReason::Why::NoConfirmation, id, -1, {}, {}, {}});
}

bool isLevel(const HeightLine& line) {
  return std::all_of(line.vertices().begin(), line.vertices().end(),
                     [&](const FaceVertex& vertex) { return vertex.z == line.vertices().front().z; });
}

// Sheets that end at the chalk line hang lower or higher than planned when it was snapped elsewhere.
void chalk(const BatchLook& look, DrillBatch& batch) {
  const bool overhang = look.wall.base.form == Base::Form::Overhang;
  const bool atLine = overhang && isLevel(look.layout.face.bottom) && batch.lane.tier == 0;
  if (!atLine || !look.wall.survey.chalkLine) return;
  for (const std::int32_t piece : batch.pieces) {
    const Length bottom = look.layout.face.bottom.heightAt(pieceOf(look, piece).left, Beside::Right);
    if (pieceOf(look, piece).bottom != bottom || *look.wall.survey.chalkLine == bottom) continue;
    batch.reasons.push_back({HoldReason::Why::Chalk, "", -1, pieceOf(look, piece).left, pieceOf(look, piece).right,
                             *look.wall.survey.chalkLine - bottom});
    return;
  }
}

// Of one girt: from where to where holes of the batch want it to be measured, or its cross-section stated.
struct Missing {
  Length from, to;
  std::int32_t row;
};

void addMissing(std::map<std::string, Missing>& all, const std::string& girt, Length u, std::int32_t row) {
  const auto [at, fresh] = all.try_emplace(girt, Missing{u, u, row});
  if (fresh) return;
  at->second.from = std::min(at->second.from, u);
  at->second.to = std::max(at->second.to, u);
}

void girts(const BatchLook& look, DrillBatch& batch) {
  std::map<std::string, Missing> unmeasured, unknown;
  for (const std::int32_t piece : batch.pieces) {
    for (const StackHole& stackHole : look.pieces[static_cast<std::size_t>(piece)].stack) {
      if (stackHole.surveyed && stackHole.known) continue;
      const Hole& hole = look.holes.holes[static_cast<std::size_t>(stackHole.hole)];
      const SupportRow& row = look.holes.supports.rows[static_cast<std::size_t>(hole.row)];
      const auto& on = row.stretches[static_cast<std::size_t>(hole.stretch)].girts;
      for (const std::int32_t girt : on) {
        const Girt& stated = look.wall.girts[static_cast<std::size_t>(girt)];
        const std::int32_t at = rowWith(batch, stackHole.key);
        if (!look.faces.ofGirt(girt, hole.u)) addMissing(unmeasured, stated.id, hole.u, at);
        if (!byId(look.job.members, stated.member)) addMissing(unknown, stated.id, hole.u, at);
      }
    }
  }
  for (const auto& [girt, missing] : unmeasured)
    batch.reasons.push_back({HoldReason::Why::NotMeasured, girt, missing.row, missing.from, missing.to, {}});
  for (const auto& [girt, missing] : unknown)
    batch.reasons.push_back({HoldReason::Why::NoCrossSection, girt, missing.row, missing.from, missing.to, {}});
}

// Where the holes of a row are.
std::pair<Length, Length> reachOf(const BatchLook& look, const DrillBatch& batch, std::int32_t row) {
  std::optional<std::pair<Length, Length>> reach;
  for (const std::int32_t piece : batch.pieces) {
    for (const StackHole& hole : look.pieces[static_cast<std::size_t>(piece)].stack) {
      if (rowWith(batch, hole.key) != row) continue;
      const Length u = look.holes.holes[static_cast<std::size_t>(hole.hole)].u;
      if (!reach) reach = {u, u};
      reach = {std::min(reach->first, u), std::max(reach->second, u)};
    }
  }
  return reach.value_or(std::pair<Length, Length>());
}

void rows(const BatchLook& look, DrillBatch& batch) {
  for (std::size_t i = 0; i < batch.rows.size(); ++i) {
    const BatchRow& row = batch.rows[i];
    if (row.holds) continue;
    const auto index = static_cast<std::int32_t>(i);
    const auto [from, to] = reachOf(look, batch, index);
    const Length lacking = row.low - row.high + tapeMark(look.job.units);
    batch.reasons.push_back({HoldReason::Why::RowDoesNotHold, row.support, index, from, to, lacking});
  }
}

void crowded(const BatchLook& look, const CrowdedRows& crowded, DrillBatch& batch) {
  for (const std::int32_t row : crowded.of(batch)) {
    const auto [from, to] = reachOf(look, batch, row);
    const std::string& name = batch.rows[static_cast<std::size_t>(row)].support;
    batch.reasons.push_back({HoldReason::Why::RowNearHole, name, row, from, to, {}});
  }
}

}  // namespace

std::int32_t rowWith(const DrillBatch& batch, const RowKey& key) {
  const auto found =
      std::find_if(batch.rows.begin(), batch.rows.end(), [&](const BatchRow& row) { return row.key == key; });
  return found == batch.rows.end() ? -1 : static_cast<std::int32_t>(found - batch.rows.begin());
}

void giveReasons(const BatchLook& look, std::vector<DrillBatch>& batches) {
  for (DrillBatch& batch : batches) {
    confirmation(look, batch);
    chalk(look, batch);
    girts(look, batch);
    rows(look, batch);
  }
  // Where nothing is measured and all is held, nobody drills.
  const bool isDrilled = std::any_of(batches.begin(), batches.end(), [](const DrillBatch& batch) {
    return batch.isCleared() ||
           std::any_of(batch.rows.begin(), batch.rows.end(), [](const BatchRow& row) { return row.surveyed; });
  });
  if (isDrilled) {
    const CrowdedRows near(look, batches);
    for (DrillBatch& batch : batches) crowded(look, near, batch);
  }
  for (DrillBatch& batch : batches) batch.remedies = remediesOf(look, batch);
}

}  // namespace ribwright
