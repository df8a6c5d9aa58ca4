#include "core/fastening/run_screws.h"

#include <algorithm>

namespace ribwright {

RunScrews::RunScrews(const Job& job, const Wall& wall, const ChosenPattern& chosen, RunSheets sheets, WallHoles& holes)
    : job_(job), wall_(wall), chosen_(chosen), sheets_(std::move(sheets)), holes_(holes), taken_(sheets_.size()) {}

void RunScrews::lookAt(const Place& place, Metal& metal) {
  metal.through.clear();
  metal.nearEdge = false;
  const Length r = fromEdge(screwOf(*place.line));
  const Length u = sheets_.frame().toFace(place.t);
  const auto [first, last] = sheets_.beside(place.module, r);
  for (std::size_t m = first; m <= last; ++m) {
    for (const SheetMetal& piece : sheets_[m].pieces) {
      const Standing standing = standingOf(piece, u, place.z, r);
      if (standing.inside) metal.through.push_back(&piece);
      metal.nearEdge = metal.nearEdge || standing.nearEdge;
    }
  }
  if (metal.through.size() > 1) putOwnerFirst(place.module, metal);
}

// First the piece that owns the screw: of the module that asks (of its tiers the upper one), else the one hung last.
// Then the others in hanging order.
void RunScrews::putOwnerFirst(std::size_t module, Metal& metal) const {
  auto& through = metal.through;
  std::sort(through.begin(), through.end(),
            [](const SheetMetal* a, const SheetMetal* b) { return a->hangOrder < b->hangOrder; });
  auto owner = through.end();
  for (auto piece = through.begin(); piece != through.end(); ++piece) {
    if ((*piece)->module != static_cast<std::int32_t>(module)) continue;
    if (owner == through.end() || (*piece)->shape->tier >= (*owner)->shape->tier) owner = piece;
  }
  if (owner == through.end()) --owner;
  std::rotate(through.begin(), owner, owner + 1);
}

bool RunScrews::isSeated(const Place& place, const Metal& metal) {
  const bool stitch = place.kind == HoleKind::Stitch;
  const auto& seats = stitch ? sheets_.crowns() : sheets_.seats(screwOf(*place.line).washer);
  return std::all_of(metal.through.begin(), metal.through.end(), [&](const SheetMetal* piece) {
    return isOnSeat(seats, place.t - sheets_[static_cast<std::size_t>(piece->module)].line);
  });
}

Hole RunScrews::holeAt(const Place& place, const Metal& metal) const {
  Hole hole;
  hole.kind = place.kind;
  hole.row = place.row;
  hole.stretch = place.stretch;
  hole.screw = place.line->screw;
  hole.run = sheets_.index();
  hole.u = sheets_.frame().toFace(place.t);
  hole.z = place.z;
  hole.sheets = static_cast<std::int8_t>(metal.through.size());
  for (std::size_t i = 0; i < metal.through.size(); ++i) {
    hole.pieces[i] = metal.through[i]->piece;
    if (metal.through[i]->hangOrder > metal.through[static_cast<std::size_t>(hole.upper)]->hangOrder)
      hole.upper = static_cast<std::int8_t>(i);
    hole.throughLap = hole.throughLap || metal.through[i]->module != metal.through[0]->module;
  }
  hole.inPlace = place.line->inPlace;
  hole.corner = sheets_[place.module].corner;
  return hole;
}

void RunScrews::refuse(Refusal::Why why, const Place& place, std::int32_t piece) {
  Refusal refusal;
  refusal.why = why;
  refusal.kind = place.kind;
  refusal.row = place.row;
  refusal.stretch = place.stretch;
  refusal.screw = place.line->screw;
  refusal.run = sheets_.index();
  refusal.piece = piece;
  refusal.u = sheets_.frame().toFace(place.t);
  refusal.z = place.z;
  refusal.x = place.t - sheets_[place.module].line;
  holes_.refusals.push_back(refusal);
}

void RunScrews::noteUnstated(HoleKind kind) {
  auto& unstated = holes_.unstated;
  if (std::find(unstated.begin(), unstated.end(), kind) == unstated.end()) unstated.push_back(kind);
}

bool RunScrews::hasMetal(std::size_t module, Length t, Length z) const {
  const auto& pieces = sheets_[module].pieces;
  const Length u = sheets_.frame().toFace(t);
  return std::any_of(pieces.begin(), pieces.end(), [&](const SheetMetal& metal) { return metal.contains(u, z); });
}

Came RunScrews::place(const Place& place) {
  lookAt(place, metal_);
  const auto refused = [&](Refusal::Why why) {
    refuse(why, place, metal_.through.front()->piece);
    return Came::Refused;
  };
  if (metal_.through.empty()) return Came::NoMetal;
  const bool stitch = place.kind == HoleKind::Stitch;
  if (metal_.nearEdge) return refused(Refusal::Why::NearEdge);
  if (metal_.through.size() > Hole::kMostSheets) return refused(Refusal::Why::TooManySheets);
  const Hole hole = holeAt(place, metal_);
  if (stitch && !hole.throughLap) return Came::NoMetal;
  if (!isSeated(place, metal_)) return refused(stitch ? Refusal::Why::NoCrown : Refusal::Why::OffFlat);
  if (!place.onFace) return refused(Refusal::Why::OffScrewFace);
  modules_.clear();
  for (const SheetMetal* piece : metal_.through) {
    if (std::find(modules_.begin(), modules_.end(), piece->module) == modules_.end()) modules_.push_back(piece->module);
  }
  const TakenHoles::Near near = taken_.nearTo(hole, holes_.holes, job_.screws, modules_);
  if (near == TakenHoles::Near::SameRow) return refused(Refusal::Why::NearHole);
  if (near == TakenHoles::Near::Other) return Came::Merged;
  taken_.take(hole, static_cast<std::int32_t>(holes_.holes.size()), modules_);
  holes_.holes.push_back(hole);
  return Came::Taken;
}

}  // namespace ribwright
