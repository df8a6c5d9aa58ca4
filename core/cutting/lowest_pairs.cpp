#include "core/cutting/lowest_pairs.h"

#include <algorithm>
#include <numeric>

#include "core/cutting/equal_pairs.h"
#include "core/cutting/heaviest_pairs.h"

namespace ribwright {
namespace {

std::size_t at(int thing) { return static_cast<std::size_t>(thing); }

using Pairs = std::vector<std::pair<int, int>>;

// One list of things that savings link. Weights are ranked: what is saved, then the number of pairs, then for the first
// few things whom they are paired with; a 128-bit number holds no more of them.
class Linked {
 public:
  Linked(std::vector<int> things, const std::vector<PairSaving>& savings)
      : things_(std::move(things)), savings_(savings) {}

  Pairs lowest() {
    solve(isDense(), 0);
    while (!things_.empty() && !found_.oddSets.empty()) {
      const int few = solve(isDense(), kMost);
      if (found_.oddSets.empty()) break;
      takeFirst(few);
      if (!things_.empty()) solve(isDense(), 0);
    }
    if (!things_.empty()) settleAll();
    std::sort(pairs_.begin(), pairs_.end());
    return pairs_;
  }

 private:
  static constexpr int kMost = 1000;

  int count() const { return static_cast<int>(things_.size()); }
  // Then a weight of 0 between all others makes them fewer odd sets at little cost.
  bool isDense() const { return savings_.size() * 8 >= things_.size() * (things_.size() - 1) / 2 && !isOfTwoSides(); }

  // No round of savings has an odd number: then there are no odd sets.
  bool isOfTwoSides() const {
    std::vector<std::vector<int>> links(at(count()));
    for (const PairSaving& saving : savings_) {
      links[at(saving.a)].push_back(saving.b);
      links[at(saving.b)].push_back(saving.a);
    }
    std::vector<int> side(at(count()), -1);
    for (int first = 0; first < count(); ++first) {
      if (side[at(first)] >= 0) continue;
      side[at(first)] = 0;
      for (std::vector<int> waiting{first}; !waiting.empty();) {
        const int from = waiting.back();
        waiting.pop_back();
        for (const int to : links[at(from)]) {
          if (side[at(to)] == side[at(from)]) return false;
          if (side[at(to)] >= 0) continue;
          side[at(to)] = 1 - side[at(from)];
          waiting.push_back(to);
        }
      }
    }
    return true;
  }

  // Ranks for as many of the first things as fit, at most `most`; tells how many.
  int solve(bool everyone, int most) {
    std::int64_t common = 0, highest = 0;
    for (const PairSaving& saving : savings_) {
      common = std::gcd(common, saving.saved);
      highest = std::max(highest, saving.saved);
    }
    const PairWeight base = count() + 1, ranks = count() / 2 + 1;
    const PairWeight room = (PairWeight(1) << 108) / base;
    PairWeight scale = 1;
    int ranked = 0;
    while (ranked < std::min(most, count()) && common > 0 && scale <= room / base / (highest / common * ranks + 2)) {
      scale *= base;
      ++ranked;
    }
    weighted_.clear();
    for (const PairSaving& saving : savings_) {
      PairWeight rank = saving.a < ranked ? count() - saving.b : 0;
      for (int i = saving.a + 1; i < ranked; ++i) rank *= base;
      weighted_.push_back({saving.a, saving.b, (saving.saved / common * ranks + 1) * scale + rank});
    }
    everyone_ = everyone;
    if (everyone) addNothings();
    found_ = heaviestPairs(everyone ? count() + count() % 2 : count(), weighted_, everyone);
    return ranked;
  }

  // Pairs that save nothing between all that save nothing together, and one thing more when their number is odd: then
  // everything can be paired, and being paired so is being alone.
  void addNothings() {
    const int all = count() + count() % 2;
    std::vector<std::vector<bool>> saves(at(all), std::vector<bool>(at(all)));
    for (const PairSaving& saving : savings_) saves[at(saving.a)][at(saving.b)] = true;
    for (int a = 0; a < all; ++a) {
      for (int b = a + 1; b < all; ++b) {
        if (!saves[at(a)][at(b)]) weighted_.push_back({a, b, 0});
      }
    }
  }

  // The first `few` things have the partners that they have in the least set.
  void takeFirst(int few) {
    std::vector<bool> gone(at(count()));
    const auto saves = [&](int a, int b) {
      return std::any_of(savings_.begin(), savings_.end(),
                         [&](const PairSaving& s) { return s.a == std::min(a, b) && s.b == std::max(a, b); });
    };
    for (int a = 0; a < few; ++a) {
      const int b = found_.mate[at(a)];
      if (b >= 0 && b < count() && b > a && saves(a, b)) {
        pairs_.emplace_back(things_[at(a)], things_[at(b)]);
        gone[at(b)] = true;
      }
      gone[at(a)] = true;
    }
    keepOthers(gone);
  }

  void keepOthers(const std::vector<bool>& gone) {
    std::vector<int> left, now(at(count()), -1);
    for (int i = 0; i < count(); ++i) {
      if (gone[at(i)]) continue;
      now[at(i)] = static_cast<int>(left.size());
      left.push_back(things_[at(i)]);
    }
    std::vector<PairSaving> savings;
    for (const PairSaving& saving : savings_) {
      if (!gone[at(saving.a)] && !gone[at(saving.b)])
        savings.push_back({now[at(saving.a)], now[at(saving.b)], saving.saved});
    }
    things_ = std::move(left);
    savings_ = std::move(savings);
  }

  // No odd set has a worth: then every pairing that takes only pairs at their worth, and pairs all things that have a
  // worth, is as good.
  void settleAll() {
    const bool oneMore = !everyone_ && count() % 2 == 1;
    const int all = static_cast<int>(found_.mate.size()) + (oneMore ? 1 : 0);
    std::vector<std::vector<int>> links(at(all)), wanted(at(all));
    for (const WeightedPair& pair : weighted_) {
      if (pair.weight * kWorthScale != found_.worths[at(pair.a)] + found_.worths[at(pair.b)]) continue;
      links[at(pair.a)].push_back(pair.b);
      links[at(pair.b)].push_back(pair.a);
      if (pair.weight > 0) wanted[at(pair.a)].push_back(pair.b);
    }
    std::vector<int> free;
    if (!everyone_) free = pairAlone(all);
    for (auto& partners : wanted) std::sort(partners.begin(), partners.end());
    EqualPairs equal(found_.mate, std::move(links), std::move(free));
    for (int a = 0; a < count(); ++a) {
      if (equal.settled(a) || wanted[at(a)].empty()) continue;
      const int b = equal.settle(a, wanted[at(a)]);
      if (b >= 0) pairs_.emplace_back(things_[at(a)], things_[at(b)]);
    }
  }

  // Those alone are paired with each other for nothing, one more thing among them when their number is odd. Any thing
  // of worth 0 may be paired so.
  std::vector<int> pairAlone(int all) {
    std::vector<int> free;
    int waiting = -1;
    found_.mate.resize(at(all), -1);
    found_.worths.resize(at(all), 0);
    for (int i = 0; i < all; ++i) {
      if (found_.worths[at(i)] == 0) free.push_back(i);
      if (found_.mate[at(i)] >= 0) continue;
      if (waiting < 0) {
        waiting = i;
      } else {
        found_.mate[at(i)] = waiting;
        found_.mate[at(waiting)] = i;
        waiting = -1;
      }
    }
    return free;
  }

  std::vector<int> things_;  // rising
  std::vector<PairSaving> savings_;
  std::vector<WeightedPair> weighted_;
  bool everyone_ = false;
  HeaviestPairs found_;
  Pairs pairs_;
};

// For each thing the lowest of those that savings link it with, itself among them.
std::vector<int> linkedTo(int count, const std::vector<PairSaving>& savings) {
  std::vector<int> lowest(at(count));
  std::iota(lowest.begin(), lowest.end(), 0);
  const auto of = [&](int i) {
    while (lowest[at(i)] != i) i = lowest[at(i)] = lowest[at(lowest[at(i)])];
    return i;
  };
  for (const PairSaving& saving : savings) {
    const int a = of(saving.a), b = of(saving.b);
    lowest[at(std::max(a, b))] = std::min(a, b);
  }
  for (int i = 0; i < count; ++i) lowest[at(i)] = of(i);
  return lowest;
}

}  // namespace

std::vector<std::pair<int, int>> lowestPairs(int count, const std::vector<PairSaving>& savings) {
  const std::vector<int> group = linkedTo(count, savings);
  std::vector<std::vector<int>> things(at(count));
  std::vector<std::vector<PairSaving>> linked(at(count));
  std::vector<int> place(at(count));
  for (int i = 0; i < count; ++i) {
    auto& in = things[at(group[at(i)])];
    place[at(i)] = static_cast<int>(in.size());
    in.push_back(i);
  }
  for (const PairSaving& saving : savings)
    linked[at(group[at(saving.a)])].push_back({place[at(saving.a)], place[at(saving.b)], saving.saved});
  Pairs pairs;
  for (std::size_t i = 0; i < things.size(); ++i) {
    if (linked[i].empty()) continue;
    const Pairs lowest = Linked(things[i], linked[i]).lowest();
    pairs.insert(pairs.end(), lowest.begin(), lowest.end());
  }
  std::sort(pairs.begin(), pairs.end());
  return pairs;
}

}  // namespace ribwright
