#include "core/layout/run_cells.h"

#include <algorithm>

#include "core/layout/crossing.h"

namespace ribwright {

namespace {

using Kind = EdgeSource::Kind;

// A boundary that may separate cells within a column.
struct Boundary {
  EdgeSource::Kind kind;
  int index;
  const HeightLine* line;  // or, where there is none, the level z
  Length z;
  Length heightAt(Length t, Beside side) const { return line ? line->heightAt(t, side) : z; }
  Straight straight(Length t, Beside side) const {
    return line ? straightAt(*line, t, side) : Straight{{t, z}, {t, z}};
  }
};

// Where a boundary crosses another, and the height that both take there.
struct Meeting {
  Length t;
  EdgeSource::Kind kind;
  int index;
  Length z;
  bool isOf(const Boundary& boundary) const { return kind == boundary.kind && index == boundary.index; }
};

// A boundary between two breaks: its height at both, clipped to the face.
struct Level {
  Length left, right;
  EdgeSource source;  // whose boundary it is
  EdgeSource edge;    // what it lies on: the face's own end where the boundary was clipped to it
};

struct Span {  // levels[below] .. levels[above]
  std::size_t below, above;
};

bool liesOn(const Level& level, const Level& other) { return level.left == other.left && level.right == other.right; }

class Columns {
 public:
  explicit Columns(const RunFace& face) : face_(face) {
    findBreaks();
    addCrossings();
  }

  RunCells work() {
    firstModule_ = 0;
    nextCut_ = 0;
    open_.clear();
    for (const int laps : face_.laps) tiers_ = std::max(tiers_, static_cast<std::size_t>(laps) + 1);
    sheets_.assign(face_.modules.size() * tiers_, {});
    for (std::size_t i = 0; i + 1 < breaks_.size(); ++i) workColumn(static_cast<int>(i), breaks_[i], breaks_[i + 1]);
    gather();
    return std::move(result_);
  }

 private:
  void addBreak(Length t) {
    if (t > face_.from && t < face_.to) breaks_.push_back(t);
  }

  void addVertices(const HeightLine& line) {
    for (const FaceVertex& vertex : line.vertices()) addBreak(vertex.u);
  }

  void sortBreaks() {
    std::sort(breaks_.begin(), breaks_.end());
    breaks_.erase(std::unique(breaks_.begin(), breaks_.end()), breaks_.end());
  }

  void findBreaks() {
    breaks_ = {face_.from, face_.to};
    addVertices(face_.bottom);
    addVertices(face_.top);
    for (const RunModule& module : face_.modules) {
      addBreak(module.from);
      addBreak(module.to);
    }
    for (const RunCut& cut : face_.cuts) {
      addBreak(cut.from);
      addBreak(cut.to);
      addVertices(cut.lower);
      addVertices(cut.upper);
    }
    sortBreaks();
  }

  // Where boundaries change order between two breaks, a break is added for each crossing; there they meet.
  void addCrossings() {
    for (std::size_t i = 0; i + 1 < breaks_.size(); ++i) {
      enter(breaks_[i], breaks_[i + 1]);
      gatherBoundaries();
      if (boundaries_.size() > 2 || !face_.top.isLevelAt(breaks_[i], Beside::Right)) {
        findCrossings(breaks_[i], breaks_[i + 1]);
      }
    }
    for (const Meeting& meeting : meetings_) addBreak(meeting.t);
    sortBreaks();
    std::stable_sort(meetings_.begin(), meetings_.end(), [](const Meeting& a, const Meeting& b) { return a.t < b.t; });
  }

  void findCrossings(Length left, Length right) {
    for (std::size_t a = 0; a < boundaries_.size(); ++a) {
      const Boundary& one = boundaries_[a];
      const Length oneLeft = one.heightAt(left, Beside::Right), oneRight = one.heightAt(right, Beside::Left);
      for (std::size_t b = a + 1; b < boundaries_.size(); ++b) {
        const Boundary& other = boundaries_[b];
        const Length otherLeft = other.heightAt(left, Beside::Right), otherRight = other.heightAt(right, Beside::Left);
        const bool changes =
            (oneLeft < otherLeft && oneRight > otherRight) || (oneLeft > otherLeft && oneRight < otherRight);
        if (!changes) continue;
        const Straight first = one.straight(left, Beside::Right), second = other.straight(left, Beside::Right);
        const auto t = crossing(first, second);
        if (t && *t > left && *t < right) meet(*t, one, other, isFlatter(first, second));
      }
    }
  }

  // Three lines through one point meet at one height: the one that was taken first.
  void meet(Length t, const Boundary& one, const Boundary& other, bool oneIsFlatter) {
    Length z = (oneIsFlatter ? one : other).heightAt(t, Beside::Right);
    for (const Meeting& known : meetings_) {
      if (known.t == t && (known.isOf(one) || known.isOf(other))) z = known.z;
    }
    for (const Boundary* boundary : {&one, &other}) meetings_.push_back({t, boundary->kind, boundary->index, z});
  }

  Length heightOf(const Boundary& boundary, Length t, Beside side) const {
    if (!meetings_.empty()) {
      auto meeting =
          std::lower_bound(meetings_.begin(), meetings_.end(), t, [](const Meeting& m, Length at) { return m.t < at; });
      for (; meeting != meetings_.end() && meeting->t == t; ++meeting) {
        if (meeting->isOf(boundary)) return meeting->z;
      }
    }
    return boundary.heightAt(t, side);
  }

  // Makes `open_` the cuts over this column and `here_` its modules.
  void enter(Length left, Length right) {
    std::erase_if(open_, [&](std::size_t cut) { return face_.cuts[cut].to <= left; });
    while (nextCut_ < face_.cuts.size() && face_.cuts[nextCut_].from <= left) {
      if (face_.cuts[nextCut_].to > left) open_.push_back(nextCut_);
      ++nextCut_;
    }
    while (firstModule_ < face_.modules.size() && face_.modules[firstModule_].to <= left) ++firstModule_;
    here_.clear();
    for (std::size_t k = firstModule_; k < face_.modules.size() && face_.modules[k].from < right; ++k) {
      if (face_.modules[k].from <= left && face_.modules[k].to >= right) here_.push_back(k);
    }
    stripsHere_.clear();
    for (const std::size_t k : here_) {
      for (std::size_t s = firstStripOf(k); s < face_.strips.size() && face_.strips[s].module == static_cast<int>(k);
           ++s) {
        if (face_.strips[s].from <= left && face_.strips[s].to >= right) stripsHere_.push_back(s);
      }
    }
  }

  std::size_t firstStripOf(std::size_t module) const {
    const auto found = std::partition_point(face_.strips.begin(), face_.strips.end(), [&](const LegStrip& strip) {
      return strip.module < static_cast<int>(module);
    });
    return static_cast<std::size_t>(found - face_.strips.begin());
  }

  std::size_t lapsHere() const {
    int most = 0;
    for (const std::size_t k : here_) most = std::max(most, face_.laps.empty() ? 0 : face_.laps[k]);
    return static_cast<std::size_t>(most);
  }

  void gatherBoundaries() {
    boundaries_ = {{Kind::Bottom, 0, &face_.bottom, {}}, {Kind::Top, 0, &face_.top, {}}};
    if (face_.floor) boundaries_.push_back({Kind::Floor, 0, nullptr, *face_.floor});
    if (face_.ceiling) boundaries_.push_back({Kind::Ceiling, 0, nullptr, *face_.ceiling});
    for (const std::size_t i : open_) {
      if (!face_.cuts[i].reachesFloor)
        boundaries_.push_back({Kind::CutLower, static_cast<int>(i), &face_.cuts[i].lower, {}});
      boundaries_.push_back({Kind::CutUpper, static_cast<int>(i), &face_.cuts[i].upper, {}});
    }
    for (const std::size_t s : stripsHere_) {
      if (!face_.strips[s].reachesFloor)
        boundaries_.push_back({Kind::LegBottom, static_cast<int>(s), nullptr, face_.strips[s].bottom});
      boundaries_.push_back({Kind::LegTop, static_cast<int>(s), nullptr, face_.strips[s].top});
    }
    for (std::size_t lap = 0; lap < lapsHere(); ++lap) {
      boundaries_.push_back({Kind::LapEnd, static_cast<int>(lap), nullptr, face_.lapEnds[lap]});
      boundaries_.push_back({Kind::LapTop, static_cast<int>(lap), nullptr, face_.lapEnds[lap] + face_.lapRise});
    }
  }

  Level levelOf(const Boundary& boundary, Length left, Length right) const {
    Level level{heightOf(boundary, left, Beside::Right),
                heightOf(boundary, right, Beside::Left),
                {boundary.kind, boundary.index, 0, true},
                {}};
    if (boundary.line) {
      level.source.segment = boundary.line->segmentAt(left, Beside::Right);
      level.source.level = boundary.line->isLevelAt(left, Beside::Right);
    }
    return level;
  }

  // All boundaries of the column between the face's bottom and top, rising; the first is the bottom, the last the top.
  void sortLevels(Length left, Length right) {
    levels_.clear();
    Level bottom, top;
    gatherBoundaries();
    for (const Boundary& boundary : boundaries_) {
      const Level level = levelOf(boundary, left, right);
      if (boundary.kind == Kind::Bottom) {
        bottom = level;
      } else if (boundary.kind == Kind::Top) {
        top = level;
      } else if (boundary.kind == Kind::Floor) {
        if (level.left + level.right > bottom.left + bottom.right) bottom.source = level.source;
        bottom.left = std::max(bottom.left, level.left);
        bottom.right = std::max(bottom.right, level.right);
      } else if (boundary.kind == Kind::Ceiling) {
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

  std::size_t levelIndex(Kind kind, std::size_t index, std::size_t otherwise) const {
    for (std::size_t i = 0; i < levels_.size(); ++i) {
      if (levels_[i].source.kind == kind && levels_[i].source.index == static_cast<int>(index)) return i;
    }
    return otherwise;
  }

  Span tierSpan(int laps, int tier) const {
    const std::size_t top = levels_.size() - 1;
    const auto at = static_cast<std::size_t>(tier);
    return {tier == 0 ? 0 : levelIndex(Kind::LapEnd, at - 1, 0),
            tier == laps ? top : levelIndex(Kind::LapTop, at, top)};
  }

  void workColumn(int column, Length left, Length right) {
    enter(left, right);
    sortLevels(left, right);
    const std::size_t top = levels_.size() - 1;
    cutSpans_.clear();
    for (const std::size_t i : open_) {
      cutSpans_.push_back({levelIndex(Kind::CutLower, i, 0), levelIndex(Kind::CutUpper, i, top)});
    }
    for (std::size_t slab = 0; slab < top; ++slab) {
      const Level& below = levels_[slab];
      const Level& above = levels_[slab + 1];
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
    const std::size_t top = levels_.size() - 1;
    for (const std::size_t k : here_) {
      const bool cutAway = std::any_of(stripsHere_.begin(), stripsHere_.end(), [&](std::size_t s) {
        if (face_.strips[s].module != static_cast<int>(k)) return false;
        return levelIndex(Kind::LegBottom, s, 0) <= slab && slab < levelIndex(Kind::LegTop, s, top);
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
    const Level& below = levels_[static_cast<std::size_t>(at.slab)];
    const Level& above = levels_[static_cast<std::size_t>(at.slab) + 1];
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
  std::vector<Length> breaks_;
  std::vector<std::size_t> open_, here_, stripsHere_;
  std::size_t nextCut_ = 0, firstModule_ = 0;
  std::vector<Boundary> boundaries_;
  std::vector<Meeting> meetings_;  // by t
  std::vector<Level> levels_;
  std::vector<Span> cutSpans_;
  std::vector<NotHung> covering_;   // the sheets over one slab
  std::size_t tiers_ = 1;           // at most, of any module
  std::vector<SheetCells> sheets_;  // by module, then tier
  RunCells result_;
};

}  // namespace

RunCells runCells(const RunFace& face) { return Columns(face).work(); }

}  // namespace ribwright
