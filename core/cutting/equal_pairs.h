// From one pairing in which everything is paired to others that are as good.
#pragma once

#include <vector>

namespace ribwright {

// Things, their pairing, and which pairs may take its place: any pairing of everything by these pairs is as good.
class EqualPairs {
 public:
  // `mate` pairs everything: mate[mate[i]] == i. `links[i]`: rising list of the partners that i may have. All `free`
  // ones may have each other besides.
  EqualPairs(std::vector<int> mate, std::vector<std::vector<int>> links, std::vector<int> free);

  // Gives `thing` the first partner of `wanted` that some pairing as good gives it, keeps that pair for good, and tells
  // the partner; -1 when none of them can be had. One search over alternating paths (Edmonds, "Paths, trees, and
  // flowers", Canadian Journal of Mathematics 17, 1965).
  int settle(int thing, const std::vector<int>& wanted);
  bool settled(int thing) const { return settled_[static_cast<std::size_t>(thing)]; }

 private:
  void reachFrom(int root);
  void look(int from, int to);
  void shrink(int a, int b);
  int meeting(int a, int b) const;
  void markPath(int from, int base, int child);
  void leaveAlone(int thing);

  std::size_t count_;
  std::vector<int> mate_;
  std::vector<std::vector<int>> links_;
  std::vector<int> free_;
  std::vector<bool> isFree_, settled_;
  // Of the search: what can be left alone instead of the root, the way back, the base of the flower that it lies in.
  std::vector<bool> reached_, inFlower_;
  std::vector<int> before_, base_, waiting_;
  int root_ = -1;
};

}  // namespace ribwright
