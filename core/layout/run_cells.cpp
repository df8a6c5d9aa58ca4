#include "core/layout/run_cells.h"

#include <algorithm>

#include "core/layout/column_levels.h"
#include "core/layout/column_sweep.h"
#include "core/layout/run_breaks.h"

namespace ribwright {

namespace {

struct Span {  // from one level to another
  std::size_t below, above;
};

class CellWork {
 public:
  explicit CellWork(const RunFace& face) : face_(face), breaks_(breaksOf(face)), sweep_(face) {}

  RunCells work() {
    for (const int laps : face_.laps) tiers_ = std::max(tiers_, static_cast<std::size_t>(laps) + 1);
    sheets_.assign(face_.modules.size() * tiers_, {});
    const std::vector<Length>& at = breaks_.breaks;
    for (std::size_t i = 0; i + 1 < at.size(); ++i) workColumn(static_cast<int>(i), at[i], at[i + 1]);
    gather();
    return std::move(result_);
  }

 private:
  Span tierSpan(int laps, int tier) const {
    const std::size_t top = levels_.top();
    const auto at = static_cast<std::size_t>(tier);
    return {tier == 0 ? 0 : levels_.indexOf(EdgeSource::Kind::LapEnd, at - 1, 0),
            tier == laps ? top : levels_.indexOf(EdgeSource::Kind::LapTop, at, top)};
  }

  void workColumn(int column, Length left, Length right) {
    sweep_.enter(left, right);
    levels_.sort(sweep_.boundaries(), breaks_, left, right);
    const std::size_t top = levels_.top();
    cutSpans_.clear();
    for (const std::size_t i : sweep_.cuts()) {
      cutSpans_.push_back(
          {levels_.indexOf(EdgeSource::Kind::CutLower, i, 0), levels_.indexOf(EdgeSource::Kind::CutUpper, i, top)});
    }
    for (std::size_t slab = 0; slab < top; ++slab) {
      const Level& below = levels_.levels()[slab];
      const Level& above = levels_.levels()[slab + 1];
      const Cell cell{left, right, below.left, below.right, above.left, above.right};
      const Area area = cell.area();
      if (area == Area()) continue;
      result_.face += area;
      const auto holds = [&](const Span& span) { return span.below <= slab && slab < span.above; };
      if (std::any_of(cutSpans_.begin(), cutSpans_.end(), holds)) {
        result_.cut += area;
        continue;
      }
      result_.net += area;
      const int sheets = coverSlab(column, slab, cell);
      if (sheets == 0) result_.uncovered += area;
      if (sheets > 1) result_.laps += area * (sheets - 1);
      result_.pieces += area * sheets;
    }
  }

  // Gives the slab to each sheet that covers it; how many do.
  int coverSlab(int column, std::size_t slab, const Cell& cell) {
    covering_.clear();
    const std::size_t top = levels_.top();
    for (const std::size_t k : sweep_.modules()) {
      const bool cutAway = std::any_of(sweep_.strips().begin(), sweep_.strips().end(), [&](std::size_t s) {
        if (face_.strips[s].module != static_cast<int>(k)) return false;
        return levels_.indexOf(EdgeSource::Kind::LegBottom, s, 0) <= slab &&
               slab < levels_.indexOf(EdgeSource::Kind::LegTop, s, top);
      });
      if (cutAway) continue;
      const int laps = face_.laps.empty() ? 0 : face_.laps[k];
      for (int tier = 0; tier <= laps; ++tier) {
        const Span span = tierSpan(laps, tier);
        if (slab < span.below || slab >= span.above) continue;
        const NotHung asked{static_cast<int>(k), tier, column, static_cast<int>(slab)};
        if (face_.notHung.empty() || !face_.notHung.contains(asked)) covering_.push_back(asked);
      }
    }
    for (const NotHung& sheet : covering_) give(sheet, cell);
    return static_cast<int>(covering_.size());
  }

  void give(const NotHung& at, const Cell& cell) {
    SheetCells& sheet = sheets_[static_cast<std::size_t>(at.module) * tiers_ + static_cast<std::size_t>(at.tier)];
    sheet.module = at.module;
    sheet.tier = at.tier;
    const Level& below = levels_.levels()[static_cast<std::size_t>(at.slab)];
    const Level& above = levels_.levels()[static_cast<std::size_t>(at.slab) + 1];
    const bool joins = !sheet.cells.empty() && sheet.cells.back().column == at.column &&
                       sheet.cells.back().cell.topLeft == cell.bottomLeft &&
                       sheet.cells.back().cell.topRight == cell.bottomRight;
    if (!joins) sheet.cells.push_back({cell, below.edge, above.edge, at.column, at.slab, at.slab, Area()});
    RunCell& last = sheet.cells.back();
    last.cell.topLeft = cell.topLeft;
    last.cell.topRight = cell.topRight;
    last.above = above.edge;
    last.lastSlab = at.slab;
    if (covering_.size() == 1) last.alone += cell.area();
  }

  void gather() {
    for (SheetCells& sheet : sheets_) {
      if (!sheet.cells.empty()) result_.sheets.push_back(std::move(sheet));
    }
  }

  const RunFace& face_;
  const RunBreaks breaks_;
  ColumnSweep sweep_;
  ColumnLevels levels_;
  std::vector<Span> cutSpans_;
  std::vector<NotHung> covering_;   // the sheets over one slab
  std::size_t tiers_ = 1;           // at most, of any module
  std::vector<SheetCells> sheets_;  // by module, then tier
  RunCells result_;
};

}  // namespace

RunCells runCells(const RunFace& face) { return CellWork(face).work(); }

}  // namespace ribwright
