#include "core/drawing/dimension_chain.h"

#include <algorithm>

#include "core/drawing/label_block.h"
#include "core/drawing/label_row.h"
#include "core/drawing/shown_length.h"

namespace ribwright {

namespace {

constexpr double tick = 1.4;      // half a tick's reach across and along
constexpr double overLine = 0.9;  // from a line to the figure over it
constexpr double rowDrop = 3.5;   // from the chain to the row of figures that did not fit over it
constexpr double rowReach = 14;   // a row may reach this far beyond the chain's ends

void drawTick(Sketch& sketch, const PaperPoint& at) {
  sketch.line({at.x - tick, at.y + tick}, {at.x + tick, at.y - tick}, openingLine);
}

// Figures that are wider than their spaces, in a row under the chain with a line to each, clear of the lines at its
// ends.
DrawnChain drawRow(Sketch& sketch, const WallView& view, const std::vector<const DimensionSpace*>& narrow, double y,
                   double left, double right) {
  if (narrow.empty()) return {y, 0};
  std::vector<RowLabel> level, upward;
  for (const DimensionSpace* space : narrow) {
    const double middle = (view.x(space->from) + view.x(space->to)) / 2;
    level.push_back({middle, widthOf(space->words, smallText, false)});
    upward.push_back({middle, lineOf(smallText)});
  }
  constexpr double gap = 1.5;
  auto places = rowOf(level, left - rowReach, right + rowReach, gap, {left, right});
  const bool isLevel = places && farthest(level, *places) < rowReach;
  if (!isLevel) places = rowOf(upward, left - rowReach, right + rowReach, 2 * textRoom + 0.2, {left, right});
  if (!places) return {y, static_cast<int>(narrow.size())};
  double lowest = y;
  for (std::size_t i = 0; i < narrow.size(); ++i) {
    const LabelBlock label{{{{narrow[i]->words, smallText, false}}}, !isLevel};
    const double top = y + rowDrop;
    sketch.line({level[i].wanted, y}, {(*places)[i], top - textRoom}, thinLine);
    drawLabel(sketch, label, {(*places)[i], top + label.height() / 2}, -1);
    lowest = std::max(lowest, top + label.height());
  }
  return {lowest, 0};
}

}  // namespace

std::vector<DimensionSpace> spacesBetween(std::vector<Length> places, const LengthStyle& style) {
  std::sort(places.begin(), places.end());
  std::vector<Length> marked;
  for (const Length place : places) {
    if (marked.empty() || asTapeReads(place, style) != asTapeReads(marked.back(), style)) marked.push_back(place);
  }
  std::vector<DimensionSpace> spaces;
  for (std::size_t i = 1; i < marked.size(); ++i) {
    const Length printed = asTapeReads(marked[i], style) - asTapeReads(marked[i - 1], style);
    spaces.push_back({marked[i - 1], marked[i], dimensionText(printed, style)});
  }
  return spaces;
}

DrawnChain drawChain(Sketch& sketch, const WallView& view, const std::vector<DimensionSpace>& spaces, double y) {
  if (spaces.empty()) return {y, 0};
  const double left = view.x(spaces.front().from), right = view.x(spaces.back().to);
  sketch.line({left - tick, y}, {right + tick, y}, thinLine);
  drawTick(sketch, {left, y});
  std::vector<const DimensionSpace*> narrow;
  for (const DimensionSpace& space : spaces) {
    const double from = view.x(space.from), to = view.x(space.to);
    drawTick(sketch, {to, y});
    const double room = to - from - 2 * tick - 1;
    if (widthOf(space.words, smallText, false) > room) {
      narrow.push_back(&space);
      continue;
    }
    const double middle = y - overLine - descentOf(smallText) - lineOf(smallText) / 2 + descentOf(smallText);
    drawLabel(sketch, {{{{space.words, smallText, false}}}, false}, {(from + to) / 2, middle}, -1);
  }
  return drawRow(sketch, view, narrow, y + tick, left, right);
}

void drawHeight(Sketch& sketch, const WallView& view, double x, Length height, double outward,
                const std::string& longWords, const std::string& shortWords) {
  const double top = view.y(height);
  const double wall = outward < 0 ? 0 : view.x(view.to);
  constexpr double offWall = 1.5;
  sketch.line({wall + outward * offWall, top}, {x + outward * tick, top}, thinLine);
  sketch.line({x, tick}, {x, top - tick}, thinLine);
  drawTick(sketch, {x, 0});
  drawTick(sketch, {x, top});
  const double room = -top - 2 * tick - 2 * textRoom - openingLine;
  for (const std::string& words : {longWords, shortWords}) {
    const LabelBlock label{{{{words, smallText, false}}}, true};
    if (label.height() > room) continue;
    return drawLabel(sketch, label, {x + outward * (overLine + label.width() / 2), top / 2}, -1);
  }
  const LabelBlock level{{{{shortWords, smallText, false}}}, false};
  drawLabel(sketch, level, {x + outward * (tick + overLine + level.width() / 2), top / 2}, -1);
}

}  // namespace ribwright
