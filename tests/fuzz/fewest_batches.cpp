// As few batches as can be: every way of cutting a lane into stacks is tried.
#include <algorithm>
#include <map>

#include "tests/fuzz/surveyed_walls.h"

namespace ribwright::fuzz {
namespace {

// The fewest stacks over all ways to cut the lane from sheet `from` on: every first cut, and of each the best rest.
class Cutting {
 public:
  Cutting(const MeasuredWall& wall, const std::vector<int>& lane) : wall_(wall), lane_(lane) {}

  int fewest(std::size_t from) {
    if (from == lane_.size()) return 0;
    if (const auto known = known_.find(from); known != known_.end()) return known->second;
    int best = static_cast<int>(lane_.size());
    for (std::size_t to = from + 1; to <= lane_.size(); ++to) {
      const std::vector<int> stack(lane_.begin() + static_cast<std::ptrdiff_t>(from),
                                   lane_.begin() + static_cast<std::ptrdiff_t>(to));
      if (wall_.mayShareAStack(stack)) best = std::min(best, 1 + fewest(to));
    }
    known_[from] = best;
    return best;
  }

 private:
  const MeasuredWall& wall_;
  const std::vector<int>& lane_;
  std::map<std::size_t, int> known_;
};

}  // namespace

TEST_CASE("No other way to cut a lane into stacks gives fewer batches") {
  int severalStacks = 0, severalSheets = 0;
  eachSurveyed(2500, 150, [&](const Job& job) {
    Complaints complaints;
    eachMeasuredWall(job, plan(job), [&](const MeasuredWall& wall, const WallPlan& planned) {
      complaints.at("wall " + wall.wall().letter);
      for (const std::vector<int>& lane : wall.lanes()) {
        const int fewest = Cutting(wall, lane).fewest(0);
        const auto made = std::count_if(planned.batches.begin(), planned.batches.end(), [&](const DrillBatch& batch) {
          return std::find(lane.begin(), lane.end(), batch.pieces.front()) != lane.end();
        });
        severalStacks += fewest > 1;
        severalSheets += fewest < static_cast<int>(lane.size());
        complaints.check(made == fewest, "lane of " + wall.piece(lane.front()).mark + ": " + std::to_string(made) +
                                             " batches, " + std::to_string(fewest) + " would do");
      }
    });
    return complaints;
  });
  CHECK(severalStacks > 1000);
  CHECK(severalSheets > 1000);
}

}  // namespace ribwright::fuzz
