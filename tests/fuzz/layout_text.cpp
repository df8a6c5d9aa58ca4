#include "tests/fuzz/layout_text.h"

#include <algorithm>

#include "core/words/words.h"

namespace ribwright::fuzz {
namespace {

class LayoutText {
 public:
  LayoutText& word(const std::string& word) {
    text_ += word + " ";
    return *this;
  }
  LayoutText& operator<<(Length length) { return word(std::to_string(length.nanometres())); }
  LayoutText& operator<<(int number) { return word(std::to_string(number)); }
  LayoutText& operator<<(bool flag) { return word(flag ? "yes" : "no"); }
  LayoutText& operator<<(const std::optional<Length>& length) { return length ? *this << *length : word("-"); }
  LayoutText& operator<<(const Area& area) {
    const Int128 halves = area.halfSquareNanometres();
    const auto billion = static_cast<std::int64_t>(1'000'000'000'000'000'000);
    return word(std::to_string(static_cast<std::int64_t>(halves / billion)) + "." +
                std::to_string(static_cast<std::int64_t>(halves % billion)));
  }
  LayoutText& operator<<(const FaceVertex& vertex) { return *this << vertex.u << vertex.z; }
  void end() { text_ += "\n"; }
  std::string take() { return std::move(text_); }

 private:
  std::string text_;
};

// Level ends go on level, and level runs need no vertex between: what is left says the same however it was put
// together.
std::vector<FaceVertex> plain(std::vector<FaceVertex> line) {
  for (std::size_t i = 1; i + 1 < line.size();) {
    const bool flat = line[i - 1].z == line[i].z && line[i].z == line[i + 1].z;
    if (flat) {
      line.erase(line.begin() + static_cast<std::ptrdiff_t>(i));
    } else {
      ++i;
    }
  }
  if (line.size() > 1 && line[0].z == line[1].z) line.erase(line.begin());
  if (line.size() > 1 && line[line.size() - 1].z == line[line.size() - 2].z) line.pop_back();
  if (line.size() == 1) line.front().u = Length();
  return line;
}

void add(LayoutText& text, const std::string& name, const HeightLine& line) {
  text.word(name);
  for (const FaceVertex& vertex : plain(line.vertices())) text << vertex;
  text.end();
}

void add(LayoutText& text, const WallFace& face) {
  text.word("face").word(face.letter) << face.width << face.ridge;
  if (face.line) text << face.line->from.x << face.line->from.y << face.line->to.x << face.line->to.y;
  text.end();
  add(text, "steel", face.steel);
  add(text, "top", face.top);
  add(text, "bottom", face.bottom);
  add(text, "concrete", face.concrete);
}

void add(LayoutText& text, const CutRegion& cut) {
  text.word("cut").word(cut.id) << cut.penetration << cut.reachesFloor << cut.left << cut.right << cut.top;
  // What lies below an opening that reaches the floor has no meaning.
  if (!cut.reachesFloor) text << cut.bottom;
  text << cut.steelLeft << cut.steelRight << cut.steelBottom << cut.steelTop;
  text.end();
  if (!cut.reachesFloor) add(text, "lower", cut.lower);
  add(text, "upper", cut.upper);
}

void add(LayoutText& text, const SheetRun& run) {
  text.word("run") << run.band << run.left << run.right << run.offset << run.faceLeft << run.faceRight << run.floor
                   << run.ceiling;
  for (const Length end : run.lapEnds) text << end;
  text << run.face << run.cut << run.net << run.laps << run.pieces << run.uncovered;
  text.end();
  for (const Module& module : run.modules) {
    text.word("module") << module.number << module.startLine << module.leadLine << module.metalLeft << module.metalRight
                        << module.hung << module.translucent << module.tiered << module.startRipped
                        << module.leadRipped;
    text.end();
  }
}

void add(LayoutText& text, const Piece& piece) {
  text.word("piece").word(piece.mark) << piece.run << piece.module << piece.tier << piece.hangOrder << piece.left
                                      << piece.right << piece.bottom << piece.top << piece.lowEdge << piece.highEdge
                                      << piece.leftEdge << piece.rightEdge << piece.peak << piece.blankLength;
  text << piece.rip << piece.rake << piece.notched << piece.above << piece.below << static_cast<int>(piece.kind)
       << piece.startingEdgeFactory << piece.leadingEdgeFactory << piece.lowerEndFactory << piece.area;
  text.end();
  for (const Cell& cell : piece.cells) {
    text.word("cell") << cell.left << cell.right << cell.bottomLeft << cell.bottomRight << cell.topLeft
                      << cell.topRight;
    text.end();
  }
  for (const Ring& ring : piece.rings) {
    text.word("ring");
    for (const FaceVertex& vertex : ring) text << vertex;
    text.end();
  }
}

void add(LayoutText& text, const OrderLine& line) {
  text.word("order") << line.line;
  text.word(line.profile).word(line.colour) << line.translucent << line.thickness << line.length << line.coverArea;
  text << static_cast<int>(line.kilograms * 1000) << line.spares << line.firstSheet;
  for (const std::string& mark : line.marks) text.word(mark);
  text.end();
}

}  // namespace

std::string layoutText(const WallLayout& layout) {
  LayoutText text;
  text.word("wall").word(layout.letter) << static_cast<int>(layout.direction.hand)
                                        << static_cast<int>(layout.direction.reason) << layout.direction.againstRule
                                        << layout.sheeted;
  text.end();
  add(text, layout.face);
  for (const CutRegion& cut : layout.cuts) add(text, cut);
  for (const SheetRun& run : layout.runs) add(text, run);
  for (const Piece& piece : layout.pieces) add(text, piece);
  return text.take();
}

std::string planText(const Plan& plan) {
  std::string all;
  for (const auto& wall : plan.walls) all += layoutText(wall->layout);
  LayoutText text;
  for (const OrderLine& line : plan.order.lines) add(text, line);
  for (const OrderedSheet& sheet : plan.order.sheets) {
    text.word("sheet") << sheet.line << sheet.used << sheet.drop;
    for (const int blank : sheet.blanks) text << blank;
    text.end();
  }
  for (const auto& codes : plan.order.codes) {
    for (const std::string& code : codes) text.word(code);
    text.end();
  }
  for (const Finding& finding : plan.findings) {
    text.word(finding.key()).word(finding.source) << static_cast<int>(finding.grade);
    text.end();
  }
  return all + text.take();
}

std::string firstDifference(const std::string& a, const std::string& b) {
  if (a == b) return "";
  std::size_t from = 0, to = 0;
  for (;;) {
    const std::size_t endA = std::min(a.find('\n', from), a.size()), endB = std::min(b.find('\n', to), b.size());
    const std::string lineA = a.substr(from, endA - from), lineB = b.substr(to, endB - to);
    if (lineA != lineB || endA == a.size() || endB == b.size()) return lineA + "\n  against\n" + lineB;
    from = endA + 1;
    to = endB + 1;
  }
}

std::string jobText(const Job& job) {
  LayoutText text;
  for (const Wall& wall : job.walls) {
    text.word("wall").word(wall.letter).word("width") << wall.width;
    text.word("hang") << static_cast<int>(wall.hang);
    text.word("base") << static_cast<int>(wall.base.form) << wall.base.drop << wall.base.depth << wall.base.shelf
                      << wall.base.gap;
    text.word("hold") << wall.eaveHoldDown << wall.rakeHoldDown;
    text.word("reach") << wall.reachLeft << wall.reachRight;
    text.word("laps") << static_cast<int>(wall.endLaps.where) << wall.endLaps.lap;
    text.end();
    for (const FacePoint& point : wall.top) text.word("top") << point.u << point.z;
    for (const FacePoint& step : wall.base.steps) text.word("step") << step.u << step.z;
    for (const Length joint : wall.expansionJoints) text.word("joint") << joint;
    text.end();
    for (const Band& band : wall.bands) {
      const Start& start = band.start ? *band.start : wall.start;
      text.word("band") << band.from << band.gap;
      text.word(band.profile).word("start")
          << static_cast<int>(start.rule) << start.offset << static_cast<int>(start.side);
      text.word(start.opening).end();
    }
    for (const Opening& o : wall.openings) {
      text.word("opening").word(o.id) << static_cast<int>(o.place.from) << o.place.distance
                                      << static_cast<int>(o.place.to) << o.width << o.height << o.sill;
      text << o.clearances.jamb << o.clearances.head << o.clearances.sill;
      text.end();
    }
    for (const Penetration& p : wall.penetrations) {
      text.word("hole").word(p.id) << static_cast<int>(p.shape) << p.place.distance << p.centre << p.width << p.height
                                   << p.clearance;
      text.end();
    }
  }
  const Roof& roof = job.building.roof;
  text.word("roof") << static_cast<int>(roof.kind) << static_cast<int>(roof.ends) << roof.eave << roof.ridgeAt
                    << roof.ridgeHeight << roof.farEave;
  for (const PlanPoint& point : job.building.outline) text.word("corner") << point.x << point.y;
  for (const HungSheet& hung : job.facts.hung) text.word("hung").word(hung.mark) << hung.leadingEdge;
  text.end();
  return text.take();
}

}  // namespace ribwright::fuzz
