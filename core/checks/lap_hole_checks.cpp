// Holes that are drilled in both sheets of a side lap, where the two are drilled in different stacks.
#include <algorithm>
#include <map>

#include "core/checks/batch_words.h"
#include "core/checks/wall_look.h"
#include "core/fastening/stack_holes.h"

namespace ribwright {
namespace {

// How far the hole would be apart in the two sheets that lap, and by which row; nothing unless both are drilled in a
// cleared stack of their own.
struct Apart {
  Length by;
  const BatchRow* row = nullptr;
};

// The cleared batch of each piece; null: none.
using Batches = std::vector<const DrillBatch*>;

Batches clearedBatches(const WallLook& look) {
  Batches of(look.layout.pieces.size(), nullptr);
  for (const DrillBatch& batch : look.batches) {
    for (const std::int32_t piece : batch.pieces)
      of[static_cast<std::size_t>(piece)] = batch.isCleared() ? &batch : nullptr;
  }
  return of;
}

std::optional<Apart> apart(const WallLook& look, const Batches& batches, std::int32_t index) {
  const Hole& hole = look.holes.holes[static_cast<std::size_t>(index)];
  if (!hole.throughLap || hole.sheets < 2) return std::nullopt;
  const std::int32_t one = hole.pieces[0], other = hole.pieces[1];
  const DrillBatch *first = batches[static_cast<std::size_t>(one)], *second = batches[static_cast<std::size_t>(other)];
  if (!first || !second || first == second) return std::nullopt;
  const BatchRow *a = rowOf(*first, index), *b = rowOf(*second, index);
  if (!a || !b) return std::nullopt;
  const auto foot = [&](std::int32_t piece) { return look.layout.pieces[static_cast<std::size_t>(piece)].bottom; };
  return Apart{absolute(foot(one) + a->s - foot(other) - b->s), a};
}

}  // namespace

// A screw goes through both holes as long as they are no further apart than a mark of the tape (common practice).
void checkLapHoles(const WallLook& look, std::vector<Finding>& findings) {
  std::vector<bool> both;  // parallel to the layout's runs
  for (std::size_t run = 0; run < look.layout.runs.size(); ++run)
    both.push_back(drillsBothSheets(look.job, look.holes, static_cast<std::int32_t>(run)));
  if (std::find(both.begin(), both.end(), true) == both.end()) return;
  const Batches batches = clearedBatches(look);
  std::map<std::pair<std::int32_t, std::int32_t>, Apart> worst;  // of the two sheets' pieces
  for (std::size_t i = 0; i < look.holes.holes.size(); ++i) {
    if (!both[static_cast<std::size_t>(look.holes.holes[i].run)]) continue;
    const auto found = apart(look, batches, static_cast<std::int32_t>(i));
    if (!found || found->by <= tapeMark(look.job.units)) continue;
    const Hole& hole = look.holes.holes[i];
    Apart& kept = worst[{hole.pieces[0], hole.pieces[1]}];
    if (!kept.row || found->by > kept.by) kept = *found;
  }
  for (const auto& [pieces, found] : worst) {
    const auto mark = [&](std::int32_t piece) { return look.layout.pieces[static_cast<std::size_t>(piece)].mark; };
    findings.push_back(look.finding(Grade::Look, "lap-holes-apart", mark(pieces.first),
                                    {{"sheet", mark(pieces.first)},
                                     {"other", mark(pieces.second)},
                                     {"row", rowWords(*found.row)},
                                     {"by", found.by}},
                                    "common practice"));
    findings.back().part = mark(pieces.second);
  }
}

}  // namespace ribwright
