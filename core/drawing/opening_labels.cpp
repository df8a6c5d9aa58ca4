#include "core/drawing/opening_labels.h"

#include <algorithm>

#include "core/drawing/face_picture.h"
#include "core/drawing/shown_length.h"

namespace ribwright {

namespace {

constexpr double besideFrame = 0.6;

std::vector<LabelBlock> waysToName(const WallView& view, const CutRegion& cut) {
  const LabelRun id{cut.id, markText, true}, small{cut.id, smallText, true};
  const std::string size = sizeWords(view, cut.id);
  const LabelLine sizeLine{{size, smallText, false}};
  LabelBlock full{{{id}, sizeLine}, false};
  if (!cut.reachesFloor && !cut.penetration && cut.steelBottom) {
    const std::string sill = view.say("paper.sill", {{"height", dimensionText(*cut.steelBottom, view.style)}});
    full.lines.push_back({{sill, smallText, false}});
  }
  // A size as "4' 0\" ×" over "3' 0\"".
  const std::string times = " × ";
  const std::size_t by = size.find(times);
  LabelBlock split{{{id}}, false};
  if (by != std::string::npos) {
    split.lines.push_back({{size.substr(0, by + times.size() - 1), smallText, false}});
    split.lines.push_back({{size.substr(by + times.size()), smallText, false}});
  }
  const LabelBlock two{{{id}, sizeLine}, false}, twoUp{{{small}, sizeLine}, true};
  const LabelBlock oneUp{{{{cut.id, smallText, true}, {size, smallText, false}}}, true};
  return {full, two, split, twoUp, oneUp, {{{small}}, false}, {{{small}}, true}};
}

bool drawInside(Sketch& sketch, const WallView& view, const CutRegion& cut, const std::vector<Column>& columns,
                PartIndex part) {
  double low = 1e9, high = -1e9;
  for (const Column& column : columns) {
    low = std::min({low, column.bottomLeft, column.bottomRight});
    high = std::max({high, column.topLeft, column.topRight});
  }
  for (const LabelBlock& way : waysToName(view, cut)) {
    const double width = way.width() + 2 * besideFrame, tall = way.height() + 2 * besideFrame;
    for (const PaperPoint& spot : spotsIn(columns, width, tall, (low + high) / 2)) {
      if (!sketch.hasRoom(boxAround(way, spot))) continue;
      drawLabel(sketch, way, spot, part);
      return true;
    }
  }
  return false;
}

}  // namespace

std::vector<Column> openColumns(const WallView& view, const CutRegion& cut) {
  const WallFace& face = view.layout->face;
  std::vector<Length> places{std::max({cut.left, view.from, Length()}), std::min({cut.right, view.to, face.width})};
  if (places[0] >= places[1]) return {};
  for (const HeightLine* line : {&cut.lower, &cut.upper, &face.top, &face.bottom}) {
    for (const FaceVertex& vertex : line->vertices()) {
      if (vertex.u > places[0] && vertex.u < places[1]) places.push_back(vertex.u);
    }
  }
  std::sort(places.begin(), places.end());
  places.erase(std::unique(places.begin(), places.end()), places.end());
  std::vector<Column> columns;
  for (std::size_t i = 0; i + 1 < places.size(); ++i) {
    const auto first = openHeights(*view.layout, cut, places[i], Beside::Right);
    const auto last = openHeights(*view.layout, cut, places[i + 1], Beside::Left);
    columns.push_back({view.x(places[i]), view.x(places[i + 1]), view.size(first[0]), view.size(last[0]),
                       view.size(first[1]), view.size(last[1])});
  }
  return columns;
}

std::string sizeWords(const WallView& view, const std::string& id) {
  for (const Opening& opening : view.wall->openings) {
    if (opening.id == id)
      return dimensionText(opening.width, view.style) + " × " + dimensionText(opening.height, view.style);
  }
  for (const Penetration& hole : view.wall->penetrations) {
    if (hole.id != id) continue;
    if (hole.shape == Penetration::Shape::Round) return "ø " + dimensionText(hole.width, view.style);
    return dimensionText(hole.width, view.style) + " × " + dimensionText(hole.height, view.style);
  }
  return {};
}

bool isNamedHere(const WallView& view, const CutRegion& cut) {
  const Length left = std::max(cut.left, Length()), right = std::min(cut.right, view.layout->face.width);
  const Length middle = half(left + right);
  return middle >= view.from && (middle < view.to || (view.hasRightCorner() && middle <= view.to));
}

std::vector<Callout> drawOpeningLabels(Sketch& sketch, const WallView& view) {
  std::vector<Callout> unnamed;
  for (const CutRegion& cut : view.layout->cuts) {
    if (!isNamedHere(view, cut)) continue;
    const std::vector<Column> columns = openColumns(view, cut);
    if (columns.empty()) continue;
    const auto kind = cut.penetration ? Part::Kind::Penetration : Part::Kind::Opening;
    const PartIndex part = sketch.part(kind, view.layout->letter, cut.id);
    if (drawInside(sketch, view, cut, columns, part)) continue;
    const LabelBlock label{{{{cut.id, smallText, true}, {sizeWords(view, cut.id), smallText, false}}}, false};
    Callout callout{{label, {{{{cut.id, smallText, true}}}, false}}, {}, true, part};
    for (const Column& column : columns) {
      const double middle = (column.bottomLeft + column.bottomRight + column.topLeft + column.topRight) / 4;
      for (const double share : {0.5, 0.25, 0.75}) {
        callout.points.push_back({column.left + share * (column.right - column.left), -middle});
      }
    }
    unnamed.push_back(callout);
  }
  return unnamed;
}

}  // namespace ribwright
