// A walk along a run from break to break: which cuts, sheets and leg strips stand over the column at hand, and which
// boundaries may separate cells in it. Breaks have to rise from one call of enter() to the next.
#pragma once

#include <vector>

#include "core/layout/crossing.h"
#include "core/layout/run_cells.h"

namespace ribwright {

// A boundary that may separate cells within a column.
struct Boundary {
  EdgeSource::Kind kind = EdgeSource::Kind::Bottom;
  int index = 0;
  const HeightLine* line = nullptr;  // or, where there is none, the level z
  Length z;
  Length heightAt(Length t, Beside side) const { return line ? line->heightAt(t, side) : z; }
  Straight straight(Length t, Beside side) const {
    return line ? straightAt(*line, t, side) : Straight{{t, z}, {t, z}};
  }
};

class ColumnSweep {
 public:
  explicit ColumnSweep(const RunFace& face) : face_(face) {}

  // Goes on to the column from `left` to `right`, with no break between them.
  void enter(Length left, Length right);

  // Indices into the face's cuts, modules and strips.
  const std::vector<std::size_t>& cuts() const { return cuts_; }
  const std::vector<std::size_t>& modules() const { return modules_; }
  const std::vector<std::size_t>& strips() const { return strips_; }
  // First the face's bottom and top.
  const std::vector<Boundary>& boundaries() const { return boundaries_; }

 private:
  std::size_t firstStripOf(std::size_t module) const;
  std::size_t lapsHere() const;
  void gatherBoundaries();

  const RunFace& face_;
  std::vector<std::size_t> cuts_, modules_, strips_;
  std::vector<Boundary> boundaries_;
  std::size_t nextCut_ = 0, firstModule_ = 0;
};

}  // namespace ribwright
