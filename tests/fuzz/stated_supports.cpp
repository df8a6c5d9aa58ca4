#include "tests/fuzz/stated_supports.h"

#include <algorithm>

namespace ribwright::fuzz {
namespace {

Stretch level(Nm from, Nm to, Nm low, Nm high, Nm row) {
  Stretch stretch;
  stretch.from = at(from);
  stretch.to = at(to);
  stretch.low = at(low);
  stretch.high = at(high);
  stretch.row = at(row);
  return stretch;
}

// The line's straight parts from 0 to the wall's width.
std::vector<std::pair<Segment, Span>> straightParts(const StatedLine& line, Nm width) {
  std::vector<std::pair<Segment, Span>> parts;
  for (std::size_t i = 0; i < line.segments.size(); ++i) {
    const Segment& segment = line.segments[i];
    const Span span{i == 0 ? 0 : std::max<Nm>(0, segment.u0),
                    i + 1 == line.segments.size() ? width : std::min(width, segment.u1)};
    if (span.from < span.to) parts.push_back({segment, span});
  }
  return parts;
}

void addBase(const ScrewedWall& wall, std::vector<SupportPart>& parts) {
  const EdgeSupport& angle = wall.wall.baseAngle;
  const Nm shelf = wall.wall.base.form == Base::Form::OnWall ? nm(wall.wall.base.shelf) : 0;
  for (const auto& [segment, span] : straightParts(wall.face.concrete, wall.face.width)) {
    const Nm foot = segment.z0 + shelf;
    parts.push_back({SupportKind::Base, "",
                     level(span.from, span.to, foot + nm(angle.bend), foot + nm(angle.face), foot + nm(angle.row)), 0});
  }
}

void addTop(const ScrewedWall& wall, std::vector<SupportPart>& parts) {
  for (const auto& [segment, span] : straightParts(wall.face.steel, wall.face.width)) {
    const EdgeSupport& edge = segment.level() ? wall.wall.eavePurlin : wall.wall.rakeAngle;
    parts.push_back({segment.level() ? SupportKind::Eave : SupportKind::Rake, "",
                     level(span.from, span.to, -nm(edge.face), -nm(edge.bend), -nm(edge.row)),
                     segment.level() ? segment.z0 : static_cast<Nm>(parts.size())});
  }
}

void addHeadAndSill(const OpeningSteel& steel, std::vector<SupportPart>& parts) {
  const auto add = [&](SupportKind kind, Nm low, Nm high) {
    Stretch stretch = level(steel.left, steel.right, low, high, low + halved(high - low));
    stretch.endsAtFrom = stretch.endsAtTo = true;
    stretch.name = steel.opening->id;
    parts.push_back({kind, steel.opening->id, stretch, 0});
  };
  const FrameFace& frame = steel.frame;
  add(SupportKind::Head, steel.head + frame.heel, steel.head + frame.width - frame.edge);
  if (!steel.floor) add(SupportKind::Sill, steel.sill - frame.width + frame.edge, steel.sill - frame.heel);
}

}  // namespace

std::vector<OpeningSteel> openingSteels(const ScrewedWall& wall) {
  std::vector<OpeningSteel> steels;
  for (const Opening& opening : wall.wall.openings) {
    OpeningSteel steel;
    steel.opening = &opening;
    steel.left = statedJamb(wall.wall, wall.face.width, opening);
    steel.right = steel.left + nm(opening.width);
    steel.sill = nm(opening.sill);
    steel.head = steel.sill + nm(opening.height);
    for (const CutRegion& cut : wall.layout.cuts) {
      if (!cut.penetration && cut.id == opening.id) steel.floor = cut.reachesFloor;
    }
    steel.frame = statedFrame(wall.job, opening.frame);
    steels.push_back(steel);
  }
  return steels;
}

std::vector<SupportPart> statedSupports(const ScrewedWall& wall) {
  std::vector<SupportPart> parts;
  addBase(wall, parts);
  addTop(wall, parts);
  addGirtParts(wall, parts);
  for (const OpeningSteel& steel : openingSteels(wall)) addHeadAndSill(steel, parts);
  return parts;
}

std::vector<JambFlange> statedJambs(const ScrewedWall& wall) {
  std::vector<JambFlange> jambs;
  for (const OpeningSteel& steel : openingSteels(wall)) {
    const FrameFace& frame = steel.frame;
    for (const bool left : {true, false}) {
      const Nm edge = left ? steel.left : steel.right;
      JambFlange jamb;
      jamb.opening = steel.opening->id;
      jamb.left = left;
      jamb.edge = at(edge);
      jamb.from = at(left ? edge - frame.width : edge);
      jamb.to = at(left ? edge : edge + frame.width);
      jamb.low = at(left ? edge - frame.width + frame.edge : edge + frame.heel);
      jamb.high = at(left ? edge - frame.heel : edge + frame.width - frame.edge);
      const StatedLine& concrete = wall.face.concrete;
      jamb.foot = at(steel.floor ? std::min(concrete.heightAt(edge, Side::Left), concrete.heightAt(edge, Side::Right))
                                 : steel.sill);
      jamb.head = at(steel.head);
      jambs.push_back(jamb);
    }
  }
  return jambs;
}

}  // namespace ribwright::fuzz
