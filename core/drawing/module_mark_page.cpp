#include "core/drawing/module_mark_page.h"

#include <algorithm>

#include "core/drawing/page_flow.h"
#include "core/drawing/shown_length.h"
#include "core/drawing/text_extent.h"
#include "core/layout/module_marks.h"

namespace ribwright {
namespace {

constexpr double markColumnGap = 6;
constexpr double markBlockGap = 12;
constexpr double tickBox = 3.6;

using Cells = std::vector<std::string>;

std::vector<Cells> cellsOf(const DrillWall& wall) {
  std::vector<Cells> rows;
  for (const ModuleMark& mark : moduleMarks(wall.layout())) {
    const std::string at = dimensionText(mark.running, wall.style);
    const char* id = mark.hung ? "marks.hangs" : mark.plumb ? "marks.plumb" : nullptr;
    rows.push_back({mark.mark, at, at, id ? wall.say(id) : std::string()});
  }
  return rows;
}

struct MarkColumns {
  std::vector<double> widths;
  double block = 0;
};

MarkColumns columnsOf(const Cells& headings, const std::vector<Cells>& rows) {
  MarkColumns columns;
  for (std::size_t i = 0; i < headings.size(); ++i) {
    double width = widthOf(headings[i], siteText, true);
    for (const Cells& row : rows)
      width = std::max(width, widthOf(row[i], siteText, false) + (i == 1 || i == 2 ? tickBox + 2 : 0));
    columns.widths.push_back(width);
    columns.block += width + (i > 0 ? markColumnGap : 0);
  }
  return columns;
}

void drawRow(Sketch& sketch, const MarkColumns& columns, const Cells& cells, bool heading, double left, double top) {
  double x = left;
  const double y = top + ascentOf(siteText);
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const bool figure = i == 1 || i == 2;
    const bool ticked = figure && !heading;
    if (ticked) sketch.rectangle({x, y - tickBox + 0.3, x + tickBox, y + 0.3}, thinLine);
    if (!cells[i].empty())
      sketch.text({{figure ? x + columns.widths[i] : x, y},
                   siteText,
                   figure ? TextAnchor::End : TextAnchor::Start,
                   0,
                   heading,
                   cells[i],
                   -1});
    x += columns.widths[i] + markColumnGap;
  }
}

}  // namespace

std::vector<BarePage> moduleMarkPages(const DrillWall& wall) {
  const std::vector<Cells> rows = cellsOf(wall);
  if (rows.empty()) return {};
  const Cells headings = {wall.say("marks.sheet"), wall.say("marks.base"), wall.say("marks.top"),
                          wall.say("marks.check")};
  const MarkColumns columns = columnsOf(headings, rows);
  const bool toRight = wall.layout().direction.hand == Hand::LeftToRight;
  const std::vector<PageBlock> words =
      paragraph(wall.say(toRight ? "marks.words.left" : "marks.words.right"), wall.work);
  const PageBlock top = together(words);
  const double room = wall.work.height() - top.height - 2;
  const auto down = static_cast<std::size_t>((room - siteLine - 2) / siteLine);
  const auto across = std::max<std::size_t>(
      1, static_cast<std::size_t>((wall.work.width() + markBlockGap) / (columns.block + markBlockGap)));
  std::vector<BarePage> pages;
  for (std::size_t first = 0; first < rows.size(); first += down * across) {
    pages.emplace_back();
    BarePage& page = pages.back();
    page.subject = wall.say("marks.subject");
    page.figures = "paper.marks-figures";
    top.draw(page.sketch, {wall.work.left, wall.work.top, wall.work.right, wall.work.top + top.height});
    for (std::size_t i = first; i < std::min(rows.size(), first + down * across); ++i) {
      const std::size_t block = (i - first) / down, line = (i - first) % down;
      const double left = wall.work.left + static_cast<double>(block) * (columns.block + markBlockGap);
      const double head = wall.work.top + top.height + 2;
      if (line == 0) {
        drawRow(page.sketch, columns, headings, true, left, head);
        page.sketch.line({left, head + siteLine}, {left + columns.block, head + siteLine}, thinLine);
      }
      drawRow(page.sketch, columns, rows[i], false, left, head + siteLine * static_cast<double>(line + 1) + 1.5);
    }
  }
  return pages;
}

}  // namespace ribwright
