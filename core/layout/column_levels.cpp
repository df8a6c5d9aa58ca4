#include "core/layout/column_levels.h"

#include <algorithm>

namespace ribwright {

namespace {

bool liesOn(const Level& level, const Level& other) { return level.left == other.left && level.right == other.right; }

Level levelOf(const Boundary& boundary, const RunBreaks& breaks, Length left, Length right) {
  Level level{breaks.heightOf(boundary, left, Beside::Right),
              breaks.heightOf(boundary, right, Beside::Left),
              {boundary.kind, boundary.index, 0, true},
              {}};
  if (boundary.line) {
    level.source.segment = boundary.line->segmentAt(left, Beside::Right);
    level.source.level = boundary.line->isLevelAt(left, Beside::Right);
  }
  return level;
}

}  // namespace

void ColumnLevels::sort(const std::vector<Boundary>& boundaries, const RunBreaks& breaks, Length left, Length right) {
  levels_.clear();
  Level bottom, top;
  for (const Boundary& boundary : boundaries) {
    const Level level = levelOf(boundary, breaks, left, right);
    if (boundary.kind == EdgeSource::Kind::Bottom) {
      bottom = level;
    } else if (boundary.kind == EdgeSource::Kind::Top) {
      top = level;
    } else if (boundary.kind == EdgeSource::Kind::Floor) {
      if (level.left + level.right > bottom.left + bottom.right) bottom.source = level.source;
      bottom.left = std::max(bottom.left, level.left);
      bottom.right = std::max(bottom.right, level.right);
    } else if (boundary.kind == EdgeSource::Kind::Ceiling) {
      if (level.left + level.right < top.left + top.right) top.source = level.source;
      top.left = std::min(top.left, level.left);
      top.right = std::min(top.right, level.right);
    } else {
      levels_.push_back(level);
    }
  }
  top.left = std::max(top.left, bottom.left);
  top.right = std::max(top.right, bottom.right);
  bottom.edge = bottom.source;
  top.edge = top.source;
  for (Level& level : levels_) {
    level.left = std::clamp(level.left, bottom.left, top.left);
    level.right = std::clamp(level.right, bottom.right, top.right);
    level.edge = level.source;
    if (liesOn(level, bottom)) level.edge = bottom.source;
    if (liesOn(level, top)) level.edge = top.source;
  }
  std::stable_sort(levels_.begin(), levels_.end(),
                   [](const Level& a, const Level& b) { return a.left + a.right < b.left + b.right; });
  levels_.insert(levels_.begin(), bottom);
  levels_.push_back(top);
  // A crossing within a nanometre of a break leaves neighbours a nanometre out of order there.
  for (std::size_t i = 1; i < levels_.size(); ++i) {
    levels_[i].left = std::max(levels_[i].left, levels_[i - 1].left);
    levels_[i].right = std::max(levels_[i].right, levels_[i - 1].right);
  }
}

std::size_t ColumnLevels::indexOf(EdgeSource::Kind kind, std::size_t index, std::size_t otherwise) const {
  for (std::size_t i = 0; i < levels_.size(); ++i) {
    if (levels_[i].source.kind == kind && levels_[i].source.index == static_cast<int>(index)) return i;
  }
  return otherwise;
}

}  // namespace ribwright
