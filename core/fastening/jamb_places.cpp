// Rows of screws up the jambs of openings, on the nearest flat seat over the jamb's flange.
#include <algorithm>

#include "core/fastening/run_screws.h"
#include "core/fastening/spacing_limits.h"

namespace ribwright {
namespace {

const Length fromHeadAndSill = Length::inches(2);  // common practice

// In hanging coordinates.
struct JambZone {
  Length low, high, middle;  // where the screw face takes a screw, and its middle
  Length edge;               // the cut edge of the sheets
  bool sheetsBelow = true;   // the sheets lie at smaller t than the edge
};

struct Seat {
  std::size_t module = 0;
  Length t;
};

// Takes what lies nearer than r to `edge` out of the flats; a flat may fall in two.
void cutOut(std::vector<Flat>& flats, Length edge, Length r) {
  std::vector<Flat> left;
  for (const Flat& flat : flats) {
    if (flat.from <= edge - r) left.push_back({flat.from, std::min(flat.to, edge - r)});
    if (flat.to >= edge + r) left.push_back({std::max(flat.from, edge + r), flat.to});
  }
  flats = std::move(left);
}

// Where they lie in the neighbour's metal only its own seats serve too.
std::vector<Flat> onNeighbour(const std::vector<Flat>& flats, const StandingSheet& neighbour,
                              const std::vector<Flat>& seats) {
  std::vector<Flat> both;
  for (const Flat& flat : flats) {
    if (flat.to <= neighbour.from || flat.from >= neighbour.to) {
      both.push_back(flat);
      continue;
    }
    for (const Flat& seat : seats) {
      const Flat common{std::max(flat.from, neighbour.line + seat.from), std::min(flat.to, neighbour.line + seat.to)};
      if (common.from <= common.to) both.push_back(common);
    }
  }
  return both;
}

class JambWalk {
 public:
  JambWalk(RunScrews& screws, std::int32_t index, const CutRegion& cut)
      : screws_(screws),
        index_(index),
        jamb_(screws.holes().supports.jambs[static_cast<std::size_t>(index)]),
        cut_(cut) {}

  void walk() {
    noteUnstated();
    const std::optional<Seat> seat = nearestSeat();
    if (!seat) {
      refuseAll();
      return;
    }
    Place place;
    place.kind = HoleKind::Jamb;
    place.row = index_;
    place.module = seat->module;
    place.line = &lineOf(seat->module);
    place.t = seat->t;
    const Length from = jamb_.foot + fromHeadAndSill, length = jamb_.head - fromHeadAndSill - from;
    if (length <= Length()) {
      place.z = jamb_.foot + half(jamb_.head - jamb_.foot);
      screws_.place(place);
      return;
    }
    const std::int64_t spaces = evenSpaces(length, screws_.chosen().pattern->jambSpacingLimit);
    for (std::int64_t i = 0; i <= spaces; ++i) {
      place.z = from + scaled(length, i, spaces);
      screws_.place(place);
    }
  }

 private:
  // Modules before this one and those that are past have no metal over the flange.
  std::size_t firstOver() const {
    const HangingFrame& frame = screws_.sheets().frame();
    return screws_.sheets().firstBeyond(std::min(frame.toHanging(jamb_.from), frame.toHanging(jamb_.to)));
  }
  bool isPast(std::size_t module) const {
    const RunSheets& sheets = screws_.sheets();
    const Length end = std::max(sheets.frame().toHanging(jamb_.from), sheets.frame().toHanging(jamb_.to));
    return sheets.inOrder() && sheets[module].from >= end;
  }

  const ScrewLine& lineOf(std::size_t module) const {
    return screws_.chosen().line(HoleKind::Jamb, screws_.sheets()[module].corner);
  }

  JambZone zoneFor(Length margin) const {
    const HangingFrame& frame = screws_.sheets().frame();
    const bool rightward = frame.hand == Hand::LeftToRight;
    const Length a = frame.toHanging(jamb_.low), b = frame.toHanging(jamb_.high);
    const Length low = std::min(a, b), high = std::max(a, b);
    JambZone zone;
    zone.low = low + margin;
    zone.high = high - margin;
    zone.middle = jamb_.low <= jamb_.high ? low + half(high - low) : high + half(low - high);
    if (jamb_.low > jamb_.high) zone.high = zone.low - Length::nanometres(1);  // the flange has no flat at all
    zone.edge = frame.toHanging(jamb_.left ? cut_.left : cut_.right);
    zone.sheetsBelow = jamb_.left == rightward;
    return zone;
  }

  std::vector<Flat> seatsOn(std::size_t module, const JambZone& zone, Length r, Length washer) {
    RunSheets& sheets = screws_.sheets();
    const StandingSheet& sheet = sheets[module];
    Length low = std::max(zone.low, sheet.from + r), high = std::min(zone.high, sheet.to - r);
    if (zone.sheetsBelow) {
      high = std::min(high, zone.edge - r);
    } else {
      low = std::max(low, zone.edge + r);
    }
    const std::vector<Flat>& seats = sheets.seats(washer);
    std::vector<Flat> flats;
    for (const Flat& seat : seats) {
      const Flat flat{std::max(sheet.line + seat.from, low), std::min(sheet.line + seat.to, high)};
      if (flat.from <= flat.to) flats.push_back(flat);
    }
    const auto [first, last] = sheets.beside(module, r);
    for (std::size_t other = first; other <= last && !flats.empty(); ++other) {
      if (other == module) continue;
      cutOut(flats, sheets[other].from, r);
      cutOut(flats, sheets[other].to, r);
      flats = onNeighbour(flats, sheets[other], seats);
    }
    return flats;
  }

  // Of two equally near the middle the one nearer the opening; of several sheets there the one hung last.
  bool isBetter(const Seat& seat, const Seat& than, const JambZone& zone) const {
    const Length mine = absolute(seat.t - zone.middle), its = absolute(than.t - zone.middle);
    if (mine != its) return mine < its;
    if (seat.t != than.t) return zone.sheetsBelow == (seat.t > than.t);
    return seat.module > than.module;
  }

  std::optional<Seat> nearestSeat() {
    std::optional<Seat> best;
    for (std::size_t m = firstOver(); m < screws_.sheets().size() && !isPast(m); ++m) {
      const ScrewLine& line = lineOf(m);
      if (!line.stated) continue;
      const JambZone zone = zoneFor(screws_.margin(line));
      const StandingSheet& sheet = screws_.sheets()[m];
      if (sheet.to < zone.low || sheet.from > zone.high) continue;
      const Screw& screw = screws_.screwOf(line);
      for (const Flat& flat : seatsOn(m, zone, fromEdge(screw), screw.washer)) {
        const Seat seat{m, std::clamp(zone.middle, flat.from, flat.to)};
        if (!best || isBetter(seat, *best, zone)) best = seat;
      }
    }
    return best;
  }

  // The part of the flange beside the opening that sheets may lie over.
  bool isOver(const Piece& piece) const {
    const Length left = jamb_.left ? jamb_.from : cut_.right, right = jamb_.left ? cut_.left : jamb_.to;
    return left < right && piece.left < right && piece.right > left && piece.bottom < jamb_.head &&
           piece.top > jamb_.foot;
  }

  void noteUnstated() {
    for (std::size_t m = firstOver(); m < screws_.sheets().size() && !isPast(m); ++m) {
      for (const SheetMetal& metal : screws_.sheets()[m].pieces) {
        if (isOver(*metal.shape) && !lineOf(m).stated) screws_.noteUnstated(HoleKind::Jamb);
      }
    }
  }

  // A flange with sheets over it and no flat for a screw.
  void refuseAll() {
    for (std::size_t m = firstOver(); m < screws_.sheets().size() && !isPast(m); ++m) {
      for (const SheetMetal& metal : screws_.sheets()[m].pieces) {
        if (!isOver(*metal.shape) || !lineOf(m).stated) continue;
        Place place;
        place.kind = HoleKind::Jamb;
        place.row = index_;
        place.module = m;
        place.line = &lineOf(m);
        place.t = screws_.sheets().frame().toHanging(jamb_.low + half(jamb_.high - jamb_.low));
        place.z = jamb_.foot + half(jamb_.head - jamb_.foot);
        screws_.refuse(Refusal::Why::UnderRib, place, metal.piece);
        return;
      }
    }
  }

  RunScrews& screws_;
  std::int32_t index_;
  const JambFlange& jamb_;
  const CutRegion& cut_;
};

}  // namespace

void placeJambs(RunScrews& screws, const WallLayout& layout) {
  const SheetRun& run = screws.sheets().run();
  std::int32_t index = 0;  // jambs stand opening by opening, in the order of the cuts
  for (const CutRegion& cut : layout.cuts) {
    if (cut.penetration) continue;
    for (int side = 0; side < 2; ++side, ++index) {
      const JambFlange& jamb = screws.holes().supports.jambs[static_cast<std::size_t>(index)];
      if (jamb.to >= run.faceLeft && jamb.from <= run.faceRight) JambWalk(screws, index, cut).walk();
    }
  }
}

}  // namespace ribwright
