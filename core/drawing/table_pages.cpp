#include <charconv>

#include "core/drawing/order_pages.h"
#include "core/units/length_text.h"

namespace ribwright {
namespace {

constexpr double betweenTables = 5;  // mm from one table to the next

// Sheets are known by decimals of an inch, or of a millimetre: four, or three.
std::string thicknessText(Length thickness, UnitSystem units) {
  const bool feet = units == UnitSystem::FeetInches;
  char buffer[64];
  const auto end =
      std::to_chars(buffer, buffer + sizeof buffer, feet ? thickness.inInches() : thickness.inMillimetres(),
                    std::chars_format::fixed, feet ? 4 : 3);
  std::string text(buffer, end.ptr);
  while (text.back() == '0') text.pop_back();
  if (text.back() == '.') text.pop_back();
  return text.append(feet ? " in" : " mm");
}

}  // namespace

std::vector<BarePage> tablePages(const std::vector<PaperTable>& tables, const std::string& subject,
                                 const PageFrame& frame, const std::string& figures) {
  PageFrame own = frame;
  own.figures = figures;
  const Box work = workArea(own);
  std::vector<BarePage> pages;
  const auto begin = [&] {
    BarePage page;
    page.subject = subject;
    page.figures = figures;
    page.wall = BarePage::wholeJob;
    pages.push_back(std::move(page));
  };
  double top = work.bottom;
  for (const PaperTable& table : tables) {
    const int rows = static_cast<int>(table.rows.size());
    for (int row = 0; row < rows;) {
      const Box room{work.left, top, work.right, work.bottom};
      // A table that fits on a page by itself is not begun where it would be broken.
      const double height = heightOf(table, work.width(), row);
      const bool breaks = height > room.height() && height <= work.height();
      const int next = pages.empty() || breaks ? row : drawTable(pages.back().sketch, table, room, row);
      if (next == row) {
        // Nothing fits on a whole page either: a row taller than paper cannot be, so this ends.
        if (!pages.empty() && top <= work.top) return pages;
        begin();
        top = work.top;
        continue;
      }
      top = next == rows ? top + height + betweenTables : work.bottom;
      row = next;
    }
  }
  return pages;
}

std::string classWords(const SheetClass& sheet, const PageFrame& frame) {
  std::string words = sheet.profile;
  words += ", ";
  words += thicknessText(sheet.thickness, frame.job->units);
  const std::string colour = sheet.translucent ? frame.words->say("paper.kind.translucent", {}, {}) : sheet.colour;
  if (!colour.empty()) words += ", ";
  return words + colour;
}

std::vector<std::string> brokenMarks(const std::vector<std::string>& marks, std::size_t letters) {
  std::vector<std::string> lines(1);
  for (const std::string& mark : marks) {
    std::string& last = lines.back();
    if (last.empty()) {
      last = mark;
    } else if (last.size() + 1 + mark.size() <= letters) {
      last += ' ';
      last += mark;
    } else {
      lines.push_back(mark);
    }
  }
  return lines;
}

}  // namespace ribwright
