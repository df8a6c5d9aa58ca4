#include "core/drawing/full_scale_strip.h"

#include <algorithm>

#include "core/drawing/label_row.h"
#include "core/drawing/page_flow.h"
#include "core/drawing/shown_length.h"
#include "core/drawing/stacked_sheet.h"
#include "core/drawing/text_extent.h"

namespace ribwright {
namespace {

constexpr double lap = 12;          // of a tile beyond its match line
constexpr double stripHeight = 16;  // from cut line to cut line
constexpr double holeCross = 5;     // of a hole's cross
constexpr double holeLeader = 4;
constexpr double inch = 25.4;

// The strip of one set of offsets: x grows from the strip's left end on the page.
struct Strip {
  double width = 0;
  bool startsAtLeft = true;
  std::vector<double> holes;  // rising
  std::vector<std::string> words;
  std::vector<std::pair<double, double>> ribs;  // from the left to the right
  double pilot = 0;                             // diameter
  std::string heading;
  std::size_t number = 1;  // among the wall's: tiles of two strips are never taken for one another's
};

// What two batches of a wall drill alike is one strip.
struct StripOf {
  OffsetSet set;
  StackedSheet sheet;
  std::vector<std::string> batches;
};

bool alike(const StripOf& a, const OffsetSet& set, const StackedSheet& sheet) {
  return a.set.offsets == set.offsets && a.set.screw == set.screw && a.sheet.width == sheet.width &&
         a.sheet.ribs == sheet.ribs;
}

std::vector<StripOf> stripsOf(const DrillWall& wall) {
  std::vector<StripOf> strips;
  for (const DrillBatch& batch : wall.plan->batches) {
    if (!batch.isCleared()) continue;
    const StackedSheet sheet = stackedSheet(wall, batch);
    const std::vector<OffsetSet> sets = offsetSets(batch);
    for (std::size_t i = 0; i < sets.size(); ++i) {
      const std::string name = batch.id + (sets.size() > 1 ? " " + setLetter(i) : std::string());
      const auto same = std::find_if(strips.begin(), strips.end(),
                                     [&](const StripOf& strip) { return alike(strip, sets[i], sheet); });
      if (same == strips.end()) {
        strips.push_back({sets[i], sheet, {name}});
      } else {
        same->batches.push_back(name);
      }
    }
  }
  return strips;
}

Strip drawn(const DrillWall& wall, const StripOf& of, std::size_t number, bool startsAtLeft) {
  Strip strip;
  strip.number = number;
  strip.width = of.sheet.width.inMillimetres();
  strip.startsAtLeft = startsAtLeft;
  const auto x = [&](Length offset) {
    return startsAtLeft ? offset.inMillimetres() : strip.width - offset.inMillimetres();
  };
  for (const Length offset : of.set.offsets) {
    strip.holes.push_back(x(offset));
    strip.words.push_back(cutText(offset, wall.style));
  }
  if (!startsAtLeft) {
    std::reverse(strip.holes.begin(), strip.holes.end());
    std::reverse(strip.words.begin(), strip.words.end());
  }
  for (const Flat& rib : of.sheet.ribs) strip.ribs.push_back(std::minmax({x(rib.from), x(rib.to)}));
  strip.pilot = wall.job->screws[static_cast<std::size_t>(of.set.screw)].pilot.inMillimetres();
  std::string names;
  for (const std::string& name : of.batches) names.append(names.empty() ? "" : ", ").append(name);
  strip.heading =
      wall.say(startsAtLeft ? "strip.of.left" : "strip.of.right",
               {{"number", std::int64_t(number)}, {"batches", names}, {"count", std::int64_t(of.set.offsets.size())}});
  return strip;
}

// From match line to match line, with what lies beyond them.
struct Tile {
  double from = 0, to = 0;  // x on the strip
  bool first = true, last = true;
  std::size_t number = 0;  // of the match line at its left end: 1 is A
};

std::vector<Tile> tilesOf(double strip, double room) {
  const double net = room - 2 * lap - 1;
  std::vector<Tile> tiles;
  for (double from = 0; from < strip; from += net)
    tiles.push_back({from, std::min(strip, from + net), from == 0, from + net >= strip, tiles.size()});
  return tiles;
}

void circle(Sketch& sketch, const PaperPoint& at, double radius) {
  std::vector<PaperPoint> points;
  constexpr double c = 0.92388, s = 0.38268, d = 0.70711;
  for (const auto& [x, y] : {std::pair{1.0, 0.0},
                             {c, s},
                             {d, d},
                             {s, c},
                             {0.0, 1.0},
                             {-s, c},
                             {-d, d},
                             {-c, s},
                             {-1.0, 0.0},
                             {-c, -s},
                             {-d, -d},
                             {-s, -c},
                             {0.0, -1.0},
                             {s, -c},
                             {d, -d},
                             {c, -s},
                             {1.0, 0.0}})
    points.push_back({at.x + radius * x, at.y + radius * y});
  sketch.polyline(points, thinLine);
}

class TileDrawing {
 public:
  TileDrawing(const DrillWall& wall, const Strip& strip, const Tile& tile, const Box& room)
      : wall_(wall),
        strip_(strip),
        tile_(tile),
        room_(room),
        zero_(room.left + lap - tile.from),
        top_(room.top + lineOf(siteText) + holeLeader),
        row_(top_ + stripHeight / 2) {}

  void draw(Sketch& sketch) const {
    const double from = tile_.first ? 0 : tile_.from - lap, to = tile_.last ? strip_.width : tile_.to + lap;
    for (const double y : {top_, top_ + stripHeight}) sketch.line({x(from), y}, {x(to), y}, thinLine);
    sketch.line({x(from), row_}, {x(to), row_}, thinLine);
    drawRibs(sketch, from, to);
    drawHoles(sketch, from, to);
    if (tile_.first) drawEnd(sketch, 0, strip_.startsAtLeft);
    if (tile_.last) drawEnd(sketch, strip_.width, !strip_.startsAtLeft);
    if (!tile_.first) drawMatch(sketch, tile_.from, tile_.number);
    if (!tile_.last) drawMatch(sketch, tile_.to, tile_.number + 1);
  }

 private:
  double x(double onStrip) const { return zero_ + onStrip; }
  double under() const { return top_ + stripHeight; }

  // Ribs rest on the lower cut line, so that the strip can be laid to them.
  void drawRibs(Sketch& sketch, double from, double to) const {
    for (const auto& [a, b] : strip_.ribs) {
      const double left = std::max(a, from), right = std::min(b, to);
      if (left < right) sketch.line({x(left), under() - 1}, {x(right), under() - 1}, 1.6);
    }
  }

  void drawHoles(Sketch& sketch, double from, double to) const {
    std::vector<RowLabel> labels;
    std::vector<std::size_t> shown;
    for (std::size_t i = 0; i < strip_.holes.size(); ++i) {
      const double at = strip_.holes[i];
      // In the lap only where there is room for its cross; it stands on the other tile too.
      if (at < from + (tile_.first ? 0 : holeCross) || at > to - (tile_.last ? 0 : holeCross)) continue;
      sketch.line({x(at), row_ - holeCross}, {x(at), row_ + holeCross}, thinLine);
      if (strip_.pilot > 1) circle(sketch, {x(at), row_}, strip_.pilot / 2);
      labels.push_back({x(at), widthOf(strip_.words[i], siteText, true)});
      shown.push_back(i);
    }
    const auto places = rowOf(labels, room_.left, room_.right, 1.6, {});
    for (std::size_t i = 0; places && i < shown.size(); ++i) {
      const double at = x(strip_.holes[shown[i]]);
      const double middle = (*places)[i];
      sketch.text({{middle, room_.top + ascentOf(siteText)},
                   siteText,
                   TextAnchor::Middle,
                   0,
                   true,
                   strip_.words[shown[i]],
                   -1});
      sketch.line({middle, top_ - holeLeader + 0.8}, {at, row_ - holeCross}, thinLine);
    }
  }

  void drawEnd(Sketch& sketch, double at, bool starting) const {
    const double half = starting ? 0.7 : thinLine / 2;
    // The line's outer side is the metal's edge.
    const double inward = at == 0 ? half : -half;
    sketch.line({x(at) + inward, top_}, {x(at) + inward, under() + 2}, 2 * half);
    if (!starting) return;
    // Under the letters of match lines, which a short tile has near by.
    const std::string words = wall_.say("template.starting-edge");
    const double width = widthOf(words, siteText, true);
    const double left = std::max(room_.left, at == 0 ? x(at) : x(at) - width);
    sketch.text({{left, under() + 2.5 + lineOf(siteText) + 0.4 + ascentOf(siteText)},
                 siteText,
                 TextAnchor::Start,
                 0,
                 true,
                 words,
                 -1});
  }

  void drawMatch(Sketch& sketch, double at, std::size_t number) const {
    sketch.line({x(at), top_ - 2}, {x(at), under() + 2}, thinLine, Dash::Chain);
    std::string letter = setLetter(number - 1);
    for (char& c : letter) c = static_cast<char>(c - 'a' + 'A');
    letter.insert(0, std::to_string(strip_.number));
    sketch.text({{x(at), under() + 2.5 + ascentOf(siteText)}, siteText, TextAnchor::Middle, 0, true, letter, -1});
  }

  const DrillWall& wall_;
  const Strip& strip_;
  const Tile& tile_;
  const Box& room_;
  double zero_, top_, row_;
};

double tileHeight() { return lineOf(siteText) + holeLeader + stripHeight + 2.5 + 2 * lineOf(siteText) + 1; }

// Ticks from y up (-1) or down (+1), every so many a longer one, and what it measures beside its end.
void ruler(Sketch& sketch, double left, double y, double side, double step, int count, int longEvery,
           const std::string& words) {
  for (int i = 0; i <= count; ++i) {
    const double x = left + step * i;
    sketch.line({x, y}, {x, y + side * (i % longEvery == 0 ? 4 : 2)}, thinLine);
  }
  const double middle = y + side * (0.7 + lineOf(siteText) / 2);
  sketch.text(
      textAround({left + step * count + 2 + widthOf(words, siteText, false) / 2, middle}, siteText, false, 0, words));
}

// Six inches over the line, a hundred millimetres under it.
PageBlock rulers(const DrillWall& wall) {
  const auto draw = [metric = wall.say("strip.ruler.mm"), inches = wall.say("strip.ruler.in")](Sketch& sketch,
                                                                                               const Box& room) {
    const double left = room.left + 1, y = room.middle().y;
    sketch.line({left, y}, {left + 6 * inch, y}, thinLine);
    ruler(sketch, left, y, -1, inch / 4, 24, 4, inches);
    ruler(sketch, left, y, 1, 10, 10, 5, metric);
  };
  return {2 * (lineOf(siteText) + 1.2), draw};
}

}  // namespace

std::vector<BarePage> stripPages(const DrillWall& wall, Lying lying) {
  const bool startsAtLeft = startsUppermost(wall.layout().direction.hand, lying);
  std::vector<Strip> strips;
  for (const StripOf& of : stripsOf(wall)) strips.push_back(drawn(wall, of, strips.size() + 1, startsAtLeft));
  if (strips.empty()) return {};
  std::vector<PageBlock> blocks;
  for (const Strip& strip : strips) {
    addBlocks(blocks, paragraph(strip.heading, wall.work, 0, true));
    blocks.back().keepsNext = true;
    for (const Tile& tile : tilesOf(strip.width, wall.work.width())) {
      const auto draw = [&wall, &strip, tile](Sketch& sketch, const Box& room) {
        TileDrawing(wall, strip, tile, room).draw(sketch);
      };
      blocks.push_back({tileHeight(), draw});
    }
  }
  std::vector<PageBlock> head = paragraph(wall.say("strip.words"), wall.work);
  head.push_back(rulers(wall));
  head.push_back(clearPaper(2));
  return barePages(flowed(blocks, together(head), wall.work), wall.say("strip.subject"), "paper.strip-figures",
                   DrawingScale{1});
}

}  // namespace ribwright
