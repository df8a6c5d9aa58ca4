// The holes of one run that are taken, to see what a new one would be too near to.
#pragma once

#include <vector>

#include "core/fastening/holes.h"

namespace ribwright {

class TakenHoles {
 public:
  explicit TakenHoles(std::size_t modules) : sheets_(modules) {}

  enum class Near { None, SameRow, Other };
  // Whether a hole that shares a sheet with `hole` is nearer to it than both screws allow (apart() of
  // chosen_pattern.h). Other: at least one of them is of another row or kind. `modules`: of its pieces.
  Near nearTo(const Hole& hole, const std::vector<Hole>& holes, const std::vector<Screw>& screws,
              const std::vector<std::int32_t>& modules) const;

  // `index` of a taken hole.
  void take(const Hole& hole, std::int32_t index, const std::vector<std::int32_t>& modules);

  // Indices of the holes through this module's sheets.
  const std::vector<std::int32_t>& of(std::size_t module) const { return sheets_[module].holes; }

 private:
  // Holes taken one after the other of one row, and the heights between which they lie.
  struct Span {
    HoleKind kind;
    std::int32_t row;
    Length low, high;
    std::size_t first, end;  // of Sheet::holes
  };
  struct Sheet {
    std::vector<std::int32_t> holes;
    std::vector<Span> spans;
  };
  std::vector<Sheet> sheets_;
};

// End laps lie on girts' rows: kinds that stand alike when holes merge.
int rankOf(HoleKind kind);

}  // namespace ribwright
