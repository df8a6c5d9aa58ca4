#include "core/drawing/paper_table.h"

#include <algorithm>
#include <cmath>

#include "core/drawing/text_extent.h"

namespace ribwright {

namespace {

constexpr double columnGap = 3;
constexpr double blockGap = 7;
constexpr double titleText = 3;

double rowHeight() { return lineOf(smallText) + 0.7; }
double tableTitleHeight() { return lineOf(titleText) + 1; }
double headHeight() { return tableTitleHeight() + rowHeight() + 0.8; }

struct Columns {
  std::vector<double> widths;
  double block() const {
    double sum = columnGap * static_cast<double>(widths.size() - 1);
    for (const double width : widths) sum += width;
    return sum;
  }
};

// Widths are of all rows, so that blocks and pages of one table look alike; a block never exceeds the room.
Columns columnsOf(const PaperTable& table, double room) {
  Columns columns;
  for (std::size_t i = 0; i < table.headings.size(); ++i) {
    double width = widthOf(table.headings[i], smallText, true);
    for (const auto& row : table.rows) width = std::max(width, widthOf(row[i], smallText, false));
    columns.widths.push_back(width);
  }
  while (columns.block() > room) {
    auto widest = std::max_element(columns.widths.begin(), columns.widths.end());
    const double excess = columns.block() - room;
    if (*widest <= 10) break;
    *widest = std::max(10.0, *widest - excess);
  }
  return columns;
}

int blocksAcross(const Columns& columns, double width) {
  return std::max(1, static_cast<int>((width + blockGap) / (columns.block() + blockGap)));
}

void drawCell(Sketch& sketch, const std::string& words, bool bold, bool atRight, double left, double width,
              double baseline) {
  if (words.empty()) return;
  const std::string shown = shortened(words, smallText, bold, width);
  const double x = atRight ? left + width : left;
  sketch.text({{x, baseline}, smallText, atRight ? TextAnchor::End : TextAnchor::Start, 0, bold, shown, -1});
}

void drawBlock(Sketch& sketch, const PaperTable& table, const Columns& columns, double left, double top, int first,
               int count) {
  const auto cells = [&](const std::vector<std::string>& row, bool bold, double baseline) {
    double x = left;
    for (std::size_t i = 0; i < row.size(); ++i) {
      drawCell(sketch, row[i], bold, table.figures[i], x, columns.widths[i], baseline);
      x += columns.widths[i] + columnGap;
    }
  };
  double y = top + ascentOf(smallText);
  cells(table.headings, true, y);
  const double rule = y + descentOf(smallText) + 0.5;
  sketch.line({left, rule}, {left + columns.block(), rule}, thinLine);
  y += rowHeight() + 0.8;
  for (int i = first; i < first + count; ++i) {
    cells(table.rows[static_cast<std::size_t>(i)], false, y);
    y += rowHeight();
  }
}

}  // namespace

double heightOf(const PaperTable& table, double width, int first) {
  const int rows = static_cast<int>(table.rows.size()) - first;
  if (rows <= 0) return 0;
  const int across = blocksAcross(columnsOf(table, width), width);
  const int down = (rows + across - 1) / across;
  return headHeight() + rowHeight() * down;
}

int drawTable(Sketch& sketch, const PaperTable& table, const Box& room, int first) {
  const Columns columns = columnsOf(table, room.width());
  const int across = blocksAcross(columns, room.width());
  const int rows = static_cast<int>(table.rows.size()) - first;
  const int down =
      std::min(static_cast<int>((room.height() - headHeight()) / rowHeight() + 1e-6), (rows + across - 1) / across);
  if (rows <= 0 || down < 1) return first;
  sketch.text({{room.left, room.top + ascentOf(titleText)},
               titleText,
               TextAnchor::Start,
               0,
               true,
               shortened(table.title, titleText, true, room.width()),
               -1});
  int row = first;
  for (int block = 0; block < across && row < first + rows; ++block) {
    const int count = std::min(down, first + rows - row);
    drawBlock(sketch, table, columns, room.left + block * (columns.block() + blockGap), room.top + tableTitleHeight(),
              row, count);
    row += count;
  }
  return row;
}

}  // namespace ribwright
