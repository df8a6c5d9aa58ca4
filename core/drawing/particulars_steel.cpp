// Of girts, columns and screws.
#include <algorithm>

#include "core/drawing/girt_edge.h"
#include "core/drawing/particular_list.h"
#include "core/layout/girt_row.h"

namespace ribwright {

namespace {

// In HoleKind's order.
constexpr const char* kindIds[] = {"base", "eave", "rake", "girt", "end-lap", "head", "sill", "jamb", "stitch"};

bool isOnGirt(const ParticularList& list, const Hole& hole, std::size_t girt) {
  if (hole.kind != HoleKind::Girt && hole.kind != HoleKind::EndLap) return false;
  const SupportRow& row = list.plan.holes.supports.rows.at(static_cast<std::size_t>(hole.row));
  if (hole.stretch < 0 || static_cast<std::size_t>(hole.stretch) >= row.stretches.size()) return false;
  const auto& girts = row.stretches[static_cast<std::size_t>(hole.stretch)].girts;
  return std::find(girts.begin(), girts.end(), static_cast<std::int32_t>(girt)) != girts.end();
}

std::string marksOf(const ParticularList& list, const Hole& hole) {
  std::vector<std::string> marks;
  for (int sheet = 0; sheet < hole.sheets; ++sheet)
    marks.push_back(
        list.layout().pieces.at(static_cast<std::size_t>(hole.pieces.at(static_cast<std::size_t>(sheet)))).mark);
  return ParticularList::joined(marks);
}

void addScrewKind(ParticularList& list, const Hole& hole) {
  const Screw& screw = list.job.screws.at(static_cast<std::size_t>(hole.screw));
  list.add("part.screw", screw.id);
}

}  // namespace

std::string supportOf(const ParticularList& list, const Hole& hole) {
  const WallSupports& supports = list.plan.holes.supports;
  if (hole.kind == HoleKind::Stitch) return list.say("screws.row.stitch");
  const auto row = static_cast<std::size_t>(hole.row);
  if (hole.kind == HoleKind::Jamb) {
    const JambFlange& jamb = supports.jambs.at(row);
    return list.say(jamb.left ? "screws.row.left-jamb" : "screws.row.right-jamb", {{"id", jamb.opening}});
  }
  const std::string kind = kindIds[static_cast<std::size_t>(hole.kind)];
  return list.say("screws.row." + kind, {{"id", supports.rows.at(row).id}});
}

void addGirt(ParticularList& list, std::size_t index) {
  const Girt& girt = list.wall.girts.at(index);
  const ScrewFace face = girtFace(girt, list.job.members);
  list.add("part.height", list.say("part.girt.height",
                                   {{"height", list.text(girt.height)}, {"by", list.say(typedById(girt.typedBy))}}));
  list.add("part.flange", list.say(girt.flange == Girt::Flange::Up ? "part.flange.up" : "part.flange.down"));
  list.add("part.row", face.row);
  list.add("part.member", girt.member.empty() ? list.say("part.not-stated") : girt.member);
  if (face.high > face.low)
    list.add("part.screw-face",
             list.say("part.from-to", {{"from", list.text(face.low)}, {"to", list.text(face.high)}}));
  const auto [from, to] = girtReach(girt, list.layout().face.width);
  list.add("part.reach", list.say("part.from-to", {{"from", list.text(from)}, {"to", list.text(to)}}));
  if (girt.clipSlot) list.add("part.clip-slot", *girt.clipSlot);
  const auto& holes = list.plan.holes.holes;
  const auto screws =
      std::count_if(holes.begin(), holes.end(), [&](const Hole& hole) { return isOnGirt(list, hole, index); });
  list.addCount("part.screws", static_cast<std::size_t>(screws));
  addGirtSurvey(list, girt);
}

void addColumn(ParticularList& list, int number) {
  const ColumnGrid& grid = list.wall.columns;
  const auto u = columnAt(grid, number);
  if (!u) return;
  list.add("part.from-left", *u);
  list.add("part.from-right", list.layout().face.width - *u);
  const auto bay = static_cast<std::size_t>(number);
  if (number >= 2) list.add("part.bay-left", grid.bays.at(bay - 2));
  if (bay <= grid.bays.size()) list.add("part.bay-right", grid.bays.at(bay - 1));
  list.add("part.member", grid.member.empty() ? list.say("part.not-stated") : grid.member);
  if (grid.flange > Length()) list.add("part.flange-width", grid.flange);
  const bool flush = list.wall.girtSetting == GirtSetting::Flush;
  list.add("part.girts", list.say(flush ? "part.girts.flush" : "part.girts.bypass"));
}

void addScrew(ParticularList& list, const Hole& hole) {
  const Piece& owner = list.layout().pieces.at(static_cast<std::size_t>(hole.pieces.at(0)));
  list.add("part.into", supportOf(list, hole));
  list.add("part.x", alongSheet(list.layout(), hole, 0));
  list.add("part.s", hole.z - owner.bottom);
  list.add("part.z", hole.z);
  list.add("part.from-left", hole.u);
  addScrewKind(list, hole);
  list.add("part.through", marksOf(list, hole));
  list.add("part.drilled", list.say(hole.inPlace ? "part.drilled.in-place" : "part.drilled.stack"));
  list.add("part.zone", list.say(hole.corner ? "part.zone.corner" : "part.zone.field"));
  addScrewDrilling(list, hole);
}

}  // namespace ribwright
