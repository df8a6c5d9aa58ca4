#include "core/drawing/wall_chains.h"

#include <algorithm>

#include "core/drawing/column_marks.h"
#include "core/drawing/dimension_chain.h"
#include "core/drawing/hang_sign.h"

namespace ribwright {

namespace {

constexpr double underLabels = 5;
constexpr double betweenChains = 6;
constexpr double offSheets = 1;
constexpr double pastChain = 1.5;
constexpr double shortestPart = 1;  // of a line that texts interrupt

std::vector<Length> jambPlaces(const WallView& view) {
  std::vector<Length> places{view.from, view.to};
  for (const CutRegion& cut : view.layout->cuts) {
    if (cut.penetration) continue;
    for (const auto& jamb : {cut.steelLeft, cut.steelRight}) {
      if (jamb && *jamb > view.from && *jamb < view.to) places.push_back(*jamb);
    }
  }
  return places;
}

std::vector<Length> bayPlaces(const WallView& view) {
  std::vector<Length> places{view.from, view.to};
  for (const ColumnPlace& column : columnsSeen(view)) places.push_back(column.u);
  return places;
}

// From a column's number to the chain of bays, wherever no figure stands.
void drawColumnLines(Sketch& sketch, const WallView& view, double top, double bottom) {
  for (const ColumnPlace& column : columnsSeen(view)) {
    if (column.u <= view.from || column.u >= view.to) continue;
    const double x = view.x(column.u);
    for (const auto& [a, b] : sketch.clearParts({x, top}, {x, bottom}, textRoom + thinLine)) {
      if (b.y - a.y >= shortestPart) sketch.line(a, b, thinLine, Dash::Chain);
    }
  }
}

}  // namespace

std::vector<double> witnessLines(const WallView& view) {
  std::vector<double> lines;
  for (const Length place : jambPlaces(view)) lines.push_back(view.x(place));
  std::sort(lines.begin(), lines.end());
  return lines;
}

void reserveWitnessLines(Sketch& sketch, const WallView& view, double base) {
  constexpr double reach = 60;
  for (const double x : witnessLines(view)) sketch.reserve({x, base}, {x, base + reach});
}

int drawWallChains(Sketch& sketch, const WallView& view, double base) {
  const auto jambs = spacesBetween(jambPlaces(view), view.style), bays = spacesBetween(bayPlaces(view), view.style);
  const double columns = base + roomForColumnMarks(view);
  double y = std::max(base + startFlagRoom, sketch.bounds().bottom + underLabels);
  int withoutPlace = 0;
  const auto draw = [&](const std::vector<DimensionSpace>& spaces) {
    const DrawnChain chain = drawChain(sketch, view, spaces, y);
    withoutPlace += chain.withoutPlace;
    return chain.lowest + betweenChains;
  };
  if (jambs.size() > 1) {
    const double next = draw(jambs);
    for (std::size_t i = 1; i < jambs.size(); ++i) {
      const double x = view.x(jambs[i].from);
      sketch.line({x, base + offSheets}, {x, y + pastChain}, thinLine);
    }
    y = next;
  }
  if (bays.size() > 1 && view.bays) {
    const double next = draw(bays);
    drawColumnLines(sketch, view, columns, y + pastChain);
    y = next;
  }
  for (const Length end : {view.from, view.to})
    sketch.line({view.x(end), base + offSheets}, {view.x(end), y + pastChain}, thinLine);
  draw(spacesBetween({view.from, view.to}, view.style));
  return withoutPlace;
}

}  // namespace ribwright
