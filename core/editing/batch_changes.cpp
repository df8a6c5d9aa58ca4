#include "core/editing/batch_changes.h"

#include <algorithm>
#include <map>
#include <utility>

namespace ribwright {
namespace {

const std::string& markOf(const WallPlan& wall, std::int32_t piece) {
  return wall.layout.pieces[static_cast<std::size_t>(piece)].mark;
}

// The batch in which each sheet was, by its mark.
std::map<std::string, const DrillBatch*> batchesByMark(const WallPlan& wall) {
  std::map<std::string, const DrillBatch*> byMark;
  for (const DrillBatch& batch : wall.batches) {
    for (const std::int32_t piece : batch.pieces) byMark.emplace(markOf(wall, piece), &batch);
  }
  return byMark;
}

// What the drill is set to: two sheets with the same get the same holes.
bool drilledAlike(const DrillBatch& a, const DrillBatch& b) {
  return std::equal(a.rows.begin(), a.rows.end(), b.rows.begin(), b.rows.end(),
                    [](const BatchRow& one, const BatchRow& other) {
                      return one.s == other.s && one.offsets == other.offsets && one.key.screw == other.key.screw;
                    });
}

void compare(const WallPlan* before, const WallPlan& after, BatchChanges& changes) {
  const auto known = before ? batchesByMark(*before) : std::map<std::string, const DrillBatch*>{};
  for (const DrillBatch& batch : after.batches) {
    bool wasCleared = false, wasHeld = false, otherwise = false;
    for (const std::int32_t piece : batch.pieces) {
      const auto found = known.find(markOf(after, piece));
      const bool was = found != known.end() && found->second->isCleared();
      (was ? wasCleared : wasHeld) = true;
      otherwise = otherwise || (was && !drilledAlike(*found->second, batch));
    }
    if (!batch.isCleared() && wasCleared) changes.heldAgain.push_back(batch.id);
    if (batch.isCleared() && wasHeld) changes.cleared.push_back(batch.id);
    if (batch.isCleared() && !wasHeld && otherwise) changes.redrawn.push_back(batch.id);
  }
}

}  // namespace

BatchChanges batchChanges(const Plan& before, const Plan& after) {
  BatchChanges changes;
  for (const auto& wall : after.walls) {
    const auto same = std::find_if(before.walls.begin(), before.walls.end(),
                                   [&](const auto& one) { return one->layout.letter == wall->layout.letter; });
    if (same != before.walls.end() && *same == wall) continue;  // not worked anew
    compare(same == before.walls.end() ? nullptr : same->get(), *wall, changes);
  }
  return changes;
}

}  // namespace ribwright
