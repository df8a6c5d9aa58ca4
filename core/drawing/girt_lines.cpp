#include "core/drawing/girt_lines.h"

#include <algorithm>

#include "core/drawing/label_block.h"
#include "core/drawing/label_row.h"
#include "core/drawing/shown_length.h"
#include "core/drawing/text_extent.h"

namespace ribwright {

namespace {

constexpr double offWall = 0.8;       // clear paper between the wall and the line to a height
constexpr double leader = 4.6;        // from the wall to the column: past the concrete's line
constexpr double widestName = 24;     // a longer one is closed with an ellipsis
constexpr double overWall = 12;       // the column may reach this far above the wall
constexpr double roundLabels = 0.75;  // more than half the space between the words of one label
constexpr double shortestDash = 1;    // what is left of a line between two texts is drawn from this length on

// Calls with each stretch of a girt's own steel that this drawing reaches, and its limits there.
template <class Visit>
void forGirts(const WallView& view, const Visit& visit) {
  if (!view.holes) return;
  for (const SupportRow& row : view.holes->supports.rows) {
    if (row.kind != SupportKind::Girt) continue;
    for (const Stretch& stretch : row.stretches) {
      const Length from = std::max(stretch.from, view.from), to = std::min(stretch.to, view.to);
      if (stretch.steel == Stretch::Steel::Own && from < to) visit(stretch, from, to);
    }
  }
}

std::string rowWords(const WallView& view, const Stretch& stretch) {
  const std::string name = shortened(stretch.name, smallText, false, widestName);
  return view.say("paper.row", {{"name", name}, {"height", dimensionText(stretch.row, view.style)}});
}

// Cuts a part, from x = a to b, down to where the wall's edge keeps to the right side of the line: it is `atA` off it
// at a and `atB` at b, below 0 on the wrong side.
void keepWhere(LevelPart& part, double a, double b, double atA, double atB) {
  if (atA < 0 && atB < 0) part.to = part.from - 1;
  if ((atA < 0) == (atB < 0)) return;
  const double crossing = a + (b - a) * atA / (atA - atB);
  if (atA < 0) part.from = std::max(part.from, crossing);
  if (atB < 0) part.to = std::min(part.to, crossing);
}

std::vector<RowLabel> columnOf(const WallView& view, const std::vector<RowHeight>& heights) {
  std::vector<RowLabel> labels;
  for (auto row = heights.rbegin(); row != heights.rend(); ++row) labels.push_back({view.y(row->z), lineOf(smallText)});
  return labels;
}

// y of lines left of the wall that no height may stand on: the concrete, and the mark of the corner's height.
std::vector<double> barredLines(const WallView& view) {
  const WallFace& face = view.layout->face;
  std::vector<double> barred{view.y(face.concrete.heightAt(view.from, Beside::Right))};
  if (view.hasLeftCorner()) barred.push_back(view.y(face.steel.heightAt(view.from, Beside::Right)));
  std::sort(barred.begin(), barred.end());
  return barred;
}

// Of more rows than the column holds every second, third ... is named.
std::vector<RowHeight> everyOf(const std::vector<RowHeight>& heights, std::size_t step) {
  std::vector<RowHeight> kept;
  for (std::size_t i = 0; i < heights.size(); i += step) kept.push_back(heights[i]);
  return kept;
}

void drawRow(Sketch& sketch, const WallView& view, const RowHeight& row, double y) {
  const LabelBlock label{{{{row.words, smallText, false}}}, false};
  const auto parts = partsInFace(view, row.z, view.from, view.to);
  const double wall = parts.empty() ? 0 : parts.front().from, height = view.y(row.z);
  std::vector<PaperPoint> line{{-leader + textRoom, y}, {-offWall, height}};
  if (wall > offWall) line.push_back({wall - offWall, height});
  sketch.polyline(std::move(line), thinLine);
  drawLabel(sketch, label, {-leader - label.width() / 2, y}, -1);
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

std::vector<RowHeight> rowHeights(const WallView& view) {
  std::vector<RowHeight> heights;
  forGirts(view, [&](const Stretch& stretch, Length from, Length to) {
    if (partsInFace(view, stretch.row, from, to).empty()) return;
    const std::string words = rowWords(view, stretch);
    const bool known =
        std::any_of(heights.begin(), heights.end(), [&](const RowHeight& row) { return row.words == words; });
    if (!known) heights.push_back({words, stretch.row});
  });
  std::stable_sort(heights.begin(), heights.end(), [](const RowHeight& a, const RowHeight& b) { return a.z < b.z; });
  return heights;
}

double roomForRowHeights(const WallView& view) {
  double widest = 0;
  for (const RowHeight& row : rowHeights(view)) widest = std::max(widest, widthOf(row.words, smallText, false));
  return widest == 0 ? 0 : leader + widest;
}

int drawRowHeights(Sketch& sketch, const WallView& view) {
  const std::vector<RowHeight> all = rowHeights(view);
  const double high = view.y(highestSeen(view)) - overWall, low = view.y(lowestSeen(view));
  constexpr double gap = 2 * textRoom + 0.1;
  for (std::size_t step = 1; step <= all.size(); ++step) {
    const std::vector<RowHeight> named = everyOf(all, step);
    const auto places = rowOf(columnOf(view, named), high, low, gap, barredLines(view));
    if (!places) continue;
    for (std::size_t i = 0; i < named.size(); ++i) drawRow(sketch, view, named[named.size() - 1 - i], (*places)[i]);
    return static_cast<int>(all.size() - named.size());
  }
  return static_cast<int>(all.size());
}

void drawGirtLines(Sketch& sketch, const WallView& view) {
  forGirts(view, [&](const Stretch& stretch, Length from, Length to) {
    const double y = view.y(stretch.row);
    for (const LevelPart& part : partsInFace(view, stretch.row, from, to)) {
      for (const auto& [a, b] : sketch.clearParts({part.from, y}, {part.to, y}, roundLabels)) {
        if (b.x - a.x >= shortestDash) sketch.line(a, b, thinLine, Dash::Dashed);
      }
    }
  });
}

}  // namespace ribwright
