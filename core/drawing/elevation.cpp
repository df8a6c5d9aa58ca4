#include "core/drawing/elevation.h"

#include <algorithm>
#include <optional>

#include "core/drawing/elevation_fit.h"
#include "core/drawing/text_extent.h"
#include "core/drawing/wall_tables.h"
#include "core/job/fingerprint.h"

namespace ribwright {

namespace {

// Tables that have no room under a drawing: the pages they take by themselves.
std::vector<Sketch> tablePages(const Elevation& elevation) {
  std::vector<Sketch> pages;
  Box room{};
  for (const PaperTable& table : elevation.tables) {
    int row = 0;
    const int rows = static_cast<int>(table.rows.size());
    bool fresh = pages.empty();
    while (row < rows) {
      if (fresh) {
        pages.emplace_back();
        room = elevation.work;
      }
      const int next = drawTable(pages.back(), table, room, row);
      if (next == row && fresh) return pages;  // not even one row fits a page of its own
      if (next < rows) {
        fresh = true;
      } else {
        room.top += heightOf(table, room.width(), row) + overTable;
      }
      row = next;
    }
  }
  return pages;
}

void drawTablesUnder(Sketch& sketch, const Elevation& elevation, double top) {
  Box room = elevation.work;
  room.top = top;
  for (const PaperTable& table : elevation.tables) {
    const double height = heightOf(table, room.width());
    if (height == 0) continue;
    room.top += overTable;
    drawTable(sketch, table, room);
    room.top += height;
  }
}

// The picture at `top` in the middle of the work area, with a word about labels that the tables hold alone. Gives its
// lower end.
double drawPicture(Sketch& sketch, const Elevation& elevation, const WallPicture& picture, double top) {
  const Box& work = elevation.work;
  Drawing drawing = picture.drawing;
  const double dx = work.left + (work.width() - picture.bounds.width()) / 2 - picture.bounds.left;
  shift(drawing, dx, top - picture.bounds.top);
  append(sketch.drawing, std::move(drawing));
  const double bottom = top + picture.bounds.height();
  std::string note;
  const auto tell = [&](const char* id, int count) {
    if (count == 0) return;
    if (!note.empty()) note += ' ';
    note += elevation.view.say(id, {{"count", count}});
  };
  tell("paper.without-room", picture.withoutRoom);
  tell("paper.rows-without-room", picture.rowsWithoutRoom);
  if (note.empty()) return bottom;
  sketch.text({{work.left, bottom + 1 + ascentOf(smallText)}, smallText, TextAnchor::Start, 0, false, note, -1});
  return bottom + noteHeight;
}

// The wall has no face to draw: the findings say why.
BarePage notLaidOut(const Elevation& elevation) {
  BarePage page;
  page.subject = elevation.view.say("paper.elevation");
  const Box& work = elevation.work;
  double y = work.top + 10;
  for (const std::string& line : wrapped(elevation.view.say("paper.not-laid-out"), markText, true, work.width())) {
    page.sketch.text({{work.left, y}, markText, TextAnchor::Start, 0, true, line, -1});
    y += lineOf(markText) + 1;
  }
  return page;
}

std::vector<BarePage> barePages(const Elevation& elevation) {
  if (elevation.view.layout->face.top.vertices().empty()) return {notLaidOut(elevation)};
  const FittedWall wall = fitted(elevation);
  std::vector<BarePage> pages;
  for (const WallPicture& picture : wall.pictures) {
    BarePage page;
    page.subject = elevation.view.say("paper.elevation");
    page.scale = wall.scale;
    const Box& work = elevation.work;
    const double free = wall.tablesUnder ? 0 : work.height() - picture.bounds.height() - noteHeight;
    const double bottom = drawPicture(page.sketch, elevation, picture, work.top + std::max(0.0, free) / 3);
    if (wall.tablesUnder) drawTablesUnder(page.sketch, elevation, bottom);
    pages.push_back(std::move(page));
  }
  if (wall.tablesUnder) return pages;
  for (Sketch& table : tablePages(elevation)) {
    pages.emplace_back();
    pages.back().sketch = std::move(table);
    pages.back().subject = elevation.view.say("paper.tables");
  }
  return pages;
}

Elevation elevationOf(const Job& job, const Plan& plan, std::size_t wall, const PageFrame& frame) {
  Elevation elevation;
  elevation.frame = frame;
  elevation.work = workArea(elevation.frame);
  elevation.view = wholeWall(job, plan, wall, *frame.words);
  const WallView& view = elevation.view;
  const auto& codes = plan.order.codes;
  elevation.tables = {openingTable(view),
                      markTable(view, wall < codes.size() ? codes[wall] : std::vector<std::string>{})};
  return elevation;
}

}  // namespace

std::vector<BarePage> bareElevation(const Job& job, const Plan& plan, std::size_t wall, const PageFrame& frame,
                                    int before) {
  Elevation elevation = elevationOf(job, plan, wall, frame);
  elevation.firstPage = before + 1;
  std::vector<BarePage> pages = barePages(elevation);
  for (BarePage& page : pages) page.wall = wall;
  return pages;
}

std::vector<Page> elevationPages(const Job& job, const Plan& plan, PaperSize paper, const Words& words) {
  const PageFrame frame{paper, &job, &words, fingerprintOf(job).text()};
  std::vector<BarePage> pages;
  for (std::size_t wall = 0; wall < job.walls.size() && wall < plan.walls.size(); ++wall) {
    for (BarePage& page : bareElevation(job, plan, wall, frame, static_cast<int>(pages.size())))
      pages.push_back(std::move(page));
  }
  return framed(frame, std::move(pages));
}

std::vector<Page> elevationPages(const Job& job, const Plan& plan, std::string_view letter, PaperSize paper,
                                 const Words& words) {
  std::vector<Page> pages = elevationPages(job, plan, paper, words);
  std::erase_if(pages, [&](const Page& page) { return page.wall != letter; });
  return pages;
}

}  // namespace ribwright
