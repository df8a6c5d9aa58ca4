// The boundaries of one column in order, from the face's bottom to its top, clipped to it.
#pragma once

#include <vector>

#include "core/layout/run_breaks.h"

namespace ribwright {

// A boundary between two breaks: its height at both.
struct Level {
  Length left, right;
  EdgeSource source;  // whose boundary it is
  EdgeSource edge;    // what it lies on: the face's own end where the boundary was clipped to it
};

class ColumnLevels {
 public:
  // Replaces what it held.
  void sort(const std::vector<Boundary>& boundaries, const RunBreaks& breaks, Length left, Length right);

  // Slab i lies between levels i and i + 1; there are size() - 1 of them.
  const std::vector<Level>& levels() const { return levels_; }
  std::size_t top() const { return levels_.size() - 1; }
  // Where this boundary stands among the levels; `otherwise` when the column does not have it.
  std::size_t indexOf(EdgeSource::Kind kind, std::size_t index, std::size_t otherwise) const;

 private:
  std::vector<Level> levels_;
};

}  // namespace ribwright
