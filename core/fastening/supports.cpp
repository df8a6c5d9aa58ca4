#include "core/fastening/supports.h"

#include <algorithm>

#include "core/fastening/girt_rows.h"
#include "core/job/by_id.h"
#include "core/layout/girt_row.h"

namespace ribwright {
namespace {

// A straight part of a line of heights.
struct LinePart {
  Length from, to;
  bool level = true;
  Length z;  // where it is level
};

std::vector<LinePart> partsOf(const HeightLine& line, Length width) {
  std::vector<Length> cuts = {Length(), width};
  for (const FaceVertex& vertex : line.vertices()) {
    if (vertex.u > Length() && vertex.u < width) cuts.push_back(vertex.u);
  }
  std::sort(cuts.begin(), cuts.end());
  std::vector<LinePart> parts;
  for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
    if (cuts[i] == cuts[i + 1]) continue;
    const Length z = line.heightAt(cuts[i], Beside::Right);
    parts.push_back({cuts[i], cuts[i + 1], z == line.heightAt(cuts[i + 1], Beside::Left), z});
  }
  return parts;
}

SupportRow baseRow(const Wall& wall, const WallFace& face) {
  SupportRow row;
  row.kind = SupportKind::Base;
  const Length onWall = wall.base.form == Base::Form::OnWall ? wall.base.shelf : Length();
  for (const LinePart& part : partsOf(face.concrete, face.width)) {
    Stretch stretch;
    stretch.from = part.from;
    stretch.to = part.to;
    const Length foot = part.z + onWall;
    stretch.low = foot + wall.baseAngle.bend;
    stretch.high = foot + wall.baseAngle.face;
    stretch.row = foot + wall.baseAngle.row;
    row.stretches.push_back(stretch);
  }
  return row;
}

SupportRow topRow(const EdgeSupport& support, SupportKind kind, const WallFace& face) {
  SupportRow row;
  row.kind = kind;
  row.alongTop = true;
  for (const LinePart& part : partsOf(face.steel, face.width)) {
    if (part.level != (kind == SupportKind::Eave)) continue;
    Stretch stretch;
    stretch.from = part.from;
    stretch.to = part.to;
    stretch.low = -support.face;
    stretch.high = -support.bend;
    stretch.row = -support.row;
    row.stretches.push_back(stretch);
  }
  return row;
}

// A flange of an opening's frame: its width, and what is lost at its heel and at its free edge.
struct FrameFlange {
  Length width, heel, edge;
};

FrameFlange flangeOf(const FrameSteel& frame, const std::vector<Member>& members) {
  const Member* member = byId(members, frame.member);
  if (!member) return {frame.face, frame.bend, Length()};
  const FlangeBends lost = bendsOf(*member);
  return {member->flange, lost.heel, lost.edge};
}

SupportRow frameRow(const CutRegion& cut, const FrameFlange& flange, SupportKind kind) {
  SupportRow row;
  row.kind = kind;
  row.id = cut.id;
  Stretch stretch;
  stretch.from = *cut.steelLeft;
  stretch.to = *cut.steelRight;
  stretch.endsAtFrom = stretch.endsAtTo = true;
  stretch.name = cut.id;
  const bool head = kind == SupportKind::Head;
  stretch.low = head ? *cut.steelTop + flange.heel : *cut.steelBottom - flange.width + flange.edge;
  stretch.high = head ? *cut.steelTop + flange.width - flange.edge : *cut.steelBottom - flange.heel;
  stretch.row = stretch.low + half(stretch.high - stretch.low);
  row.stretches.push_back(stretch);
  return row;
}

JambFlange jambOf(const CutRegion& cut, const FrameFlange& flange, bool left, const HeightLine& concrete) {
  JambFlange jamb;
  jamb.opening = cut.id;
  jamb.left = left;
  jamb.edge = left ? *cut.steelLeft : *cut.steelRight;
  jamb.from = left ? jamb.edge - flange.width : jamb.edge;
  jamb.to = left ? jamb.edge : jamb.edge + flange.width;
  jamb.low = jamb.from + (left ? flange.edge : flange.heel);
  jamb.high = jamb.to - (left ? flange.heel : flange.edge);
  const Length floor =
      std::min(concrete.heightAt(jamb.edge, Beside::Left), concrete.heightAt(jamb.edge, Beside::Right));
  jamb.foot = cut.reachesFloor ? floor : *cut.steelBottom;
  jamb.head = *cut.steelTop;
  return jamb;
}

InTheWay inTheWayOf(const JambFlange& jamb, const CutRegion& cut) {
  InTheWay thing;
  thing.from = jamb.from;
  thing.to = jamb.to;
  thing.isFlange = true;
  thing.flange.steel = jamb.left ? Stretch::Steel::LeftJamb : Stretch::Steel::RightJamb;
  thing.flange.name = jamb.opening;
  thing.flange.low = jamb.low;
  thing.flange.high = jamb.high;
  if (!cut.reachesFloor) thing.above = cut.steelBottom;
  thing.below = cut.steelTop;
  return thing;
}

InTheWay spaceBetween(const CutRegion& cut) {
  InTheWay thing;
  thing.from = *cut.steelLeft;
  thing.to = *cut.steelRight;
  if (!cut.reachesFloor) thing.above = cut.steelBottom;
  thing.below = cut.steelTop;
  return thing;
}

// With flush girts: they stop at each column's outer flange.
std::vector<InTheWay> columnsInTheWay(const Wall& wall) {
  std::vector<InTheWay> things;
  if (wall.girtSetting != GirtSetting::Flush || wall.columns.flange <= Length()) return things;
  const int columns = static_cast<int>(wall.columns.bays.size()) + 1;
  for (int n = 1; n <= columns; ++n) {
    const Length centre = columnAt(wall.columns, n).value();
    InTheWay thing;
    thing.from = thing.flange.low = centre - half(wall.columns.flange);
    thing.to = thing.flange.high = centre + half(wall.columns.flange);
    thing.isFlange = true;
    thing.flange.steel = Stretch::Steel::Column;
    thing.flange.name = std::to_string(n);
    things.push_back(std::move(thing));
  }
  return things;
}

void append(WallSupports& supports, SupportRow row) {
  if (!row.stretches.empty()) supports.rows.push_back(std::move(row));
}

const Opening& openingOf(const Wall& wall, const CutRegion& cut) { return *byId(wall.openings, cut.id); }

}  // namespace

WallSupports supportsOf(const Job& job, const Wall& wall, const WallLayout& layout) {
  WallSupports supports;
  append(supports, baseRow(wall, layout.face));
  append(supports, topRow(wall.eavePurlin, SupportKind::Eave, layout.face));
  append(supports, topRow(wall.rakeAngle, SupportKind::Rake, layout.face));
  std::vector<InTheWay> inTheWay = columnsInTheWay(wall);
  std::vector<SupportRow> frames;
  for (const CutRegion& cut : layout.cuts) {
    if (cut.penetration) continue;
    const FrameFlange flange = flangeOf(openingOf(wall, cut).frame, job.members);
    frames.push_back(frameRow(cut, flange, SupportKind::Head));
    if (!cut.reachesFloor) frames.push_back(frameRow(cut, flange, SupportKind::Sill));
    for (const bool left : {true, false}) {
      supports.jambs.push_back(jambOf(cut, flange, left, layout.face.concrete));
      inTheWay.push_back(inTheWayOf(supports.jambs.back(), cut));
    }
    inTheWay.push_back(spaceBetween(cut));
  }
  for (SupportRow& row : girtRows(wall, job.members, layout.face.width, inTheWay)) append(supports, std::move(row));
  for (SupportRow& row : frames) append(supports, std::move(row));
  return supports;
}

}  // namespace ribwright
