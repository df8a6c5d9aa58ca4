// Rows of screws along the jambs: on the flat of the sheet that lies nearest the middle of the flange's screw face.
#include <algorithm>

#include "tests/fuzz/stated_places.h"
#include "tests/fuzz/stated_seats.h"

namespace ribwright::fuzz {
namespace {

Nm cutBeside(const ScrewedWall& wall, const JambFlange& jamb) {
  for (const CutRegion& cut : wall.layout.cuts) {
    if (!cut.penetration && cut.id == jamb.opening) return nm(jamb.left ? cut.left : cut.right);
  }
  return nm(jamb.edge);
}

struct JambSeat {
  Nm t = 0;
  int module = -1;
  Asked asked;
};

class JambRow {
 public:
  JambRow(const ScrewedWall& wall, const ScrewedRun& run, int jamb)
      : wall_(wall), run_(run), index_(jamb), jamb_(wall.holes.supports.jambs[static_cast<std::size_t>(jamb)]) {
    cutEdge_ = cutBeside(wall, jamb_);
    flange_ = flangeBesideCut(wall, jamb_);
    const Nm a = run.along.t(nm(jamb_.low)), b = run.along.t(nm(jamb_.high));
    face_ = {std::min(a, b), std::max(a, b)};
    // The opening lies on the leading side of a jamb that is reached first.
    openingAhead_ = jamb_.left == (run.along.hand == Hand::LeftToRight);
  }

  void add(JambPlaces& found) const {
    std::optional<JambSeat> seat;
    bool anyAsks = false;
    for (const ScrewedModule& module : run_.modules) {
      const auto asked = run_.asked(SupportKind::Jamb, module.corner);
      if (!asked) continue;
      anyAsks = anyAsks || run_.metal.overBox(flange_, {nm(jamb_.foot), nm(jamb_.head)}, module.index);
      if (module.metalTo < face_.from || module.metalFrom > face_.to) continue;
      for (const Nm t : nearest(module, *asked)) take(seat, {t, module.index, *asked});
    }
    if (!anyAsks) return;
    if (seat) {
      addRow(*seat, found.places);
    } else {
      found.noSeat.push_back(index_);
    }
  }

 private:
  Nm middle() const { return face_.from + halved(face_.to - face_.from); }

  // The sheets' own places on the face: its flats, clear of its edges, of the cut and of its neighbours' edges, and on
  // a flat of theirs too where they lie there.
  Spans clear(const ScrewedModule& module, const Asked& asked) const {
    const Nm r = wall_.fromEdge(asked.screw), margin = wall_.margin(asked.screw);
    const Spans flats = statedSeats(*run_.profile, nm(wall_.screw(asked.screw).washer));
    Spans spans = within(moved(flats, module.line), face_.from + margin, face_.to - margin);
    spans = within(spans, module.metalFrom + r, module.metalTo - r);
    const Nm cut = run_.along.t(cutEdge_);
    spans = openingAhead_ ? within(spans, -(Nm(1) << 60), cut - r) : within(spans, cut + r, Nm(1) << 60);
    for (const ScrewedModule& other : run_.modules) {
      if (other.index == module.index || other.metalFrom >= other.metalTo) continue;
      if (other.metalTo + r < face_.from || other.metalFrom - r > face_.to) continue;
      for (const Nm edge : {other.metalFrom, other.metalTo}) spans = without(spans, edge - r, edge + r);
      Spans both = common(within(spans, other.metalFrom, other.metalTo), moved(flats, other.line));
      for (const Span& span : without(spans, other.metalFrom, other.metalTo)) {
        // Ends on the other's edge only where it is nearer than r to it: there is none.
        both.push_back(span);
      }
      spans = both;
    }
    return spans;
  }

  // On each side of the middle.
  std::vector<Nm> nearest(const ScrewedModule& module, const Asked& asked) const {
    std::vector<Nm> places;
    for (const Span& span : clear(module, asked)) places.push_back(std::clamp(middle(), span.from, span.to));
    return places;
  }

  void take(std::optional<JambSeat>& best, const JambSeat& seat) const {
    const auto away = [&](Nm t) { return t > middle() ? t - middle() : middle() - t; };
    if (best) {
      if (away(seat.t) > away(best->t)) return;
      const bool nearer = away(seat.t) < away(best->t);
      if (!nearer && seat.t != best->t && (seat.t > best->t) != openingAhead_) return;
    }
    best = seat;  // at one place: the last hung
  }

  void addRow(const JambSeat& seat, std::vector<AskedPlace>& places) const {
    AskedPlace place;
    place.kind = HoleKind::Jamb;
    place.row = index_;
    place.screw = seat.asked.screw;
    place.run = run_.index;
    place.module = seat.module;
    place.u = run_.along.u(seat.t);
    place.x = seat.t - run_.modules[static_cast<std::size_t>(seat.module)].line;
    place.inPlace = seat.asked.row->drilledInPlace.value_or(true);
    place.corner = run_.modules[static_cast<std::size_t>(seat.module)].corner;
    const Nm foot = nm(jamb_.foot) + 2 * kInch, length = nm(jamb_.head) - 2 * kInch - foot;
    if (length <= 0) {
      place.z = foot + halved(length);
      places.push_back(place);
      return;
    }
    const std::int64_t n = spacesOver(length, nm(run_.pattern->jambSpacingLimit));
    for (std::int64_t i = 0; i <= n; ++i) {
      place.z = foot + spaceEnd(length, i, n);
      places.push_back(place);
    }
  }

  const ScrewedWall& wall_;
  const ScrewedRun& run_;
  int index_;
  const JambFlange& jamb_;
  Nm cutEdge_ = 0;
  Span face_, flange_;
  bool openingAhead_ = false;
};

}  // namespace

Span flangeBesideCut(const ScrewedWall& wall, const JambFlange& jamb) {
  const Nm cut = cutBeside(wall, jamb);
  if (jamb.left) return {nm(jamb.from), std::min(cut, nm(jamb.to))};
  return {std::max(cut, nm(jamb.from)), nm(jamb.to)};
}

JambPlaces jambPlaces(const ScrewedWall& wall, const ScrewedRun& run) {
  JambPlaces found;
  if (!run.pattern) return found;
  for (std::size_t jamb = 0; jamb < wall.holes.supports.jambs.size(); ++jamb) {
    JambRow(wall, run, static_cast<int>(jamb)).add(found);
  }
  return found;
}

}  // namespace ribwright::fuzz
