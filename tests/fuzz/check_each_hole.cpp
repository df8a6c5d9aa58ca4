// Every hole by itself, and its neighbours on the same sheet.
#include <algorithm>
#include <cmath>
#include <map>

#include "tests/fuzz/exact_distance.h"
#include "tests/fuzz/hole_checker.h"
#include "tests/fuzz/stated_seats.h"

namespace ribwright::fuzz {
namespace {

class HoleCheck {
 public:
  HoleCheck(const ScrewedWall& wall, const Hole& hole, Complaints& complaints)
      : wall_(wall),
        hole_(hole),
        run_(wall.runs[static_cast<std::size_t>(hole.run)]),
        u_(nm(hole.u)),
        z_(nm(hole.z)),
        complaints_(complaints) {}

  void all() {
    checkMetal();
    checkSheets();
    checkSeat();
    checkSteel();
    checkCuts();
  }

 private:
  bool check(bool holds, const std::string& what) {
    return complaints_.check(holds, "hole of kind " + std::to_string(static_cast<int>(hole_.kind)) + " at u " +
                                        std::to_string(u_) + " z " + std::to_string(z_) + ": " + what);
  }

  void checkMetal() {
    const std::vector<int> through = run_.metal.through(u_, z_);
    std::vector<int> pieces(hole_.pieces.begin(), hole_.pieces.begin() + hole_.sheets);
    check(std::all_of(hole_.pieces.begin() + hole_.sheets, hole_.pieces.end(), [](int i) { return i == -1; }),
          "pieces beyond its sheets");
    check(pieces.size() > 1
              ? std::is_sorted(pieces.begin() + 1, pieces.end(),
                               [&](int a, int b) { return wall_.piece(a).hangOrder < wall_.piece(b).hangOrder; })
              : pieces.size() == 1,
          "twins out of order");
    std::sort(pieces.begin(), pieces.end(),
              [&](int a, int b) { return wall_.piece(a).hangOrder < wall_.piece(b).hangOrder; });
    check(pieces == through, "goes through other pieces than it says");
    check(!run_.metal.nearEdge(u_, z_, wall_.fromEdge(hole_.screw)), "nearer than 1.5 d to a metal edge");
  }

  void checkSheets() {
    int upper = 0;
    std::vector<int> modules;
    for (int i = 0; i < hole_.sheets; ++i) {
      const Piece& piece = pierced(i);
      if (piece.hangOrder > pierced(upper).hangOrder) upper = i;
      modules.push_back(piece.module);
    }
    check(hole_.upper == upper, "another sheet lies on top");
    std::sort(modules.begin(), modules.end());
    modules.erase(std::unique(modules.begin(), modules.end()), modules.end());
    check(hole_.throughLap == (modules.size() > 1), "through a side lap or not");
    check(hole_.kind != HoleKind::Stitch || modules.size() > 1, "a stitch screw through one sheet");
    const bool tiers = std::any_of(modules.begin(), modules.end(),
                                   [&](int m) { return run_.run->modules[static_cast<std::size_t>(m)].tiered; });
    check(!hole_.throughLap || tiers || modules.size() > 2 || hole_.sheets == 2, "not one twin");
    check(hole_.pieces[0] >= 0 && owns(pierced(0).module), "a sheet owns it that does not ask for it");
  }

  // The sheet whose pattern has this offset; or, where that one has no metal here, the last hung.
  bool owns(int module) const {
    if (hole_.kind == HoleKind::Jamb || hole_.kind == HoleKind::Stitch) return true;  // looked at place by place
    bool asksHere = false;
    for (const ScrewedModule& m : run_.modules) {
      if (!asks(m)) continue;
      if (m.index == module) return true;
      for (int i = 0; i < hole_.sheets; ++i) asksHere = asksHere || pierced(i).module == m.index;
    }
    return !asksHere && hole_.upper == 0;
  }

  bool asks(const ScrewedModule& module) const {
    const auto asked = run_.asked(supportKind(), module.corner);
    if (!asked || asked->screw != hole_.screw) return false;
    const Nm x = run_.along.t(u_) - module.line;
    const auto& offsets = asked->row->offsets;
    return x < nm(run_.profile->cover) &&
           std::find(offsets.begin(), offsets.end(), Length::nanometres(x)) != offsets.end();
  }

  SupportKind supportKind() const {
    if (hole_.kind == HoleKind::EndLap) return SupportKind::EndLap;
    if (hole_.kind == HoleKind::Jamb) return SupportKind::Jamb;
    return wall_.holes.supports.rows[static_cast<std::size_t>(hole_.row)].kind;
  }

  const Piece& pierced(int i) const { return wall_.piece(hole_.pieces[static_cast<std::size_t>(i)]); }

  void checkSeat() {
    const bool stitch = hole_.kind == HoleKind::Stitch;
    const Spans seats =
        stitch ? statedCrowns(*run_.profile) : statedSeats(*run_.profile, nm(wall_.screw(hole_.screw).washer));
    for (int i = 0; i < hole_.sheets; ++i) {
      const Nm x = run_.along.t(u_) - run_.modules[static_cast<std::size_t>(pierced(i).module)].line;
      check(holds(seats, x), "not on a flat of " + pierced(i).mark);
    }
  }

  void checkSteel() {
    if (hole_.kind == HoleKind::Stitch) {
      check(hole_.row == -1 && hole_.stretch == -1, "a stitch screw on steel");
    } else if (hole_.kind == HoleKind::Jamb) {
      checkJamb(wall_.holes.supports.jambs[static_cast<std::size_t>(hole_.row)]);
    } else {
      const SupportRow& row = wall_.holes.supports.rows[static_cast<std::size_t>(hole_.row)];
      checkStretch(row, row.stretches[static_cast<std::size_t>(hole_.stretch)]);
    }
  }

  void checkJamb(const JambFlange& jamb) {
    const Nm margin = wall_.margin(hole_.screw);
    check(nm(jamb.low) + margin <= u_ && u_ <= nm(jamb.high) - margin, "off the jamb's screw face");
    const bool tall = jamb.head - jamb.foot > Length::inches(4);
    const Length in = tall ? Length::inches(2) : Length();
    check(jamb.foot + in <= hole_.z && hole_.z <= jamb.head - in, "beyond the jamb");
  }

  void checkStretch(const SupportRow& row, const Stretch& stretch) {
    const Nm margin = wall_.margin(hole_.screw);
    const Nm from = nm(stretch.from) + (stretch.endsAtFrom ? margin : 0);
    const Nm to = nm(stretch.to) - (stretch.endsAtTo ? margin : 0);
    check(from <= u_ && u_ <= to, "off its steel");
    if (stretch.steel != Stretch::Steel::Own) {
      check(nm(stretch.low) + margin <= u_ && u_ <= nm(stretch.high) - margin, "off the flange's screw face");
    } else if (row.alongTop) {
      checkAlongTop(stretch, margin);
    } else if (stretch.known) {
      check(nm(stretch.low) + margin <= z_ && z_ <= nm(stretch.high) - margin, "off the screw face");
    }
  }

  // Square to the slope, from both edges of the face; the rounding of heights is some 2 nm.
  void checkAlongTop(const Stretch& stretch, Nm margin) {
    const Segment& steel = wall_.steelOver(stretch, u_);
    const long double run = static_cast<long double>(steel.u1 - steel.u0);
    const long double rise = static_cast<long double>(steel.z1 - steel.z0);
    const long double true_ =
        static_cast<long double>(z_ - steel.z0) - rise * static_cast<long double>(u_ - steel.u0) / run;
    const long double square = run / std::sqrt(run * run + rise * rise);
    const long double above = (true_ - static_cast<long double>(nm(stretch.low))) * square;
    const long double below = (static_cast<long double>(nm(stretch.high)) - true_) * square;
    const long double least = static_cast<long double>(margin) - 2;
    check(above >= least && below >= least, "off the screw face along the top");
  }

  void checkCuts() {
    for (const CutRegion& cut : wall_.layout.cuts) {
      if (cut.round || hole_.u < cut.left || hole_.u > cut.right) continue;
      check(hole_.z > cut.top || (!cut.reachesFloor && hole_.z < cut.bottom), "in the cut of " + cut.id);
    }
  }

  const ScrewedWall& wall_;
  const Hole& hole_;
  const ScrewedRun& run_;
  Nm u_, z_;
  Complaints& complaints_;
};

// No two holes of one sheet nearer than max(3 d, 1 in).
void checkNeighbours(const ScrewedWall& wall, Complaints& complaints) {
  std::map<int, std::vector<const Hole*>> bySheet;
  for (const Hole& hole : wall.holes.holes) {
    for (int i = 0; i < hole.sheets; ++i) bySheet[hole.pieces[static_cast<std::size_t>(i)]].push_back(&hole);
  }
  for (auto& [piece, holes] : bySheet) {
    std::sort(holes.begin(), holes.end(), [](const Hole* a, const Hole* b) { return a->z < b->z; });
    for (std::size_t i = 0; i < holes.size(); ++i) {
      for (std::size_t j = i + 1; j < holes.size() && holes[j]->z - holes[i]->z < Length::inches(2); ++j) {
        const Length d = std::max(wall.screw(holes[i]->screw).diameter, wall.screw(holes[j]->screw).diameter);
        const Nm limit = std::max(3 * nm(d), kInch);
        complaints.check(!nearerThan({holes[i]->u, holes[i]->z}, {holes[j]->u, holes[j]->z}, limit),
                         "two holes too near each other on " + wall.piece(piece).mark + " at u " +
                             std::to_string(nm(holes[i]->u)) + " z " + std::to_string(nm(holes[i]->z)));
      }
    }
  }
}

// By owning piece, then rising z, then along the hanging direction.
void checkSorted(const ScrewedWall& wall, Complaints& complaints) {
  const auto& holes = wall.holes.holes;
  for (std::size_t i = 1; i < holes.size(); ++i) {
    const Hole &a = holes[i - 1], &b = holes[i];
    const bool onward = wall.layout.direction.hand == Hand::LeftToRight;
    const bool along = onward ? a.u < b.u : a.u > b.u;
    const bool right = a.pieces[0] != b.pieces[0] ? a.pieces[0] < b.pieces[0] : a.z != b.z ? a.z < b.z : along;
    complaints.check(right, "holes out of order at u " + std::to_string(nm(b.u)) + " z " + std::to_string(nm(b.z)));
  }
}

bool inRange(const ScrewedWall& wall, const Hole& hole) {
  const auto& supports = wall.holes.supports;
  const bool run = hole.run >= 0 && hole.run < static_cast<int>(wall.runs.size());
  const bool screw = hole.screw >= 0 && hole.screw < static_cast<int>(wall.job.screws.size());
  if (!run || !screw || hole.sheets < 1 || hole.sheets > Hole::kMostSheets) return false;
  for (int i = 0; i < hole.sheets; ++i) {
    const int piece = hole.pieces[static_cast<std::size_t>(i)];
    if (piece < 0 || piece >= static_cast<int>(wall.layout.pieces.size())) return false;
    if (wall.piece(piece).run != hole.run) return false;
  }
  if (hole.kind == HoleKind::Stitch) return true;
  const auto row = static_cast<std::size_t>(hole.row);
  if (hole.kind == HoleKind::Jamb) return hole.row >= 0 && row < supports.jambs.size();
  return hole.row >= 0 && row < supports.rows.size() && hole.stretch >= 0 &&
         static_cast<std::size_t>(hole.stretch) < supports.rows[row].stretches.size();
}

}  // namespace

void checkEachHole(const ScrewedWall& wall, Complaints& complaints) {
  for (const Hole& hole : wall.holes.holes) {
    if (!complaints.check(inRange(wall, hole), "a hole of nothing there is")) return;
    HoleCheck(wall, hole, complaints).all();
  }
  checkNeighbours(wall, complaints);
  checkSorted(wall, complaints);
}

}  // namespace ribwright::fuzz
