// Holes that are drilled in both sheets of a side lap, where the two are drilled in different stacks.
#include <map>

#include "core/checks/batch_words.h"
#include "core/checks/wall_look.h"

namespace ribwright {
namespace {

// How far the hole would be apart in the two sheets that lap, and by which row; nothing unless both are drilled in a
// cleared stack of their own.
struct Apart {
  Length by;
  const BatchRow* row = nullptr;
};

const DrillBatch* clearedBatchOf(const WallLook& look, std::int32_t piece) {
  const DrillBatch* batch = batchOf(look.batches, piece);
  return batch && batch->isCleared() ? batch : nullptr;
}

std::optional<Apart> apart(const WallLook& look, std::int32_t index) {
  const Hole& hole = look.holes.holes[static_cast<std::size_t>(index)];
  if (!hole.throughLap || hole.sheets < 2) return std::nullopt;
  const std::int32_t one = hole.pieces[0], other = hole.pieces[1];
  const DrillBatch *first = clearedBatchOf(look, one), *second = clearedBatchOf(look, other);
  if (!first || !second || first == second) return std::nullopt;
  const BatchRow *a = rowOf(*first, index), *b = rowOf(*second, index);
  if (!a || !b) return std::nullopt;
  const auto foot = [&](std::int32_t piece) { return look.layout.pieces[static_cast<std::size_t>(piece)].bottom; };
  return Apart{absolute(foot(one) + a->s - foot(other) - b->s), a};
}

}  // namespace

// A screw goes through both holes as long as they are no further apart than a mark of the tape (common practice).
void checkLapHoles(const WallLook& look, std::vector<Finding>& findings) {
  std::map<std::pair<std::int32_t, std::int32_t>, Apart> worst;  // of the two sheets' pieces
  for (std::size_t i = 0; i < look.holes.holes.size(); ++i) {
    const auto found = apart(look, static_cast<std::int32_t>(i));
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
