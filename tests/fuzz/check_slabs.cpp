// The face of a run cut into upright slabs at every break, each slab into parts at every line that crosses it. In each
// part the sheets that the trade's rules want are held against the cells that the layout gives, and the areas are
// summed exactly.
#include <algorithm>
#include <map>

#include "tests/fuzz/layout_checker.h"
#include "tests/fuzz/slab_parts.h"

namespace ribwright::fuzz {
namespace {

// A cell of the layout in its slab.
struct FoundCell {
  std::size_t piece = 0;
  std::size_t sheet = 0;
  int tier = 0;
  SlabPart part;
};

struct Account {
  Int128 face = 0, cut = 0, net = 0, laps = 0, pieces = 0, uncovered = 0;
};

class SlabCheck {
 public:
  SlabCheck(const CheckedWall& wall, std::size_t run, Complaints& complaints)
      : layout_(wall.layout), run_(wall.runs[run]), index_(static_cast<int>(run)), complaints_(complaints) {}

  void all() {
    collectBreaks();
    collectCells();
    sheetAdds_.assign(run_.sheets.size(), false);
    pieceAdds_.assign(layout_.pieces.size(), false);
    for (std::size_t i = 0; i + 1 < breaks_.size(); ++i) one({breaks_[i], breaks_[i + 1]}, cells_[i]);
    compareAccount();
    checkNothingIdle();
    checkLeftOut();
  }

 private:
  void collectBreaks() {
    std::vector<Nm> found;
    for (const Piece& piece : layout_.pieces) {
      if (piece.run != index_) continue;
      for (const Cell& cell : piece.cells) found.insert(found.end(), {nm(cell.left), nm(cell.right)});
    }
    breaks_ = breaksOf(run_, found);
    cells_.resize(breaks_.size());
  }

  void collectCells() {
    for (std::size_t i = 0; i < layout_.pieces.size(); ++i) {
      if (layout_.pieces[i].run != index_) continue;
      for (const Cell& cell : layout_.pieces[i].cells) collect(cell, i);
    }
  }

  void collect(const Cell& cell, std::size_t index) {
    const Piece& piece = layout_.pieces[index];
    const auto at = std::lower_bound(breaks_.begin(), breaks_.end(), nm(cell.left));
    const auto slab = static_cast<std::size_t>(at - breaks_.begin());
    const Nm end = slab + 1 < breaks_.size() ? breaks_[slab + 1] : nm(cell.left);
    if (!complaints_.check(nm(cell.right) == end, piece.mark + ": cell from u " + text(nm(cell.left)) + " to " +
                                                      text(nm(cell.right)) + " passes a break at " + text(end))) {
      return;
    }
    const SlabPart part{{nm(cell.bottomLeft), nm(cell.bottomRight)}, {nm(cell.topLeft), nm(cell.topRight)}};
    complaints_.check(part.low.left <= part.high.left && part.low.right <= part.high.right && cell.area() > Area(),
                      piece.mark + ": cell without an inside at u " + text(nm(cell.left)));
    cells_[slab].push_back({index, static_cast<std::size_t>(piece.module), piece.tier, part});
  }

  void one(const Slab& slab, const std::vector<FoundCell>& cells) {
    if (slab.left < run_.left || slab.right > run_.right) {
      complaints_.check(cells.empty(), "metal outside what is sheeted, at u " + text(slab.left));
      return;
    }
    std::vector<Heights> edges;
    for (const FoundCell& cell : cells) {
      edges.insert(edges.end(), {cell.part.low, cell.part.high});
      account_.pieces += cell.part.area(slab);
    }
    const SlabParts parts(run_, slab, edges);
    for (const Heights& edge : edges) {
      complaints_.check(std::find(parts.lines().begin(), parts.lines().end(), edge) != parts.lines().end(),
                        "a cell's edge lies on no line of the wall: u " + text(slab.left) + " to " + text(slab.right) +
                            ", z " + text(edge.left) + " to " + text(edge.right));
    }
    for (const SlabPart& part : parts.parts()) judge(slab, parts, part, cells);
  }

  void judge(const Slab& slab, const SlabParts& parts, const SlabPart& part, const std::vector<FoundCell>& cells) {
    const Int128 area = part.area(slab);
    account_.face += area;
    const bool cut = parts.isCut(part);
    (cut ? account_.cut : account_.net) += area;
    std::map<std::pair<std::size_t, int>, int> surplus;
    int covers = 0;
    std::size_t earliest = run_.sheets.size(), only = 0;
    for (const FoundCell& cell : cells) {
      if (!cell.part.holds(part)) continue;
      ++surplus[{cell.sheet, cell.tier}];
      ++covers;
      earliest = std::min(earliest, cell.sheet);
      only = cell.piece;
    }
    if (covers > 0) sheetAdds_[earliest] = true;
    if (covers == 1) pieceAdds_[only] = true;
    for (std::size_t sheet = 0; sheet < run_.sheets.size() && !cut; ++sheet) {
      if (!parts.inRange(sheet)) continue;
      for (const int tier : parts.tiers(sheet, part)) --surplus[{sheet, tier}];
    }
    for (const auto& [who, more] : surplus) compare(slab, part, who, more, covers);
    if (cut) return;
    if (covers == 0) account_.uncovered += area;
    if (covers > 1) account_.laps += area * (covers - 1);
  }

  void compare(const Slab& slab, const SlabPart& part, std::pair<std::size_t, int> who, int more, int covers) {
    if (more < 0 && covers > 0) leftOut_.emplace_back(who, cellOf(slab, part));
    complaints_.check(more == 0 || (more < 0 && covers > 0),
                      name(who) + (more > 0 ? " has metal too much" : " lacks metal") + " from u " + text(slab.left) +
                          " to " + text(slab.right) + ", z " + text(part.low.left) + "/" + text(part.low.right) +
                          " to " + text(part.high.left) + "/" + text(part.high.right));
  }

  static std::string name(std::pair<std::size_t, int> who) {
    return "sheet " + std::to_string(who.first) + " tier " + std::to_string(who.second);
  }

  // Where all of an upper tier is left out, nothing shows that the sheet laps there.
  bool mayBeOfUpperTier(std::pair<std::size_t, int> who, const Cell& cell) const {
    const bool tiered = layout_.runs[static_cast<std::size_t>(index_)].modules[who.first].tiered;
    const auto tier = static_cast<std::size_t>(who.second);
    if (!tiered || tier >= run_.lapEnds.size()) return false;
    return nm(std::min(cell.bottomLeft, cell.bottomRight)) >= run_.lapEnds[tier] + run_.lap;
  }

  // A piece that others cover wholly need not be hung; then all of it is left out.
  void checkLeftOut() {
    for (const auto& [who, cell] : leftOut_) {
      if (mayBeOfUpperTier(who, cell)) continue;
      for (const Piece& piece : layout_.pieces) {
        const bool same = piece.run == index_ && static_cast<std::size_t>(piece.module) == who.first;
        if (!same || piece.tier != who.second) continue;
        const bool cutFrom = std::any_of(piece.cells.begin(), piece.cells.end(),
                                         [&, &other = cell](const Cell& own) { return adjoin(own, other); });
        complaints_.check(!cutFrom, name(who) + " lacks covered metal from u " + text(nm(cell.left)) + " to " +
                                        text(nm(cell.right)) + ", z " + text(nm(cell.bottomLeft)));
      }
    }
  }

  bool hangs(std::size_t sheet) const { return layout_.runs[static_cast<std::size_t>(index_)].modules[sheet].hung; }

  // The trade's rules: a module whose metal adds no uncovered face is not hung; one that hangs already is a fact.
  void checkNothingIdle() {
    for (std::size_t i = 0; i < sheetAdds_.size(); ++i) {
      complaints_.check(sheetAdds_[i] || hangs(i), "sheet " + std::to_string(i) + " of the run adds no uncovered face");
    }
    for (std::size_t i = 0; i < pieceAdds_.size(); ++i) {
      const Piece& piece = layout_.pieces[i];
      const bool idle = piece.run == index_ && !pieceAdds_[i] && !hangs(static_cast<std::size_t>(piece.module));
      complaints_.check(!idle, piece.mark + " adds no uncovered face");
    }
  }

  void compareAccount() {
    const SheetRun& run = layout_.runs[static_cast<std::size_t>(index_)];
    const auto same = [&](const char* what, Area given, Int128 own, Int128 allowed) {
      const Int128 difference = given.halfSquareNanometres() - own;
      complaints_.check(difference <= allowed && -difference <= allowed,
                        std::string(what) + " of run " + std::to_string(index_) + " is off by " +
                            std::to_string(static_cast<double>(difference) / 2) + " nm2");
    };
    // A break more or less inside an opening, where no metal is, rounds the top by a nanometre: face and cut alike.
    const Int128 more = run.face.halfSquareNanometres() - account_.face;
    same("face", run.face, account_.face, run_.right - run_.left);
    same("cut", run.cut, account_.cut + more, 0);
    same("net", run.net, account_.net, 0);
    same("laps", run.laps, account_.laps, 0);
    same("pieces", run.pieces, account_.pieces, 0);
    same("uncovered", run.uncovered, account_.uncovered, 0);
    complaints_.check(run.face == run.cut + run.net, "face = net + cut does not hold");
    complaints_.check(run.pieces == run.net + run.laps - run.uncovered, "pieces = net + laps does not hold");
    bool hung = false;
    for (const Module& module : run.modules) hung = hung || module.hung;
    complaints_.check(hung || run.uncovered == Area(), "face left uncovered though no sheet hangs yet");
  }

  const WallLayout& layout_;
  const RunGeometry& run_;
  int index_;
  Complaints& complaints_;
  std::vector<Nm> breaks_;
  std::vector<std::vector<FoundCell>> cells_;
  std::vector<bool> sheetAdds_, pieceAdds_;
  std::vector<std::pair<std::pair<std::size_t, int>, Cell>> leftOut_;
  Account account_;
};

}  // namespace

void checkSlabs(const CheckedWall& wall, std::size_t run, Complaints& complaints) {
  SlabCheck(wall, run, complaints).all();
}

}  // namespace ribwright::fuzz
