#include "core/drawing/survey_blank.h"

#include <algorithm>
#include <array>

#include "core/drawing/page_flow.h"
#include "core/drawing/shown_length.h"
#include "core/drawing/text_extent.h"
#include "core/fastening/measured_faces.h"
#include "core/fastening/survey_grid.h"

namespace ribwright {
namespace {

constexpr double nameWidth = 30;
constexpr double boxWidth = 27;
constexpr double cellHeight = 12;

std::string nameOf(const DrillWall& wall, const SurveyLine& line) {
  if (line.of == SurveyLine::Of::Eave) return wall.say("template.row.eave");
  if (line.of == SurveyLine::Of::Slab) return wall.say("blank.slab");
  return line.id;
}

std::string nameOf(const DrillWall& wall, const SurveyStation& station) {
  const auto number = std::int64_t(station.column);
  if (station.at == SurveyStation::At::Column) return wall.say("blank.column", {{"number", number}});
  if (station.at == SurveyStation::At::Midspan && number > 0)
    return wall.say("blank.midspan", {{"left", number}, {"right", number + 1}});
  return wall.say(station.at == SurveyStation::At::GirtEnd ? "blank.end" : "blank.place");
}

// One row of boxes for the stations from..to, a heading row when `line` is none.
PageBlock boxes(const DrillWall& wall, const SurveyLine* line, const std::vector<SurveyStation>& stations) {
  const auto draw = [&wall, line, stations](Sketch& sketch, const Box& room) {
    const auto words = [&](double x, double y, double height, const std::string& text, bool bold, double width) {
      sketch.text({{x, y}, height, TextAnchor::Start, 0, bold, shortened(text, height, bold, width), -1});
    };
    if (line) words(room.left, room.top + 3 + ascentOf(siteText), siteText, nameOf(wall, *line), true, nameWidth - 2);
    double x = room.left + nameWidth;
    for (const SurveyStation& station : stations) {
      if (!line) {
        words(x + 1, room.top + ascentOf(siteText), siteText, nameOf(wall, station), true, boxWidth - 2);
        words(x + 1, room.top + siteLine + ascentOf(siteText), siteText, dimensionText(station.u, wall.style), false,
              boxWidth - 2);
      } else if (line->reaches(station.u)) {
        sketch.rectangle({x, room.top, x + boxWidth, room.bottom}, thinLine);
        const Length z = plannedHeight(*wall.wall, wall.layout(), *line, station.u);
        const bool slab = line->of == SurveyLine::Of::Slab;
        const Length planned = slab ? z : z - chalkLineAt(*wall.wall, wall.layout(), station.u);
        words(x + 1, room.top + 1 + ascentOf(smallText), smallText, dimensionText(planned, wall.style), false,
              boxWidth - 2);
      }
      x += boxWidth;
    }
  };
  return {line ? cellHeight : 2 * siteLine + 1, draw};
}

}  // namespace

std::vector<BarePage> surveyBlankPages(const DrillWall& wall) {
  const std::vector<SurveyLine> lines = surveyLines(*wall.wall, wall.layout(), wall.plan->holes.supports);
  const bool girts =
      std::any_of(lines.begin(), lines.end(), [](const SurveyLine& line) { return line.of != SurveyLine::Of::Slab; });
  if (!girts) return {};
  const std::vector<SurveyStation> stations = surveyStations(*wall.wall, wall.layout(), lines);
  const auto across = static_cast<std::size_t>((wall.work.width() - nameWidth) / boxWidth);
  std::vector<BarePage> pages;
  const PageBlock top = [&] {
    std::vector<PageBlock> blocks = paragraph(wall.say("blank.words"), wall.work);
    blocks.push_back(
        toFillIn({wall.say("blank.by"), wall.say("blank.date"), wall.say("blank.props"), wall.say("blank.chalk")}));
    blocks.push_back(toFillIn({wall.say("blank.rising"), wall.say("blank.falling")}));
    blocks.push_back(clearPaper(2));
    return together(blocks);
  }();
  for (std::size_t first = 0; first < stations.size(); first += across) {
    const std::vector<SurveyStation> part(
        stations.begin() + static_cast<std::ptrdiff_t>(first),
        stations.begin() + static_cast<std::ptrdiff_t>(std::min(stations.size(), first + across)));
    const PageBlock head = together({top, boxes(wall, nullptr, part)});
    std::vector<PageBlock> rows;
    for (const SurveyLine& line : lines) rows.push_back(boxes(wall, &line, part));
    for (BarePage& page : barePages(flowed(rows, head, wall.work), wall.say("blank.subject"), "paper.stick-figures"))
      pages.push_back(std::move(page));
  }
  return pages;
}

}  // namespace ribwright
