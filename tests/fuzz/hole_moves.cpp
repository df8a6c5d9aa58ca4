#include "tests/fuzz/hole_moves.h"

#include <algorithm>

#include "tests/fuzz/moved.h"

namespace ribwright::fuzz {
namespace {

void turnStretch(Stretch& stretch, Length width, int columns) {
  turnLimits(stretch.from, stretch.to, width);
  std::swap(stretch.endsAtFrom, stretch.endsAtTo);
  using Steel = Stretch::Steel;
  if (stretch.steel == Steel::Own) return;
  turnLimits(stretch.low, stretch.high, width);
  if (stretch.steel == Steel::Column) {
    stretch.name = std::to_string(columns + 1 - std::stoi(stretch.name));
  } else {
    stretch.steel = stretch.steel == Steel::LeftJamb ? Steel::RightJamb : Steel::LeftJamb;
  }
}

void turnJamb(JambFlange& jamb, Length width) {
  jamb.left = !jamb.left;
  jamb.edge = width - jamb.edge;
  turnLimits(jamb.from, jamb.to, width);
  turnLimits(jamb.low, jamb.high, width);
}

// Of a hole or a refusal: the same stretch counted from the other end, the other jamb of its opening.
template <class Placed>
void turnPlace(Placed& placed, const WallSupports& supports, Length width) {
  placed.u = width - placed.u;
  if (placed.kind == HoleKind::Stitch || placed.row < 0) return;
  if (placed.kind == HoleKind::Jamb) {
    placed.row += placed.row % 2 == 0 ? 1 : -1;
    return;
  }
  const auto& stretches = supports.rows[static_cast<std::size_t>(placed.row)].stretches;
  placed.stretch = static_cast<std::int32_t>(stretches.size()) - 1 - placed.stretch;
}

class HoleText {
 public:
  HoleText& operator<<(const std::string& word) {
    text_ += word + " ";
    return *this;
  }
  HoleText& operator<<(Length length) { return *this << std::to_string(length.nanometres()); }
  HoleText& operator<<(int number) { return *this << std::to_string(number); }
  std::string take() { return std::move(text_); }

 private:
  std::string text_;
};

std::string textOf(const Stretch& s) {
  HoleText text;
  text << "stretch" << s.from << s.to << int(s.endsAtFrom) << int(s.endsAtTo) << static_cast<int>(s.steel) << s.name
       << s.low << s.high << s.row << int(s.known);
  for (const std::int32_t girt : s.girts) text << girt;
  return text.take();
}

std::string textOf(const Hole& h) {
  HoleText text;
  text << "hole" << static_cast<int>(h.kind) << h.row << h.stretch << h.screw << h.run << h.u << h.z;
  for (const std::int32_t piece : h.pieces) text << piece;
  text << int(h.sheets) << int(h.upper) << int(h.throughLap) << int(h.inPlace) << int(h.corner);
  return text.take();
}

// Where a jamb or a lap as a whole is refused no place is meant.
std::string textOf(const Refusal& r) {
  HoleText text;
  text << "refused" << static_cast<int>(r.why) << static_cast<int>(r.kind) << r.row << r.stretch << r.screw << r.run;
  const bool whole = r.why == Refusal::Why::UnderRib || (r.kind == HoleKind::Stitch && r.why == Refusal::Why::NoCrown);
  if (!whole) text << r.piece << r.u << r.z << r.x;
  return text.take();
}

std::string textOf(const WideSpace& w) {
  HoleText text;
  text << "wide" << static_cast<int>(w.kind) << w.row << w.run << w.from << w.to << w.at << w.limit;
  return text.take();
}

template <class All>
std::string sortedText(const All& all) {
  std::vector<std::string> lines;
  for (const auto& one : all) lines.push_back(textOf(one));
  std::sort(lines.begin(), lines.end());
  std::string text;
  for (const std::string& line : lines) text += line + "\n";
  return text;
}

}  // namespace

WallHoles mirrored(const WallHoles& holes, Length width, int columns) {
  WallHoles m = holes;
  for (SupportRow& row : m.supports.rows) {
    for (Stretch& stretch : row.stretches) turnStretch(stretch, width, columns);
    std::reverse(row.stretches.begin(), row.stretches.end());
  }
  for (JambFlange& jamb : m.supports.jambs) turnJamb(jamb, width);
  for (std::size_t i = 0; i + 1 < m.supports.jambs.size(); i += 2) {
    std::swap(m.supports.jambs[i], m.supports.jambs[i + 1]);
  }
  for (Hole& hole : m.holes) turnPlace(hole, holes.supports, width);
  for (Refusal& refusal : m.refusals) turnPlace(refusal, holes.supports, width);
  for (WideSpace& space : m.wideSpaces) {
    if (space.kind == HoleKind::Stitch) {
      space.at = width - space.at;
    } else {
      turnLimits(space.from, space.to, width);
    }
  }
  return m;
}

WallHoles raised(const WallHoles& holes, Length by) {
  WallHoles up = holes;
  for (SupportRow& row : up.supports.rows) {
    for (Stretch& stretch : row.stretches) {
      if (row.alongTop) continue;
      stretch.row += by;
      if (stretch.steel != Stretch::Steel::Own) continue;
      stretch.low += by;
      stretch.high += by;
    }
  }
  for (JambFlange& jamb : up.supports.jambs) {
    jamb.foot += by;
    jamb.head += by;
  }
  for (Hole& hole : up.holes) hole.z += by;
  for (Refusal& refusal : up.refusals) refusal.z += by;
  for (WideSpace& space : up.wideSpaces) {
    if (space.kind == HoleKind::Stitch) {
      space.from += by;
      space.to += by;
    } else {
      space.at += by;
    }
  }
  return up;
}

std::string holesText(const WallHoles& holes) {
  std::string all;
  for (const SupportRow& row : holes.supports.rows) {
    HoleText text;
    text << "row" << static_cast<int>(row.kind) << row.id << int(row.alongTop);
    all += text.take() + "\n";
    for (const Stretch& stretch : row.stretches) all += textOf(stretch) + "\n";
  }
  for (const JambFlange& j : holes.supports.jambs) {
    HoleText text;
    text << "jamb" << j.opening << int(j.left) << j.edge << j.from << j.to << j.low << j.high << j.foot << j.head;
    all += text.take() + "\n";
  }
  HoleText text;
  text << "zone" << (holes.cornerZone ? std::to_string(holes.cornerZone->nanometres()) : "-");
  for (const RunPattern& pattern : holes.patterns) text << pattern.pattern << int(pattern.otherProfile);
  for (const HoleKind kind : holes.unstated) text << static_cast<int>(kind);
  all += text.take() + "\n";
  for (const Hole& hole : holes.holes) all += textOf(hole) + "\n";
  return all + sortedText(holes.refusals) + sortedText(holes.wideSpaces);
}

}  // namespace ribwright::fuzz
