#include "tests/fuzz/layout_checker.h"

#include <algorithm>

namespace ribwright::fuzz {
namespace {

// The layout's line against the stated one: at both sides of every joint, at the corners, beyond them and between.
void compareLine(const char* what, const StatedLine& own, const HeightLine& found, Nm width, Complaints& complaints) {
  std::vector<Nm> places{-nm(Length::inches(2)),       -1, 0, 1, width / 3, width / 2, width - 1, width, width + 1,
                         width + nm(Length::inches(2))};
  for (const Nm joint : own.joints()) places.insert(places.end(), {joint - 1, joint, joint + 1});
  for (const Nm u : places) {
    const Nm left = own.heightAt(u, Side::Left), right = own.heightAt(u, Side::Right);
    const Nm foundLeft = nm(found.heightAt(Length::nanometres(u), Beside::Left));
    const Nm foundRight = nm(found.heightAt(Length::nanometres(u), Beside::Right));
    complaints.check(left == foundLeft && right == foundRight, std::string(what) + " at u " + text(u) + " is " +
                                                                   text(foundLeft) + "/" + text(foundRight) +
                                                                   ", stated " + text(left) + "/" + text(right));
    const int side = own.segmentAt(u, Side::Right).sideOf(u, right);
    // heightAt itself: no other whole nanometre is nearer to the true line.
    const Segment& segment = own.segmentAt(u, Side::Right);
    complaints.check(side == 0 || segment.sideOf(u, right - side) != side,
                     std::string(what) + " is rounded off its line");
  }
}

void compareCut(const StatedCut& own, const CutRegion& found, Complaints& complaints) {
  const std::string name = "cut region " + own.id;
  complaints.check(found.reachesFloor == own.reachesFloor, name + " differs in reaching the floor");
  complaints.check(nm(found.left) == own.left && nm(found.right) == own.right,
                   name + " is from u " + text(nm(found.left)) + " to " + text(nm(found.right)) + ", stated " +
                       text(own.left) + " to " + text(own.right));
  if (!own.straight) return;  // proved as a 24-gon about its circle
  complaints.check(nm(found.top) == own.high(), name + " has its top at " + text(nm(found.top)));
  complaints.check(own.reachesFloor || nm(found.bottom) == own.low(),
                   name + " has its bottom at " + text(nm(found.bottom)));
}

}  // namespace

CheckedWall readWall(const Job& job, const Wall& wall, const WallLayout& layout, Complaints& complaints) {
  CheckedWall checked{job, wall, layout, statedFace(job, wall), {}, {}, {}};
  checked.hand = statedHand(job, wall, checked.face);
  checked.cuts = statedCuts(job, wall, checked.face, layout.cuts, complaints);
  return checked;
}

void checkStatement(const CheckedWall& wall, Complaints& complaints) {
  const WallLayout& layout = wall.layout;
  complaints.check(layout.letter == wall.wall.letter && layout.face.letter == wall.wall.letter,
                   "another wall's letter");
  complaints.check(nm(layout.face.width) == wall.face.width,
                   "width " + text(nm(layout.face.width)) + ", stated " + text(wall.face.width));
  complaints.check(layout.face.line == wall.face.line, "another place in the plan");
  const Nm ridge = layout.face.ridge ? nm(*layout.face.ridge) : -1;
  complaints.check(ridge == wall.face.ridge.value_or(-1),
                   "ridge at " + text(ridge) + ", stated " + text(wall.face.ridge.value_or(-1)));
  compareLine("steel", wall.face.steel, layout.face.steel, wall.face.width, complaints);
  compareLine("top", wall.face.top, layout.face.top, wall.face.width, complaints);
  compareLine("concrete", wall.face.concrete, layout.face.concrete, wall.face.width, complaints);
  compareLine("bottom", wall.face.bottom, layout.face.bottom, wall.face.width, complaints);
  complaints.check(layout.sheeted == (wall.wall.cladding == Cladding::Sheeted), "sheeted or not");
  if (!layout.sheeted) {
    complaints.check(layout.runs.empty() && layout.pieces.empty(), "sheets on a wall that is not to be sheeted");
    return;
  }
  if (wall.hand.certain) {
    complaints.check(layout.direction.hand == wall.hand.hand, "hangs the other way");
    complaints.check(layout.direction.reason == wall.hand.reason, "hangs for another reason");
    complaints.check(layout.direction.againstRule == wall.hand.againstRule, "against the rule or not");
  }
  if (!complaints.check(layout.cuts.size() == wall.cuts.size(), text(static_cast<Nm>(layout.cuts.size())) +
                                                                    " cut regions, stated " +
                                                                    text(static_cast<Nm>(wall.cuts.size())))) {
    return;
  }
  for (const StatedCut& own : wall.cuts) {
    const auto found = std::find_if(layout.cuts.begin(), layout.cuts.end(), [&](const CutRegion& region) {
      return region.penetration == own.penetration && region.id == own.id;
    });
    if (complaints.check(found != layout.cuts.end(), "no cut region for " + own.id))
      compareCut(own, *found, complaints);
  }
}

Complaints checkLayout(const Job& job, const Plan& plan, Dice& dice) {
  Complaints complaints;
  complaints.at("plan");
  if (!complaints.check(plan.walls.size() == job.walls.size(), "not one layout a wall")) return complaints;
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    complaints.at("wall " + job.walls[i].letter);
    CheckedWall wall = readWall(job, job.walls[i], plan.walls[i]->layout, complaints);
    checkStatement(wall, complaints);
    if (!wall.layout.sheeted) continue;
    checkModules(wall, complaints);
    for (std::size_t run = 0; run < wall.runs.size(); ++run) checkSlabs(wall, run, complaints);
    if (!wall.runs.empty()) checkPieces(wall, complaints);
    checkMarks(wall, complaints);
    checkEndLaps(wall, complaints);
    checkRings(wall, complaints);
    if (!wall.runs.empty()) checkPoints(wall, dice, complaints);
  }
  complaints.at("order");
  checkOrder(job, plan, complaints);
  return complaints;
}

}  // namespace ribwright::fuzz
