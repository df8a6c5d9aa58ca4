// Things in the order of their left ends, so that those within a stretch of the wall are found without asking all.
#pragma once

#include <algorithm>
#include <limits>
#include <utility>
#include <vector>

namespace ribwright {

// `Thing` tells its extent by left() and right(), left() <= right(). Unit: mm.
template <class Thing>
class AlongWall {
 public:
  AlongWall() = default;
  explicit AlongWall(std::vector<Thing> things) : things_(std::move(things)) {
    std::stable_sort(things_.begin(), things_.end(),
                     [](const Thing& a, const Thing& b) { return a.left() < b.left(); });
    double reach = -std::numeric_limits<double>::infinity();
    for (const Thing& thing : things_) reaches_.push_back(reach = std::max(reach, thing.right()));
  }

  const std::vector<Thing>& all() const { return things_; }

  // First and last + 1 of those that may touch [from, to]: none outside touches it.
  std::pair<std::size_t, std::size_t> between(double from, double to) const {
    const auto first = std::lower_bound(reaches_.begin(), reaches_.end(), from);
    const auto last = std::upper_bound(things_.begin(), things_.end(), to,
                                       [](double limit, const Thing& thing) { return limit < thing.left(); });
    const auto start = static_cast<std::size_t>(first - reaches_.begin());
    return {start, std::max(start, static_cast<std::size_t>(last - things_.begin()))};
  }

 private:
  std::vector<Thing> things_;
  std::vector<double> reaches_;  // how far right those up to each reach
};

}  // namespace ribwright
