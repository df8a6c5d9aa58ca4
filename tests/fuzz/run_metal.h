// The metal of one run, by its pieces' outlines: what a point goes through, how near an edge it is, where it stands
// along an upright line.
#pragma once

#include <optional>
#include <vector>

#include "core/layout/wall_layout.h"
#include "tests/fuzz/spans.h"

namespace ribwright::fuzz {

// Where along an upright line metal is. On a sloped edge a height is rounded: then it is exact within 2 nm.
struct Stand {
  Span z;
  bool fromSloped = false, toSloped = false;
};

// Where both stand.
std::vector<Stand> commonStands(const std::vector<Stand>& a, const std::vector<Stand>& b);

class RunMetal {
 public:
  RunMetal(const WallLayout& layout, int run);

  // Indices into WallLayout::pieces, in hanging order: those in whose outline the point lies, off every edge.
  std::vector<int> through(Nm u, Nm z) const;
  // Whether an edge of some piece is nearer than `limit`.
  bool nearEdge(Nm u, Nm z, Nm limit) const;
  // Of one module's pieces, joined where they overlap; an upright edge on the line is no metal.
  std::vector<Stand> standsOf(int module, Nm u) const;
  // Some piece, of one module or of any, overlaps the box u x z by its own box, by more than 0.
  bool overBox(const Span& u, const Span& z, std::optional<int> module = {}) const;
  const std::vector<int>& pieces() const { return pieces_; }

 private:
  template <class Visit>
  void near(Nm u, Nm z, Nm limit, const Visit& visit) const;
  std::vector<Stand> standsOf(const Piece& piece, Nm u) const;

  const WallLayout& layout_;
  std::vector<int> pieces_;  // by left
  Nm widest_ = 0;
};

}  // namespace ribwright::fuzz
