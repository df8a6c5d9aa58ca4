#include "core/cutting/equal_pairs.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace ribwright {
namespace {

std::size_t at(int thing) { return static_cast<std::size_t>(thing); }

}  // namespace

EqualPairs::EqualPairs(std::vector<int> mate, std::vector<std::vector<int>> links, std::vector<int> free)
    : count_(mate.size()),
      mate_(std::move(mate)),
      links_(std::move(links)),
      free_(std::move(free)),
      isFree_(count_),
      settled_(count_) {
  for (const int thing : free_) isFree_[at(thing)] = true;
}

int EqualPairs::settle(int thing, const std::vector<int>& wanted) {
  const int root = mate_[at(thing)];
  mate_[at(thing)] = mate_[at(root)] = -1;
  settled_[at(thing)] = true;  // out of the search's way
  reachFrom(root);
  const auto partner =
      std::find_if(wanted.begin(), wanted.end(), [&](int w) { return !settled_[at(w)] && reached_[at(w)]; });
  if (partner == wanted.end()) {
    settled_[at(thing)] = false;
    mate_[at(thing)] = root;
    mate_[at(root)] = thing;
    return -1;
  }
  leaveAlone(*partner);
  mate_[at(thing)] = *partner;
  mate_[at(*partner)] = thing;
  settled_[at(*partner)] = true;
  return *partner;
}

// Everything that can be left alone when the root is alone now.
void EqualPairs::reachFrom(int root) {
  root_ = root;
  reached_.assign(count_, false);
  before_.assign(count_, -1);
  base_.resize(count_);
  std::iota(base_.begin(), base_.end(), 0);
  waiting_ = {root};
  reached_[at(root)] = true;
  for (std::size_t next = 0; next < waiting_.size(); ++next) {
    const int from = waiting_[next];
    for (const int to : links_[at(from)]) look(from, to);
    if (!isFree_[at(from)]) continue;
    for (const int to : free_) look(from, to);
  }
}

void EqualPairs::look(int from, int to) {
  if (settled_[at(to)] || base_[at(from)] == base_[at(to)] || mate_[at(from)] == to) return;
  const bool even = to == root_ || (mate_[at(to)] >= 0 && before_[at(mate_[at(to)])] >= 0);
  if (even) {
    shrink(from, to);
  } else if (before_[at(to)] < 0) {
    before_[at(to)] = from;
    const int mate = mate_[at(to)];
    if (mate < 0 || reached_[at(mate)]) return;
    reached_[at(mate)] = true;
    waiting_.push_back(mate);
  }
}

// An odd round of pairs: whichever of it is left alone, the others can be paired.
void EqualPairs::shrink(int a, int b) {
  const int base = meeting(a, b);
  inFlower_.assign(count_, false);
  markPath(a, base, b);
  markPath(b, base, a);
  for (std::size_t i = 0; i < count_; ++i) {
    if (!inFlower_[at(base_[i])]) continue;
    base_[i] = base;
    if (reached_[i]) continue;
    reached_[i] = true;
    waiting_.push_back(static_cast<int>(i));
  }
}

int EqualPairs::meeting(int a, int b) const {
  std::vector<bool> onWay(count_);
  for (;;) {
    a = base_[at(a)];
    onWay[at(a)] = true;
    if (mate_[at(a)] < 0) break;
    a = before_[at(mate_[at(a)])];
  }
  for (;;) {
    b = base_[at(b)];
    if (onWay[at(b)]) return b;
    b = before_[at(mate_[at(b)])];
  }
}

void EqualPairs::markPath(int from, int base, int child) {
  while (base_[at(from)] != base) {
    const int mate = mate_[at(from)];
    inFlower_[at(base_[at(from)])] = inFlower_[at(base_[at(mate)])] = true;
    before_[at(from)] = child;
    child = mate;
    from = before_[at(mate)];
  }
}

void EqualPairs::leaveAlone(int thing) {
  int left = mate_[at(thing)];
  mate_[at(thing)] = -1;
  while (left >= 0) {
    const int partner = before_[at(left)];
    const int next = mate_[at(partner)];
    mate_[at(left)] = partner;
    mate_[at(partner)] = left;
    left = next;
  }
}

}  // namespace ribwright
