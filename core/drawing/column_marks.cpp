#include "core/drawing/column_marks.h"

#include <algorithm>
#include <optional>
#include <string>

#include "core/drawing/label_block.h"
#include "core/drawing/label_row.h"
#include "core/drawing/text_extent.h"
#include "core/layout/wall_face.h"

namespace ribwright {

namespace {

constexpr double offSheetEnds =
    2.6;                         // from the lower end of the sheets, past the ends of their ribs, to a number's frame
constexpr double inFrame = 0.7;  // from a number to its frame
constexpr double numberGap = 2 * textRoom + 2 * thinLine;

LabelBlock numberOf(const ColumnPlace& column) { return {{{{std::to_string(column.number), smallText, true}}}, false}; }

double frameHeight() { return lineOf(smallText) + 2 * inFrame; }

// Of more columns than have room every second, third ... is numbered.
std::vector<ColumnPlace> everyOf(const std::vector<ColumnPlace>& columns, std::size_t step) {
  std::vector<ColumnPlace> kept;
  for (std::size_t i = 0; i < columns.size(); i += step) kept.push_back(columns[i]);
  return kept;
}

}  // namespace

std::vector<ColumnPlace> columnPlaces(const Wall& wall, Length width) {
  std::vector<ColumnPlace> places;
  int number = 0;
  for (const Length u : columnsOf(wall.columns)) {
    ++number;
    if (u >= Length() && u <= width) places.push_back({number, u});
  }
  return places;
}

std::vector<ColumnPlace> columnsSeen(const WallView& view) {
  std::vector<ColumnPlace> places = columnPlaces(*view.wall, view.layout->face.width);
  std::erase_if(places, [&](const ColumnPlace& place) { return !view.shows(place.u); });
  return places;
}

std::optional<ColumnPlace> nearestColumn(const Wall& wall, Length width, Length u) {
  std::optional<ColumnPlace> nearest;
  for (const ColumnPlace& place : columnPlaces(wall, width)) {
    if (!nearest || absolute(place.u - u) < absolute(nearest->u - u)) nearest = place;
  }
  return nearest;
}

double roomForColumnMarks(const WallView& view) {
  return columnsSeen(view).empty() ? 0 : offSheetEnds + frameHeight() + textRoom;
}

int drawColumnMarks(Sketch& sketch, const WallView& view, double base, const std::vector<double>& barred) {
  const std::vector<ColumnPlace> all = columnsSeen(view);
  std::vector<double> inner = barred;
  std::erase_if(inner, [&](double line) { return line <= 0 || line >= view.x(view.to); });
  for (std::size_t step = 1; step <= all.size(); ++step) {
    const std::vector<ColumnPlace> numbered = everyOf(all, step);
    std::vector<RowLabel> labels;
    for (const ColumnPlace& column : numbered)
      labels.push_back({view.x(column.u), numberOf(column).width() + 2 * inFrame});
    const auto places = rowOf(labels, numberGap / 2, view.x(view.to) - numberGap / 2, numberGap, inner);
    if (!places) continue;
    const double top = base + offSheetEnds;
    for (std::size_t i = 0; i < numbered.size(); ++i) {
      const LabelBlock number = numberOf(numbered[i]);
      const PaperPoint middle{(*places)[i], top + frameHeight() / 2};
      const double x = view.x(numbered[i].u);
      drawLabel(sketch, number, middle, -1);
      sketch.rectangle(boxAround(number, middle).grown(inFrame), thinLine);
      sketch.polyline({{x, base + 0.5}, {middle.x, top}}, thinLine);
    }
    return static_cast<int>(all.size() - numbered.size());
  }
  return static_cast<int>(all.size());
}

}  // namespace ribwright
