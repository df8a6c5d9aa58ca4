// Point by point: on the face, in no cut region and under the sheets that the trade's rules put there, judged against
// lines that nobody rounded; and found by the outlines of the pieces. Points keep off the one nanometre where rounding
// may decide.
#include <algorithm>
#include <cstdlib>
#include <map>

#include "tests/fuzz/layout_checker.h"
#include "tests/fuzz/ring_geometry.h"

namespace ribwright::fuzz {
namespace {

class PointCheck {
 public:
  PointCheck(const CheckedWall& wall, std::size_t run, Dice& dice, Complaints& complaints)
      : layout_(wall.layout),
        run_(wall.runs[run]),
        index_(static_cast<int>(run)),
        dice_(dice),
        complaints_(complaints) {
    collectEdges();
  }

  void all() {
    for (int i = 0; i < 24; ++i) {
      const Nm u = dice_.between(run_.left + 1, run_.right - 1);
      tryAt(u, dice_.between(lowest(u) - 1000, highest(u) + 1000));
    }
    for (int i = 0; i < 64; ++i) {
      const Nm u = dice_.of(edges_) + dice_.of({-1, 1, -2, 2, -1000, 1000});
      const std::vector<Nm> heights = heightsAt(u);
      if (u > run_.left && u < run_.right) tryAt(u, dice_.of(heights) + dice_.of({-1, 1, -4, 4, -12, 12, -40, 40}));
    }
  }

 private:
  // Upright edges of anything: points keep off them, by one nanometre at least.
  void collectEdges() {
    edges_ = {run_.left, run_.right};
    for (const SheetMetal& sheet : run_.sheets) edges_.insert(edges_.end(), {sheet.left, sheet.right});
    for (const StatedCut& cut : run_.cuts) edges_.insert(edges_.end(), {cut.left, cut.right});
    for (const StatedLine* line : {&run_.face->top, &run_.face->bottom}) {
      const std::vector<Nm> joints = line->joints();
      edges_.insert(edges_.end(), joints.begin(), joints.end());
    }
  }

  Nm lowest(Nm u) const { return run_.floor.value_or(run_.face->bottom.heightAt(u, Side::Left)); }
  Nm highest(Nm u) const { return run_.ceiling.value_or(run_.face->top.heightAt(u, Side::Left)); }

  // Lines that pass over u, each with how near to it rounding may decide.
  void linesAt(Nm u, std::vector<const Segment*>& lines) const {
    lines = {&run_.face->top.segmentAt(u, Side::Left), &run_.face->bottom.segmentAt(u, Side::Left)};
    for (const StatedCut& cut : run_.cuts) {
      if (u < cut.left || u > cut.right) continue;
      lines.push_back(&cut.lower.segmentAt(u, Side::Left));
      lines.push_back(&cut.upper.segmentAt(u, Side::Left));
    }
    for (const LegCutAway& leg : run_.legs) {
      lines.push_back(&leg.lower.segments.front());
      lines.push_back(&leg.upper.segments.front());
    }
  }

  std::vector<Nm> levels() const {
    std::vector<Nm> levels;
    if (run_.floor) levels.push_back(*run_.floor);
    if (run_.ceiling) levels.push_back(*run_.ceiling);
    for (const Nm end : run_.lapEnds) levels.insert(levels.end(), {end, end + run_.lap});
    return levels;
  }

  std::vector<Nm> heightsAt(Nm u) const {
    std::vector<const Segment*> lines;
    linesAt(u, lines);
    std::vector<Nm> heights = levels();
    for (const Segment* line : lines) {
      if (line->heightAt(u) > kBelowAll) heights.push_back(line->heightAt(u));
    }
    return heights;
  }

  void tryAt(Nm u, Nm z) {
    if (std::find(edges_.begin(), edges_.end(), u) != edges_.end()) return;
    std::vector<const Segment*> lines;
    linesAt(u, lines);
    // Where a steep line crosses a level one, both are off by what rounding u makes of the steep one.
    Nm keep = 0;
    for (const Segment* line : lines) keep = std::max(keep, line->level() ? 0 : line->slack() + 3);
    for (const Segment* line : lines) {
      if (line->sideOf(u, z - keep) != line->sideOf(u, z + keep) || line->sideOf(u, z) == 0) return;
    }
    for (const Nm level : levels()) {
      if (std::abs(level - z) <= keep) return;
    }
    judge(u, z);
  }

  static bool between(const StatedLine& lower, const StatedLine& upper, Nm u, Nm z) {
    return lower.segmentAt(u, Side::Left).sideOf(u, z) > 0 && upper.segmentAt(u, Side::Left).sideOf(u, z) < 0;
  }

  bool onNetFace(Nm u, Nm z) const {
    if (!between(run_.face->bottom, run_.face->top, u, z)) return false;
    if ((run_.floor && z < *run_.floor) || (run_.ceiling && z > *run_.ceiling)) return false;
    return std::none_of(run_.cuts.begin(), run_.cuts.end(), [&](const StatedCut& cut) {
      return cut.left < u && u < cut.right && between(cut.lower, cut.upper, u, z);
    });
  }

  bool hasMetal(std::size_t sheet, Nm u, Nm z) const {
    if (u < run_.sheets[sheet].left || u > run_.sheets[sheet].right) return false;
    return std::none_of(run_.legs.begin(), run_.legs.end(), [&](const LegCutAway& leg) {
      return leg.sheet == sheet && leg.left < u && u < leg.right && between(leg.lower, leg.upper, u, z);
    });
  }

  // Sheet and tier -> how often there.
  std::map<std::pair<int, int>, int> wanted(Nm u, Nm z) const {
    std::map<std::pair<int, int>, int> found;
    if (!onNetFace(u, z)) return found;
    for (std::size_t sheet = 0; sheet < run_.sheets.size(); ++sheet) {
      if (!hasMetal(sheet, u, z)) continue;
      for (const Tier& tier : run_.sheets[sheet].tiers) {
        if (tier.from < z && z < tier.to) ++found[{static_cast<int>(sheet), tier.number}];
      }
    }
    return found;
  }

  std::map<std::pair<int, int>, int> given(Length u, Length z) const {
    std::map<std::pair<int, int>, int> found;
    for (const Piece& piece : layout_.pieces) {
      if (piece.run != index_ || u < piece.left || u > piece.right || z < piece.bottom || z > piece.top) continue;
      bool inside = placeIn(piece.rings.front(), u, z) != Place::Outside;
      for (std::size_t i = 1; i < piece.rings.size(); ++i)
        inside = inside && placeIn(piece.rings[i], u, z) != Place::Inside;
      if (inside) ++found[{piece.module, piece.tier}];
    }
    return found;
  }

  static void say(const std::map<std::pair<int, int>, int>& sheets, std::string& what) {
    for (const auto& [key, count] : sheets) {
      what.append(" ").append(std::to_string(key.first)).append("/").append(std::to_string(key.second));
    }
  }

  void judge(Nm u, Nm z) {
    const auto own = wanted(u, z), found = given(Length::nanometres(u), Length::nanometres(z));
    // A piece that others cover wholly need not be hung.
    const bool covered = own.empty() == found.empty();
    if (covered && std::includes(own.begin(), own.end(), found.begin(), found.end())) return;
    std::string what = "at u ";
    what.append(std::to_string(u)).append(", z ").append(std::to_string(z)).append(" metal of sheet/tier");
    say(found, what);
    what.append(", stated");
    say(own, what);
    complaints_.add(what);
  }

  const WallLayout& layout_;
  const RunGeometry& run_;
  int index_;
  Dice& dice_;
  Complaints& complaints_;
  std::vector<Nm> edges_;
};

}  // namespace

void checkPoints(const CheckedWall& wall, Dice& dice, Complaints& complaints) {
  const bool outlined = std::all_of(wall.layout.pieces.begin(), wall.layout.pieces.end(),
                                    [](const Piece& piece) { return !piece.rings.empty(); });
  if (!outlined) return;
  for (std::size_t run = 0; run < wall.runs.size(); ++run) PointCheck(wall, run, dice, complaints).all();
}

}  // namespace ribwright::fuzz
