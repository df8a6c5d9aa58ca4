#include "tests/fuzz/measured_wall.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "tests/fuzz/exact_distance.h"

namespace ribwright::fuzz {
namespace {

// Stations joined by straight lines; one station alone is known nowhere else.
StatedLine joinedUp(const std::vector<std::pair<Nm, Nm>>& points) {
  StatedLine line;
  for (std::size_t i = 0; i + 1 < points.size(); ++i)
    line.segments.push_back({points[i].first, points[i].second, points[i + 1].first, points[i + 1].second});
  if (line.segments.empty())
    line.segments.push_back(
        {points.front().first, points.front().second, points.front().first + 1, points.front().second});
  return line;
}

// The least whole number that is at least margin * sqrt(run^2 + rise^2) / run.
Nm upright(Nm margin, Nm run, Nm rise) {
  if (rise == 0) return margin;
  const auto reaches = [&](Nm up) {
    return Int128(up) * up * run * run >= Int128(margin) * margin * (Int128(run) * run + Int128(rise) * rise);
  };
  Nm low = margin - 1, high = margin;
  while (!reaches(high)) high *= 2;
  while (high - low > 1) {
    const Nm middle = low + (high - low) / 2;
    (reaches(middle) ? high : low) = middle;
  }
  return high;
}

}  // namespace

void Room::keep(const DrilledHole& hole) {
  if (hole.upright) return;
  low = low ? std::max(*low, hole.low) : hole.low;
  high = high ? std::min(*high, hole.high) : hole.high;
}

bool Room::hasMark(Nm step) const {
  if (!low) return true;
  Nm marks = *high / step;
  if (*high % step < 0) --marks;
  return marks * step >= *low;
}

MeasuredWall::MeasuredWall(const Job& job, const Wall& wall, const WallLayout& layout, const WallHoles& holes)
    : job_(job),
      wall_(wall),
      layout_(layout),
      holes_(holes),
      face_(statedFace(job, wall)),
      girts_(wall.girts.size()),
      sheets_(layout.pieces.size()) {
  for (const GirtSurvey& survey : wall.survey.girts) {
    if (survey.girt == "eave")
      eave_ = lineOf(survey.readings, [&](Nm u) { return face_.steel.heightAt(u, Side::Right); });
    for (std::size_t i = 0; i < wall.girts.size(); ++i) {
      if (wall.girts[i].id == survey.girt)
        girts_[i] = lineOf(survey.readings, [&](Nm) { return nm(wall.girts[i].height); });
    }
  }
  if (!wall.survey.slab.empty() && wall.base.form != Base::Form::OnWall) {
    std::vector<std::pair<Nm, Nm>> points;
    for (const SlabReading& reading : wall.survey.slab)
      points.push_back({nm(reading.u), nm(reading.z) - face_.concrete.heightAt(nm(reading.u), Side::Right)});
    slab_ = Line{points.front().first, points.back().first, joinedUp(points), joinedUp(points)};
  }
  for (std::size_t i = 0; i < holes.holes.size(); ++i) addHole(static_cast<int>(i));
  numberBaseRows();
}

const Module& MeasuredWall::moduleOf(int index) const {
  return layout_.runs[static_cast<std::size_t>(piece(index).run)]
      .modules[static_cast<std::size_t>(piece(index).module)];
}

std::vector<std::vector<int>> MeasuredWall::lanes() const {
  std::map<std::tuple<int, int, bool, bool, bool>, std::vector<int>> lanes;
  for (std::size_t i = 0; i < sheets_.size(); ++i) {
    const auto index = static_cast<int>(i);
    const Piece& p = piece(index);
    if (sheets_[i].empty() || moduleOf(index).hung) continue;
    lanes[{p.run, p.tier, p.below, p.above, moduleOf(index).translucent}].push_back(index);
  }
  std::vector<std::vector<int>> all;
  for (auto& [lane, pieces] : lanes) all.push_back(pieces);
  return all;
}

Nm MeasuredWall::tapeStep() const { return job_.units == UnitSystem::FeetInches ? kInch / 16 : 1'000'000; }

Nm MeasuredWall::fromEdge(int screw) const {
  const Nm three = 3 * nm(job_.screws[static_cast<std::size_t>(screw)].diameter);
  return three / 2 + three % 2;
}

Nm MeasuredWall::margin(int screw) const { return fromEdge(screw) + nm(job_.settings.drift); }

Nm MeasuredWall::chalkAt(Nm u) const {
  if (wall_.survey.chalkLine) return nm(*wall_.survey.chalkLine);
  return std::min(face_.bottom.heightAt(u, Side::Left), face_.bottom.heightAt(u, Side::Right));
}

Nm MeasuredWall::endAsHung(int index) const {
  const Nm end = nm(piece(index).bottom);
  const auto& bottom = face_.bottom.segments;
  const bool level = std::all_of(bottom.begin(), bottom.end(), [&](const Segment& s) { return s.z0 == end; });
  const bool byLine = wall_.base.form == Base::Form::Overhang && level && piece(index).tier == 0;
  return byLine && wall_.survey.chalkLine ? nm(*wall_.survey.chalkLine) : end;
}

template <class Planned>
std::optional<MeasuredWall::Line> MeasuredWall::lineOf(const std::vector<GirtReading>& readings,
                                                       const Planned& planned) const {
  if (readings.empty()) return std::nullopt;
  std::vector<std::pair<Nm, Nm>> least, most;
  for (const GirtReading& reading : readings) {
    const Nm u = nm(reading.u), within = reading.within ? nm(*reading.within) : 0;
    const Nm above = chalkAt(u) + nm(reading.height) - planned(u);
    least.push_back({u, above - within});
    most.push_back({u, above + within});
  }
  return Line{least.front().first, least.back().first, joinedUp(least), joinedUp(most)};
}

std::optional<MeasuredShift> MeasuredWall::shiftAt(const std::optional<Line>& line, Nm u) {
  if (!line || u < line->from || line->to < u) return std::nullopt;
  return MeasuredShift{line->least.heightAt(u, Side::Right), line->most.heightAt(u, Side::Right)};
}

std::optional<MeasuredShift> MeasuredWall::shiftOfGirt(int girt, Nm u) const {
  return shiftAt(girts_[static_cast<std::size_t>(girt)], u);
}

MeasuredWall::Steel MeasuredWall::girtAt(const Stretch& stretch, Nm u) const {
  Steel shared{-(Nm(1) << 50), Nm(1) << 50, false, true, true};
  for (const std::int32_t girt : stretch.girts) {
    const auto shift = shiftOfGirt(girt, u);
    if (!shift) return {nm(stretch.low), nm(stretch.high), false, true, false};
    const GirtFace face = statedGirtFace(job_, wall_.girts[static_cast<std::size_t>(girt)]);
    shared.low = std::max(shared.low, face.low + shift->most);
    shared.high = std::min(shared.high, face.high + shift->least);
  }
  return shared;
}

MeasuredWall::Steel MeasuredWall::steelAt(const Hole& hole) const {
  const SupportRow& row = holes_.supports.rows[static_cast<std::size_t>(hole.row)];
  const Stretch& stretch = row.stretches[static_cast<std::size_t>(hole.stretch)];
  if (stretch.steel != Stretch::Steel::Own) return {0, 0, true, true, true};
  if (!stretch.known) return {0, 0, false, false, false};
  if (row.kind == SupportKind::Girt) return girtAt(stretch, nm(hole.u));
  std::optional<MeasuredShift> shift;
  if (row.kind == SupportKind::Base) shift = shiftAt(slab_, nm(hole.u));
  if (row.kind == SupportKind::Eave) shift = shiftAt(eave_, nm(hole.u));
  const Nm line = row.alongTop ? face_.steel.heightAt(nm(hole.u), Side::Right) : 0;
  const MeasuredShift by = shift.value_or(MeasuredShift{});
  return {nm(stretch.low) + line + by.most, nm(stretch.high) + line + by.least, false, true, shift.has_value()};
}

Nm MeasuredWall::marginOf(const Hole& hole) const {
  if (hole.kind != HoleKind::Rake) return margin(hole.screw);
  const SupportRow& row = holes_.supports.rows[static_cast<std::size_t>(hole.row)];
  const Stretch& stretch = row.stretches[static_cast<std::size_t>(hole.stretch)];
  const Nm from = nm(stretch.from), to = nm(stretch.to);
  const Nm rise = face_.steel.heightAt(to, Side::Left) - face_.steel.heightAt(from, Side::Right);
  return upright(margin(hole.screw), to - from, rise);
}

bool MeasuredWall::drillsBoth(int run) const {
  const std::string& id = holes_.patterns[static_cast<std::size_t>(run)].pattern;
  return std::any_of(job_.patterns.begin(), job_.patterns.end(), [&](const ScrewPattern& pattern) {
    return pattern.id == id && pattern.lapHoles == ScrewPattern::LapHoles::BothSheets;
  });
}

void MeasuredWall::addHole(int index) {
  const Hole& hole = holes_.holes[static_cast<std::size_t>(index)];
  if (hole.inPlace || hole.kind == HoleKind::Jamb || hole.kind == HoleKind::Stitch) return;
  const Steel steel = steelAt(hole);
  if (hole.kind == HoleKind::Eave && steel.known && !steel.measured) return;
  for (int i = 0; i < hole.sheets; ++i) {
    if (i != hole.upper && !drillsBoth(hole.run)) continue;
    const int sheet = hole.pieces[static_cast<std::size_t>(i)];
    const Nm bottom = nm(piece(sheet).bottom), away = marginOf(hole);
    DrilledHole one;
    one.row = {hole.kind, hole.screw, nm(hole.z), 0};
    one.hole = index;
    one.offset =
        layout_.direction.hand == Hand::LeftToRight ? nm(hole.u - piece(sheet).left) : nm(piece(sheet).right - hole.u);
    one.planned = nm(hole.z) - bottom;
    one.upright = steel.upright;
    one.known = steel.known;
    one.measured = steel.measured;
    // Without a cross-section the row is all that is known of the steel.
    one.low = steel.known ? steel.low + away - bottom : one.planned;
    one.high = steel.known ? steel.high - away - bottom : one.planned;
    sheets_[static_cast<std::size_t>(sheet)].push_back(one);
  }
}

void MeasuredWall::numberBaseRows() {
  for (auto& sheet : sheets_) {
    std::set<Nm> heights;
    for (const DrilledHole& hole : sheet) {
      if (hole.row.kind == HoleKind::Base) heights.insert(hole.row.height);
    }
    for (DrilledHole& hole : sheet) {
      if (hole.row.kind != HoleKind::Base) continue;
      hole.row.level = static_cast<int>(std::distance(heights.begin(), heights.find(hole.row.height)));
      hole.row.height = 0;
    }
    std::sort(sheet.begin(), sheet.end(), [](const DrilledHole& a, const DrilledHole& b) {
      return std::tie(a.row, a.offset) < std::tie(b.row, b.offset);
    });
  }
}

bool MeasuredWall::rowsHold(const std::vector<int>& pieces) const {
  std::map<DrilledRow, Room> rooms;
  for (const int p : pieces) {
    for (const DrilledHole& hole : sheet(p)) rooms[hole.row].keep(hole);
  }
  return std::all_of(rooms.begin(), rooms.end(), [&](const auto& one) { return one.second.hasMark(tapeStep()); });
}

Nm MeasuredWall::startOf(int index) const {
  const Nm line = nm(moduleOf(index).startLine);
  return layout_.direction.hand == Hand::LeftToRight ? nm(piece(index).left) - line : line - nm(piece(index).right);
}

bool MeasuredWall::bites(const DrilledRow& row, Nm offset, Nm planned, int index) const {
  const Piece& p = piece(index);
  const Nm u = layout_.direction.hand == Hand::LeftToRight ? nm(p.left) + offset : nm(p.right) - offset;
  const FaceVertex point{Length::nanometres(u), p.bottom + Length::nanometres(planned)};
  bool inside = placeIn(p.rings.front(), point.u, point.z) != Place::Outside;
  for (std::size_t i = 1; i < p.rings.size(); ++i)
    inside = inside && placeIn(p.rings[i], point.u, point.z) != Place::Inside;
  return inside || std::any_of(p.rings.begin(), p.rings.end(),
                               [&](const Ring& ring) { return nearerThan(point, ring, fromEdge(row.screw)); });
}

// Wherever a hole of `a` meets b's metal, b has it too.
bool MeasuredWall::covers(int a, int b) const {
  return std::all_of(sheet(a).begin(), sheet(a).end(), [&](const DrilledHole& hole) {
    const bool same = std::any_of(sheet(b).begin(), sheet(b).end(), [&](const DrilledHole& other) {
      return other.row == hole.row && other.offset == hole.offset;
    });
    return same || !bites(hole.row, hole.offset, hole.planned, b);
  });
}

bool MeasuredWall::agree(int a, int b) const { return startOf(a) == startOf(b) && covers(a, b) && covers(b, a); }

bool MeasuredWall::mayShareAStack(const std::vector<int>& pieces) const {
  if (pieces.size() == 1) return true;
  if (pieces.size() > static_cast<std::size_t>(job_.settings.stackLimit)) return false;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    for (std::size_t j = i + 1; j < pieces.size(); ++j) {
      if (!agree(pieces[i], pieces[j])) return false;
    }
  }
  return rowsHold(pieces);
}

}  // namespace ribwright::fuzz
