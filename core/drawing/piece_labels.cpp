#include "core/drawing/piece_labels.h"

#include <algorithm>

#include "core/drawing/girt_lines.h"
#include "core/drawing/shown_length.h"

namespace ribwright {

namespace {

constexpr double besideSeam = 0.45;  // clear paper between a label and the edges of its sheet

double between(const Cell& cell, Length atLeft, Length atRight, Length u) {
  const double along = (u - cell.left).inMillimetres() / (cell.right - cell.left).inMillimetres();
  return atLeft.inMillimetres() + (atRight - atLeft).inMillimetres() * along;
}

LabelBlock levelLabel(const Piece& piece, const LengthStyle& style, double markHeight) {
  return {{{{piece.mark, markHeight, true}}, {{cutText(piece.blankLength, style), smallText, false}}}, false};
}

LabelBlock upwardLabel(const Piece& piece, const LengthStyle& style) {
  return {{{{piece.mark, smallText, true}, {cutText(piece.blankLength, style), smallText, false}}}, true};
}

LabelBlock markAlone(const Piece& piece, bool upward) { return {{{{piece.mark, smallText, true}}}, upward}; }

// All sheets of a wall are named in one manner where they can be: level when a full sheet is wide enough for it.
bool namedLevel(const WallView& view) {
  double widest = 0, cover = 0;
  for (const Piece& piece : view.layout->pieces) {
    widest = std::max(widest, levelLabel(piece, view.style, markText).width());
    const SeenPart seen = seenPart(view, piece);
    if (!seen.empty()) cover = std::max(cover, view.size(seen.right - seen.left));
  }
  return widest + 2 * besideSeam <= cover;
}

std::vector<LabelBlock> waysToName(const Piece& piece, const WallView& view, bool level) {
  const LabelBlock big = levelLabel(piece, view.style, markText), small = levelLabel(piece, view.style, smallText);
  const LabelBlock upward = upwardLabel(piece, view.style);
  if (level) return {big, small, upward, markAlone(piece, false), markAlone(piece, true)};
  return {upward, big, small, markAlone(piece, true), markAlone(piece, false)};
}

bool drawInside(Sketch& sketch, const std::vector<Column>& columns, const std::vector<LabelBlock>& ways, double height,
                PartIndex part) {
  for (const LabelBlock& way : ways) {
    const double width = way.width() + 2 * besideSeam, tall = way.height() + 2 * besideSeam;
    for (const PaperPoint& spot : spotsIn(columns, width, tall, height)) {
      if (!sketch.hasRoom(boxAround(way, spot))) continue;
      drawLabel(sketch, way, spot, part);
      return true;
    }
  }
  return false;
}

// Half way up the sheets, or nearest to that between two rows of girts, so that few screws lie under names.
double namingHeight(const WallView& view) {
  const WallFace& face = view.layout->face;
  const Length top = face.top.lowest(Length(), face.width), middle = half(top);
  std::vector<Length> levels{face.bottom.lowest(Length(), face.width)};
  for (const HeightLabel& row : rowHeights(view)) {
    if (row.z < top) levels.push_back(row.z);
  }
  levels.push_back(top);
  const auto off = [&](Length z) { return z < middle ? middle - z : z - middle; };
  Length best = levels.size() == 2 ? middle : half(levels[0] + levels[1]);
  for (std::size_t i = 1; i + 1 < levels.size(); ++i) {
    const Length between = half(levels[i] + levels[i + 1]);
    if (off(between) < off(best)) best = between;
  }
  return view.size(best);
}

// Where a line to the piece may end: near the upper or lower edge of its widest seen part, else of its first and last.
std::vector<PaperPoint> pointsOn(const std::vector<Column>& columns) {
  const auto widest = std::max_element(columns.begin(), columns.end(), [](const Column& a, const Column& b) {
    return a.right - a.left < b.right - b.left;
  });
  std::vector<PaperPoint> points;
  for (const Column& column : {*widest, columns.front(), columns.back()}) {
    const double x = (column.left + column.right) / 2;
    const double top = (column.topLeft + column.topRight) / 2, bottom = (column.bottomLeft + column.bottomRight) / 2;
    const double in = std::min(3.0, (top - bottom) / 2);
    points.push_back({x, -(top - in)});
    points.push_back({x, -(bottom + in)});
  }
  return points;
}

// A page has room for some fifty lines to sheets. Of more than that every second, fifth, tenth ... is named, so that
// the others are found by counting.
std::vector<Callout> thinned(std::vector<Callout> callouts, int& leftOut) {
  constexpr std::size_t most = 50;
  std::size_t every = 1;
  for (const std::size_t step : {2u, 5u, 10u, 20u, 50u, 100u}) {
    if (callouts.size() > most * every) every = step;
  }
  std::vector<Callout> kept;
  for (std::size_t i = 0; i < callouts.size() && kept.size() < most; i += every) kept.push_back(std::move(callouts[i]));
  leftOut += static_cast<int>(callouts.size() - kept.size());
  return kept;
}

}  // namespace

double narrowestNamed() { return lineOf(smallText) + 2 * besideSeam; }

std::vector<Column> seenColumns(const WallView& view, const Piece& piece) {
  const SeenPart seen = seenPart(view, piece);
  const double below = static_cast<double>(view.scale.below);
  const double top = view.size(seen.top);
  std::vector<Column> columns;
  for (const Cell& cell : piece.cells) {
    const Length left = std::max(cell.left, seen.left), right = std::min(cell.right, seen.right);
    if (left >= right) continue;
    const auto height = [&](Length atLeft, Length atRight, Length u) {
      return std::min(between(cell, atLeft, atRight, u) / below, top);
    };
    const Column column{view.x(left),
                        view.x(right),
                        height(cell.bottomLeft, cell.bottomRight, left),
                        height(cell.bottomLeft, cell.bottomRight, right),
                        height(cell.topLeft, cell.topRight, left),
                        height(cell.topLeft, cell.topRight, right)};
    if (column.topLeft > column.bottomLeft || column.topRight > column.bottomRight) columns.push_back(column);
  }
  return columns;
}

std::vector<Callout> drawPieceLabels(Sketch& sketch, const WallView& view, int& leftOut) {
  const bool level = namedLevel(view);
  const double height = namingHeight(view);
  std::vector<Callout> unnamed;
  for (const Piece& piece : view.layout->pieces) {
    if (!isNamedHere(view, piece)) continue;
    const std::vector<Column> columns = seenColumns(view, piece);
    if (columns.empty()) continue;
    const PartIndex part = sketch.part(Part::Kind::Piece, view.layout->letter, piece.mark);
    if (drawInside(sketch, columns, waysToName(piece, view, level), height, part)) continue;
    const LabelBlock label{
        {{{piece.mark, smallText, true}, {cutText(piece.blankLength, view.style), smallText, false}}}, false};
    unnamed.push_back({{label, markAlone(piece, false), markAlone(piece, true)}, pointsOn(columns), true, part});
  }
  return thinned(std::move(unnamed), leftOut);
}

}  // namespace ribwright
