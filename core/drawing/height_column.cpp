#include "core/drawing/height_column.h"

#include <algorithm>

#include "core/drawing/label_block.h"
#include "core/drawing/label_row.h"
#include "core/drawing/text_extent.h"

namespace ribwright {

namespace {

constexpr double offWall = 0.8;  // clear paper between the wall and the line to a height
constexpr double leader = 4.6;   // from the wall to the column: past the concrete's line
constexpr double overWall = 12;  // the column may reach this far above the wall
constexpr double signGap = 1.2;  // from a girt's sign to its words
constexpr double signRoom = 2 * flangeReach + signGap;
constexpr double signLine = 0.5;

// Cuts a part, from x = a to b, down to where the wall's edge keeps to the right side of the line: it is `atA` off it
// at a and `atB` at b, below 0 on the wrong side.
void keepWhere(LevelPart& part, double a, double b, double atA, double atB) {
  if (atA < 0 && atB < 0) part.to = part.from - 1;
  if ((atA < 0) == (atB < 0)) return;
  const double crossing = a + (b - a) * atA / (atA - atB);
  if (atA < 0) part.from = std::max(part.from, crossing);
  if (atB < 0) part.to = std::min(part.to, crossing);
}

std::vector<RowLabel> columnOf(const WallView& view, const std::vector<HeightLabel>& heights) {
  std::vector<RowLabel> labels;
  for (auto row = heights.rbegin(); row != heights.rend(); ++row) labels.push_back({view.y(row->z), lineOf(smallText)});
  return labels;
}

// y of lines beside the wall that no height may stand on: the concrete, and the mark of the corner's height.
std::vector<double> barredLines(const WallView& view, double outward) {
  const WallFace& face = view.layout->face;
  const bool left = outward < 0;
  const Length u = left ? view.from : view.to;
  const Beside side = left ? Beside::Right : Beside::Left;
  std::vector<double> barred{view.y(face.concrete.heightAt(u, side))};
  if (left ? view.hasLeftCorner() : view.hasRightCorner()) barred.push_back(view.y(face.steel.heightAt(u, side)));
  std::sort(barred.begin(), barred.end());
  return barred;
}

// Of more heights than the column holds every second, third ... is named.
std::vector<HeightLabel> everyOf(const std::vector<HeightLabel>& heights, std::size_t step) {
  std::vector<HeightLabel> kept;
  for (std::size_t i = 0; i < heights.size(); i += step) kept.push_back(heights[i]);
  return kept;
}

void drawOne(Sketch& sketch, const WallView& view, const HeightLabel& row, double y, double outward) {
  const LabelBlock label{{{{row.words, smallText, false}}}, false};
  const double edge = outward < 0 ? 0 : view.x(view.to), height = view.y(row.z);
  const auto off = [&](double distance) { return edge + outward * distance; };
  const auto parts = partsInFace(view, row.z, view.from, view.to);
  const double wall = parts.empty() ? edge : outward < 0 ? parts.front().from : parts.back().to;
  std::vector<PaperPoint> line{{off(leader - textRoom), y}, {off(offWall), height}};
  if ((edge - wall) * outward > offWall) line.push_back({wall + outward * offWall, height});
  sketch.polyline(std::move(line), thinLine);
  drawLabel(sketch, label, {off(leader + label.width() / 2), y}, -1);
  if (!row.flange) return;
  const PaperPoint sign{off(leader + label.width() + signGap + flangeReach), y};
  sketch.marks({flangeRing(*row.flange, sign)});
  for (const double side : {-flangeReach, flangeReach})  // no text stands over it
    sketch.reserve({sign.x + side, sign.y - flangeReach}, {sign.x + side, sign.y + flangeReach});
}

}  // namespace

std::vector<LevelPart> partsInFace(const WallView& view, Length z, Length from, Length to) {
  const WallFace& face = view.layout->face;
  std::vector<Length> breaks{from, to};
  for (const HeightLine* line : {&face.top, &face.bottom}) {
    for (const FaceVertex& vertex : line->vertices()) {
      if (vertex.u > from && vertex.u < to) breaks.push_back(vertex.u);
    }
  }
  std::sort(breaks.begin(), breaks.end());
  std::vector<LevelPart> parts;
  for (std::size_t i = 0; i + 1 < breaks.size(); ++i) {
    const double a = view.x(breaks[i]), b = view.x(breaks[i + 1]);
    const auto over = [&](const HeightLine& line, Length u, Beside side) {
      return view.size(line.heightAt(u, side) - z);
    };
    LevelPart part{a, b};
    keepWhere(part, a, b, over(face.top, breaks[i], Beside::Right), over(face.top, breaks[i + 1], Beside::Left));
    keepWhere(part, a, b, -over(face.bottom, breaks[i], Beside::Right),
              -over(face.bottom, breaks[i + 1], Beside::Left));
    if (part.to <= part.from) continue;
    if (!parts.empty() && parts.back().to == part.from) {
      parts.back().to = part.to;
    } else {
      parts.push_back(part);
    }
  }
  return parts;
}

std::vector<PaperPoint> flangeRing(Girt::Flange flange, const PaperPoint& at) {
  const double r = flangeReach, up = flange == Girt::Flange::Up ? -1 : 1, half = signLine / 2;
  const double web = at.y - up * r;  // so that the sign's middle is at the words'
  return {{at.x - r, web - up * half},
          {at.x + r, web - up * half},
          {at.x + r, web + up * 2 * r},
          {at.x + r - signLine, web + up * 2 * r},
          {at.x + r - signLine, web + up * half},
          {at.x - r, web + up * half}};
}

double roomForHeights(const std::vector<HeightLabel>& heights) {
  double widest = 0;
  for (const HeightLabel& row : heights)
    widest = std::max(widest, widthOf(row.words, smallText, false) + (row.flange ? signRoom : 0));
  return widest == 0 ? 0 : leader + widest;
}

int drawHeights(Sketch& sketch, const WallView& view, const std::vector<HeightLabel>& all, double outward) {
  const double high = view.y(highestSeen(view)) - overWall, low = view.y(lowestSeen(view));
  constexpr double gap = 2 * textRoom + 0.1;
  for (std::size_t step = 1; step <= all.size(); ++step) {
    const std::vector<HeightLabel> named = everyOf(all, step);
    const auto places = rowOf(columnOf(view, named), high, low, gap, barredLines(view, outward));
    if (!places) continue;
    for (std::size_t i = 0; i < named.size(); ++i)
      drawOne(sketch, view, named[named.size() - 1 - i], (*places)[i], outward);
    return static_cast<int>(all.size() - named.size());
  }
  return static_cast<int>(all.size());
}

}  // namespace ribwright
