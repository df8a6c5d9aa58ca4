#include "core/cutting/knapsack.h"

#include <algorithm>

namespace ribwright {
namespace {

struct Packed {
  std::int64_t size, points, bound;
  std::size_t index;              // among the sizes asked for
  std::int64_t smallestFromHere;  // of the items from this one on
};

// By points per length, the most first.
std::vector<Packed> itemsOf(const KnapsackAsked& asked) {
  std::vector<Packed> items;
  for (std::size_t i = 0; i < asked.sizes.size(); ++i) {
    const std::int64_t bound = std::min(asked.bounds[i], asked.capacity / asked.sizes[i]);
    if (bound > 0 && asked.points[i] > 0) items.push_back({asked.sizes[i], asked.points[i], bound, i, 0});
  }
  std::stable_sort(items.begin(), items.end(), [](const Packed& a, const Packed& b) {
    return Int128(a.points) * b.size > Int128(b.points) * a.size;
  });
  std::int64_t smallest = INT64_MAX;
  for (auto item = items.rbegin(); item != items.rend(); ++item)
    item->smallestFromHere = smallest = std::min(smallest, item->size);
  return items;
}

class Branching {
 public:
  Branching(const std::vector<Packed>& items, std::int64_t mostNodes)
      : items_(items), mostNodes_(mostNodes), counts_(items.size(), 0), bestCounts_(items.size(), 0) {}

  bool finished(std::int64_t capacity) {
    go(0, capacity, 0);
    return nodes_ <= mostNodes_;
  }
  std::int64_t nodes() const { return nodes_; }
  std::int64_t best() const { return best_; }
  const Counts& counts() const { return bestCounts_; }

 private:
  // Even if the room were filled to the last bit as densely as this item does.
  bool hopeless(const Packed& item, std::int64_t room, std::int64_t value) const {
    return Int128(room) * item.points < Int128(best_ + 1 - value) * item.size;
  }

  void go(std::size_t at, std::int64_t room, std::int64_t value) {
    if (value > best_) {
      best_ = value;
      bestCounts_ = counts_;
    }
    while (at < items_.size() && items_[at].size > room) ++at;
    if (at == items_.size() || ++nodes_ > mostNodes_) return;
    const Packed& item = items_[at];
    if (hopeless(item, room, value)) return;
    const bool last = at + 1 == items_.size();
    for (std::int64_t count = std::min(item.bound, room / item.size); count >= 0; --count) {
      const std::int64_t roomThen = room - count * item.size, valueThen = value + count * item.points;
      // The fewer of this item, the less is still to be hoped for.
      if (valueThen <= best_ && (last || hopeless(items_[at + 1], roomThen, valueThen))) break;
      counts_[at] = count;
      go(at + 1, roomThen, valueThen);
      if (nodes_ > mostNodes_) break;
    }
    counts_[at] = 0;
  }

  const std::vector<Packed>& items_;
  const std::int64_t mostNodes_;
  Counts counts_, bestCounts_;
  std::int64_t best_ = 0, nodes_ = 0;
};

// The best of every capacity, with the first items only, with one more, and so on.
class AllCapacities {
 public:
  AllCapacities(const std::vector<Packed>& items, std::int64_t capacity)
      : items_(items), width_(static_cast<std::size_t>(capacity) + 1), best_((items.size() + 1) * width_, 0) {
    for (std::size_t i = 0; i < items_.size(); ++i) add(i);
  }

  std::int64_t best() const { return best_.back(); }

  Counts counts() const {
    Counts counts(items_.size(), 0);
    std::size_t room = width_ - 1;
    for (std::size_t i = items_.size(); i-- > 0;) {
      while (row(i)[room] + counts[i] * items_[i].points != row(i + 1)[room + counts[i] * asPlace(items_[i].size)]) {
        ++counts[i];
        room -= asPlace(items_[i].size);
      }
    }
    return counts;
  }

 private:
  static std::size_t asPlace(std::int64_t size) { return static_cast<std::size_t>(size); }
  const std::int64_t* row(std::size_t items) const { return best_.data() + items * width_; }

  // In parts of 1, 2, 4 ... pieces, whose sums are all counts up to the bound.
  void add(std::size_t item) {
    const std::int64_t* before = row(item);
    std::int64_t* after = best_.data() + (item + 1) * width_;
    std::copy(before, before + width_, after);
    std::int64_t left = items_[item].bound;
    for (std::int64_t part = 1; left > 0; part *= 2) {
      const std::int64_t pieces = std::min(part, left);
      const std::size_t size = asPlace(pieces * items_[item].size);
      const std::int64_t points = pieces * items_[item].points;
      for (std::size_t room = width_; room-- > size;) after[room] = std::max(after[room], after[room - size] + points);
      left -= pieces;
    }
  }

  const std::vector<Packed>& items_;
  const std::size_t width_;
  std::vector<std::int64_t> best_;
};

KnapsackBest inOrder(const KnapsackAsked& asked, const std::vector<Packed>& items, std::int64_t best,
                     const Counts& counts) {
  KnapsackBest found{best, Counts(asked.sizes.size(), 0)};
  for (std::size_t i = 0; i < items.size(); ++i) found.counts[items[i].index] = counts[i];
  return found;
}

std::int64_t stepsOfAllCapacities(const std::vector<Packed>& items, std::int64_t capacity) {
  constexpr std::int64_t mostCells = 4'000'000;
  if (capacity >= mostCells / static_cast<std::int64_t>(items.size() + 1)) return INT64_MAX;
  std::int64_t rows = 0;
  for (const Packed& item : items)
    for (std::int64_t left = item.bound; left > 0; left /= 2) ++rows;
  return rows * capacity;
}

}  // namespace

std::optional<KnapsackBest> bestKnapsack(const KnapsackAsked& asked, CuttingWork& work) {
  constexpr std::int64_t stepsOfNode = 16;
  const std::vector<Packed> items = itemsOf(asked);
  const std::int64_t otherSteps = stepsOfAllCapacities(items, asked.capacity);
  Branching branching(items, 100 + std::min(otherSteps / 2, work.left()) / stepsOfNode);
  const bool finished = branching.finished(asked.capacity);
  work.spend(stepsOfNode * branching.nodes() + static_cast<std::int64_t>(10 * asked.sizes.size()));
  if (finished) return inOrder(asked, items, branching.best(), branching.counts());
  if (work.stopped() || otherSteps == INT64_MAX) return std::nullopt;
  const AllCapacities all(items, asked.capacity);
  work.spend(otherSteps);
  return inOrder(asked, items, all.best(), all.counts());
}

}  // namespace ribwright
