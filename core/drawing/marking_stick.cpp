#include "core/drawing/marking_stick.h"

#include <algorithm>
#include <map>

#include "core/drawing/broken_scale.h"
#include "core/drawing/girt_edge.h"
#include "core/drawing/page_flow.h"
#include "core/drawing/shown_length.h"
#include "core/drawing/text_extent.h"
#include "core/fastening/measured_faces.h"
#include "core/fastening/survey_grid.h"
#include "core/layout/girt_row.h"

namespace ribwright {
namespace {

constexpr double stickHeight = 8;
constexpr double boxHeight = 11;  // to write in
constexpr double leastBox = 27;
constexpr double leftRoom = 25;
constexpr int boxRows = 3;  // for so many stations

struct StickMark {
  Length height;  // above the chalk line
  std::string name, edge;
};

std::string edgeWord(const DrillWall& wall, const SurveyLine& line) {
  if (line.of == SurveyLine::Of::Eave) return wall.say("stick.edge.eave");
  return wall.say(typedById(wall.wall->girts[static_cast<std::size_t>(line.girt)].typedBy));
}

// Where the chalk line changes its height: places just right of each step, and the left corner.
std::vector<Length> sections(const DrillWall& wall) {
  std::vector<Length> places{Length()};
  for (const FacePoint& step : wall.wall->base.steps) {
    if (step.u > Length() && step.u < wall.layout().face.width) places.push_back(step.u);
  }
  places.push_back(wall.layout().face.width);
  return places;
}

// Girts of one height are one mark: one that was split round an opening, or stops at one and goes on beyond.
std::vector<StickMark> withoutTwins(const std::vector<StickMark>& marks) {
  std::vector<StickMark> single;
  for (const StickMark& mark : marks) {
    StickMark* last = single.empty() ? nullptr : &single.back();
    const std::string both = last ? last->name + ", " + mark.name : std::string();
    const bool twin = last && last->height == mark.height && last->edge == mark.edge &&
                      shortened(both, siteText, true, leastBox - 1) == both;
    if (twin) last->name = both;
    if (!twin) single.push_back(mark);
  }
  return single;
}

// Chalk line's z → the marks above it, from the lowest.
std::map<Length, std::vector<StickMark>> sticksOf(const DrillWall& wall) {
  std::map<Length, std::vector<StickMark>> sticks;
  const WallLayout& layout = wall.layout();
  const std::vector<Length> places = sections(wall);
  for (std::size_t i = 0; i + 1 < places.size(); ++i) {
    const Length middle = places[i] + half(places[i + 1] - places[i]);
    const Length chalk = chalkLineAt(*wall.wall, layout, middle);
    std::vector<StickMark>& marks = sticks[chalk];
    for (const SurveyLine& line : surveyLines(*wall.wall, layout, wall.plan->holes.supports)) {
      if (line.of == SurveyLine::Of::Slab || line.from >= places[i + 1] || line.to <= places[i]) continue;
      const Length z = plannedHeight(*wall.wall, layout, line, std::max(line.from, places[i]));
      const bool eave = line.of == SurveyLine::Of::Eave;
      const StickMark mark{z - chalk, eave ? wall.say("template.row.eave") : line.id, edgeWord(wall, line)};
      const bool known = std::any_of(marks.begin(), marks.end(), [&](const StickMark& other) {
        return other.name == mark.name && other.height == mark.height;
      });
      if (!known) marks.push_back(mark);
    }
  }
  for (auto& [chalk, marks] : sticks) {
    std::stable_sort(marks.begin(), marks.end(),
                     [](const StickMark& a, const StickMark& b) { return a.height < b.height; });
    marks = withoutTwins(marks);
  }
  return sticks;
}

void level(Sketch& sketch, double x, double top, const std::string& words, bool bold, double width) {
  sketch.text({{x, top + ascentOf(siteText)},
               siteText,
               TextAnchor::Middle,
               0,
               bold,
               shortened(words, siteText, bold, width),
               -1});
}

// A part of a stick: marks from..from + count.
PageBlock stickBlock(const DrillWall& wall, const std::vector<StickMark>& marks, std::size_t from, std::size_t count) {
  std::vector<double> spaces;
  Length before = from == 0 ? Length() : marks[from - 1].height;
  for (std::size_t i = from; i < from + count; ++i) {
    spaces.push_back(std::max((marks[i].height - before).inMillimetres(), 0.0));
    before = marks[i].height;
  }
  const double width = wall.work.width() - leftRoom - leastBox / 2;
  const std::vector<double> shown = brokenSpaces(spaces, std::vector<double>(count, leastBox), width);
  const auto draw = [&wall, &marks, from, count, shown](Sketch& sketch, const Box& room) {
    const double left = room.left + leftRoom;
    const double stick = room.top + siteLine, under = stick + stickHeight + 1.5;
    const double boxes = under + 2 * siteLine;
    const auto heading = [&](double top, const char* id) {
      sketch.text({{room.left, top + ascentOf(siteText)},
                   siteText,
                   TextAnchor::Start,
                   0,
                   false,
                   shortened(wall.say(id), siteText, false, leftRoom - 2),
                   -1});
    };
    heading(room.top, "stick.planned");
    heading(under, "stick.girt");
    heading(under + siteLine, "stick.edge");
    for (int row = 0; row < boxRows; ++row) heading(boxes + 2 + boxHeight * row, "stick.measured");
    double x = left;
    for (std::size_t i = 0; i < count; ++i) {
      const StickMark& mark = marks[from + i];
      x += shown[i];
      sketch.line({x, stick}, {x, stick + stickHeight}, outlineLine);
      level(sketch, x, room.top, dimensionText(mark.height, wall.style), true, leastBox);
      level(sketch, x, under, mark.name, true, leastBox - 1);
      level(sketch, x, under + siteLine, mark.edge, false, leastBox - 1);
      for (int row = 0; row < boxRows; ++row) {
        const double top = boxes + boxHeight * row;
        sketch.rectangle({x - leastBox / 2 + 0.5, top, x + leastBox / 2 - 0.5, top + boxHeight}, thinLine);
      }
    }
    sketch.rectangle({left, stick, x + 4, stick + stickHeight}, thinLine);
    if (from == 0) sketch.line({left, stick - 1.5}, {left, stick + stickHeight + 1.5}, 1.4);
  };
  return {siteLine + stickHeight + 1.5 + 2 * siteLine + boxHeight * boxRows + 6, draw};
}

}  // namespace

std::vector<BarePage> markingStickPages(const DrillWall& wall) {
  const auto sticks = sticksOf(wall);
  const auto most = static_cast<std::size_t>((wall.work.width() - leftRoom - leastBox / 2) / leastBox);
  std::vector<PageBlock> blocks;
  for (const auto& [chalk, marks] : sticks) {
    if (marks.empty()) continue;
    addBlocks(blocks,
              paragraph(wall.say("stick.foot", {{"chalk", absolute(chalk)},
                                                {"side", Phrase{chalk < Length() ? "stick.below" : "stick.above"}}}),
                        wall.work, 0, true));
    blocks.back().keepsNext = true;
    for (std::size_t from = 0; from < marks.size(); from += most)
      blocks.push_back(stickBlock(wall, marks, from, std::min(most, marks.size() - from)));
  }
  if (blocks.empty()) return {};
  PageBlock top = together(paragraph(wall.say("stick.words"), wall.work));
  top.height += 2;
  return barePages(flowed(blocks, top, wall.work), wall.say("stick.subject"), "paper.stick-figures");
}

}  // namespace ribwright
