// Sheets as they are seen from outside. A solid line is the edge of the sheet that lies on top, a dashed one the edge
// beneath it, a chain line the module line.
#include <algorithm>
#include <array>

#include "core/drawing/board_parts.h"
#include "core/drawing/piece_labels.h"
#include "core/drawing/ring_within.h"

namespace ribwright {

namespace {

constexpr double linesApart = 4;  // pixels between two lines that are to be told linesApart

struct SheetLines {
  std::vector<BoardLine> edges, sideLaps, endLaps, modules;
  double widestSideLap = 0, highestEndLap = 0, lip = kNoLimit;
};

void gatherEdges(const std::vector<PaperPoint>& ring, const Box& box, std::vector<BoardLine>& to, bool upright,
                 bool other) {
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const PaperPoint& a = ring[i];
    const PaperPoint& b = ring[(i + 1) % ring.size()];
    if (!(a.x == b.x ? upright : other)) continue;
    if (const auto line = lineWithin(a, b, box)) to.push_back({line->first, line->second});
  }
}

// What the next sheet, or the upper one, lies over.
void gatherCovered(SheetLines& lines, const std::vector<PaperPoint>& ring, const Box& whole, const Box& seen) {
  for (const auto& [from, to] : {std::pair(whole.left, seen.left), std::pair(seen.right, whole.right)}) {
    if (to <= from) continue;
    gatherEdges(ring, {from, whole.top, to, whole.bottom}, lines.sideLaps, true, false);
    lines.widestSideLap = std::max(lines.widestSideLap, to - from);
  }
  if (seen.top <= whole.top) return;
  gatherEdges(ring, {seen.left, whole.top, seen.right, seen.top}, lines.endLaps, false, true);
  lines.highestEndLap = std::max(lines.highestEndLap, seen.top - whole.top);
}

void gatherModuleLine(SheetLines& lines, const WallView& view, const Piece& piece) {
  const SheetRun& run = view.layout->runs.at(static_cast<std::size_t>(piece.run));
  const double x = view.x(run.modules.at(static_cast<std::size_t>(piece.module)).startLine);
  for (const Upright& part : uprightsAt(seenColumns(view, piece), x))
    lines.modules.push_back({{x, part.top}, {x, part.bottom}});
  const bool toRight = view.layout->direction.hand == Hand::LeftToRight;
  const double lip = toRight ? x - view.x(piece.left) : view.x(piece.right) - x;
  if (lip > 0) lines.lip = std::min(lines.lip, lip);
}

void addLayers(BoardPicture& picture, SheetLines lines) {
  const double sideLap = linesApart / std::max(lines.widestSideLap, 1.0),
               endLap = linesApart / std::max(lines.highestEndLap, 1.0);
  const double module = lines.lip < kNoLimit ? linesApart / lines.lip : 0.05;
  picture.lines.push_back({AlongWall(std::move(lines.modules)), BoardTone::Quiet, 1, Dash::Chain, {module}});
  picture.lines.push_back({AlongWall(std::move(lines.sideLaps)), BoardTone::Quiet, 1, Dash::Dashed, {sideLap}});
  picture.lines.push_back({AlongWall(std::move(lines.endLaps)), BoardTone::Quiet, 1, Dash::Dashed, {endLap}});
  picture.lines.push_back({AlongWall(std::move(lines.edges)), BoardTone::Line, 1, Dash::Solid, {}});
}

}  // namespace

void addSheets(BoardPicture& picture, const WallView& view) {
  SheetLines lines;
  std::vector<BoardArea> opaque, translucent;
  for (const Piece& piece : view.layout->pieces) {
    const SeenPart seen = seenPart(view, piece);
    if (seen.empty()) continue;
    const Box box{view.x(seen.left), view.y(seen.top), view.x(seen.right), view.y(piece.bottom)};
    const Box whole{view.x(piece.left), view.y(piece.top), view.x(piece.right), box.bottom};
    std::vector<std::vector<PaperPoint>> rings;
    for (const Ring& ring : piece.rings) {
      const std::vector<PaperPoint> points = pointsOf(view, ring);
      gatherEdges(points, box, lines.edges, true, true);
      gatherCovered(lines, points, whole, box);
      auto inside = ringWithin(points, box);
      if (inside.size() >= 3) rings.push_back(std::move(inside));
    }
    if (rings.empty()) continue;
    gatherModuleLine(lines, view, piece);
    (isTranslucent(view, piece) ? translucent : opaque).push_back({rings, boxRound(rings)});
    picture.things.push_back({{Part::Kind::Piece, view.layout->letter, piece.mark}, rings, false, boxRound(rings)});
  }
  picture.areas.push_back({AlongWall(std::move(opaque)), BoardTone::Sheet});
  picture.areas.push_back({AlongWall(std::move(translucent)), BoardTone::Translucent});
  addLayers(picture, std::move(lines));
}

Box boxRound(const std::vector<std::vector<PaperPoint>>& rings) {
  Box box{kNoLimit, kNoLimit, -kNoLimit, -kNoLimit};
  for (const auto& ring : rings) {
    for (const PaperPoint& point : ring) box = united(box, {point.x, point.y, point.x, point.y});
  }
  return box;
}

std::vector<Upright> uprightsAt(const std::vector<Column>& columns, double x) {
  constexpr double hair = 1e-6;
  std::vector<Upright> parts;
  for (const Column& column : columns) {
    if (x < column.left || x > column.right) continue;
    const double along = (x - column.left) / (column.right - column.left);
    const auto at = [&](double left, double right) { return -(left + (right - left) * along); };
    parts.push_back({at(column.topLeft, column.topRight), at(column.bottomLeft, column.bottomRight)});
  }
  std::sort(parts.begin(), parts.end(), [](const Upright& a, const Upright& b) { return a.top < b.top; });
  std::vector<Upright> joined;
  for (const Upright& part : parts) {
    if (!joined.empty() && part.top <= joined.back().bottom + hair) {
      joined.back().bottom = std::max(joined.back().bottom, part.bottom);
    } else {
      joined.push_back(part);
    }
  }
  return joined;
}

}  // namespace ribwright
