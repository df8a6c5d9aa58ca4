#include "core/drawing/blank_picture.h"

#include <algorithm>
#include <cmath>

#include "core/drawing/hatch.h"
#include "core/drawing/label_row.h"
#include "core/drawing/shown_length.h"
#include "core/drawing/text_extent.h"

namespace ribwright {
namespace {

using Along = BlankCut::Along;

constexpr double leastHeight = 23, mostHeight = 60;  // across the blank
constexpr double blankLeftRoom = 30;                 // for what stands before the lower end
constexpr double endRoom = 8;                        // for "upper end"
constexpr double lipRoom = 24;                       // for distances from the lip edge
constexpr double cutTick = 4.5;                      // from the blank's edge to its figures
constexpr double besideFigures = 2.5;                // between figures
constexpr double lipEdge = 1.4;                      // the lip edge
constexpr double wasteApart = 2.2;                   // strokes of its hatching
constexpr double shortestPart = 0.6;  // what is left of a stroke between two texts is drawn from this length on

double figureRow() { return lineOf(siteText) + cutTick; }

bool has(const BlankCuts& cuts, Along along) {
  return std::any_of(cuts.cuts.begin(), cuts.cuts.end(), [along](const BlankCut& cut) { return cut.along == along; });
}

// As high as its narrowest part needs for its mark.
double blankHeight(const BlankCuts& cuts) {
  double narrowest = 1;
  for (const PlacedPart& placed : cuts.parts) {
    const Length width = placed.part.right - placed.part.left;
    narrowest = std::min(narrowest, width.inMillimetres() / (cuts.right - cuts.left).inMillimetres());
  }
  return std::clamp((lineOf(siteText) + 2) / std::max(narrowest, 0.01), leastHeight, mostHeight);
}

// Under the leg edge only slopes have figures.
double lowerRow(const BlankCuts& cuts) { return has(cuts, Along::Slope) ? figureRow() : 2; }

const char* wayId(Blank::Way way) {
  switch (way) {
    case Blank::Way::Alone:
      return "sharing.way.alone";
    case Blank::Way::RakePair:
      return "sharing.way.rake";
    case Blank::Way::RipPair:
      return "sharing.way.rip";
    case Blank::Way::Drop:
      return "sharing.way.drop";
    case Blank::Way::Gang:
      return "sharing.way.gang";
  }
  return "";
}

struct Figure {
  double at;  // x of what it tells
  std::string words;
};

class CutBlank {
 public:
  CutBlank(const NumberedBlank& blank, const BlankWords& words)
      : blank_(blank),
        cuts_(blank.cuts),
        words_(words),
        room_(has(blank.cuts, Along::Lengthwise) ? lipRoom + endRoom : endRoom) {}

  void draw(Sketch& sketch, const Box& room) {
    box_ = {room.left + blankLeftRoom, room.top + figureRow(), room.right - room_, 0};
    box_.bottom = box_.top + blankHeight(cuts_);
    for (std::size_t i = 0; i < cuts_.parts.size(); ++i) drawPart(sketch, i);
    drawSheet(sketch);
    drawFigures(sketch, true);
    drawFigures(sketch, false);
    drawSides(sketch);
    drawWaste(sketch);
  }

 private:
  double along(Length y) const { return box_.left + y.inMillimetres() / cuts_.length.inMillimetres() * box_.width(); }
  double across(Length x) const {
    return box_.top + (x - cuts_.left).inMillimetres() / (cuts_.right - cuts_.left).inMillimetres() * box_.height();
  }
  PaperPoint at(const BlankPoint& point) const { return {along(point.y), across(point.x)}; }
  std::vector<PaperPoint> ringOf(const std::vector<BlankPoint>& ring) const {
    std::vector<PaperPoint> points;
    for (const BlankPoint& point : ring) points.push_back(at(point));
    return points;
  }
  std::string say(const char* id, const WordValues& values = {}) const {
    return words_.words->say(id, values, words_.style);
  }

  void drawSheet(Sketch& sketch) const {
    sketch.rectangle(box_, thinLine);
    sketch.line({box_.left, box_.top}, {box_.right, box_.top}, lipEdge);
    for (const PlacedPart& placed : cuts_.parts) {
      for (const auto& ring : placed.rings) {
        std::vector<PaperPoint> closed = ringOf(ring);
        closed.push_back(closed.front());
        sketch.polyline(std::move(closed), outlineLine);
      }
    }
    const auto upright = [&](double x, const char* id) {
      sketch.text(textAround({x, box_.middle().y}, siteText, true, 90, say(id)));
    };
    upright(box_.left - 1 - lineOf(siteText) / 2, "sharing.lower-end");
    upright(box_.right + room_ - endRoom + 1.5 + lineOf(siteText) / 2, "sharing.upper-end");
    const auto edge = [&](const char* id, bool upper) {
      const auto lines = wrapped(say(id), siteText, true, blankLeftRoom - 8);
      const double first =
          upper ? box_.top : box_.bottom - siteLine * static_cast<double>(lines.size() - 1) - ascentOf(siteText);
      for (std::size_t i = 0; i < lines.size(); ++i) {
        const double y = first + ascentOf(siteText) + siteLine * static_cast<double>(i);
        sketch.text({{box_.left - blankLeftRoom, y}, siteText, TextAnchor::Start, 0, true, lines[i], -1});
      }
    };
    edge("sharing.lip", true);
    edge("sharing.leg", false);
  }

  // Where a part is itself over its whole width: between its lower end and the lowest of its top.
  Box ownRoom(const PlacedPart& placed) const {
    const BlankPart& part = placed.part;
    Length from = part.from, to = part.to;
    for (const BlankCut& cut : cuts_.cuts) {
      if (cut.along != Along::Slope || &cuts_.parts[static_cast<std::size_t>(cut.part)] != &placed) continue;
      if (part.upsideDown) from = std::max({from, cut.from.y, cut.to.y});
      if (!part.upsideDown) to = std::min({to, cut.from.y, cut.to.y});
    }
    if (from >= to) return {along(part.from), across(part.left), along(part.to), across(part.right)};
    return {along(from), across(part.left), along(to), across(part.right)};
  }

  void drawPart(Sketch& sketch, std::size_t i) const {
    const PlacedPart& placed = cuts_.parts[i];
    const Box room = ownRoom(placed).grown(-1);
    const std::string& mark = blank_.marks[i];
    std::vector<std::string> tries;
    const std::string named = placed.part.turned ? say("sharing.mark-turned", {{"mark", mark}}) : mark;
    const std::string up = say("sharing.up");
    for (const std::string& name : {named, mark})
      tries.push_back(placed.part.upsideDown ? "← " + up + "  " + name : name + "  " + up + " →");
    tries.push_back(placed.part.upsideDown ? "← " + mark : mark + " →");
    for (const std::string& words : tries) {
      if (widthOf(words, siteText, true) <= room.width() && lineOf(siteText) <= room.height() + 2)
        return sketch.text(textAround(room.middle(), siteText, true, 0, words));
    }
    drawNarrow(sketch, room, mark, placed.part.upsideDown ? "←" : "→");
  }

  // A mark with its arrow below it, upright where the part is too short for that.
  static void drawNarrow(Sketch& sketch, const Box& room, const std::string& mark, const char* arrow) {
    const PaperPoint middle = room.middle();
    const bool level = widthOf(mark, siteText, true) <= room.width() + 1;
    const double beneath = level ? lineOf(siteText) : widthOf(mark, siteText, true) / 2 + lineOf(siteText) / 2 + 0.5;
    const bool both = room.height() > (level ? 2 : 1) * lineOf(siteText) + (level ? 0 : beneath);
    sketch.text(textAround({middle.x, middle.y - (both ? beneath / 2 : 0)}, siteText, true, level ? 0 : 90, mark));
    if (both) sketch.text(textAround({middle.x, middle.y + beneath / 2}, siteText, true, 0, arrow));
  }

  // Distances from the lower end, over the lip edge or under the leg edge.
  void drawFigures(Sketch& sketch, bool lip) const {
    std::vector<Figure> figures;
    for (const BlankCut& cut : cuts_.cuts) {
      if (cut.along == Along::Lengthwise || (cut.along == Along::Across && !lip)) continue;
      const BlankPoint& end = lip ? cut.from : cut.to;
      figures.push_back({along(end.y), cutText(end.y, words_.style)});
    }
    if (lip) figures.push_back({box_.right, cutText(cuts_.length, words_.style)});
    std::sort(figures.begin(), figures.end(), [](const Figure& a, const Figure& b) { return a.at < b.at; });
    figures.erase(std::unique(figures.begin(), figures.end(),
                              [](const Figure& a, const Figure& b) { return a.words == b.words; }),
                  figures.end());
    std::vector<RowLabel> labels;
    for (const Figure& figure : figures) labels.push_back({figure.at, widthOf(figure.words, siteText, true)});
    const auto places = rowOf(labels, box_.left - blankLeftRoom, box_.right + room_, besideFigures, {});
    if (!places) return;  // the list of cuts says them all
    for (std::size_t i = 0; i < figures.size(); ++i) {
      const double edge = lip ? box_.top : box_.bottom, end = lip ? edge - cutTick : edge + cutTick;
      sketch.line({figures[i].at, edge}, {(*places)[i], end}, thinLine);
      const double base = lip ? end - 0.8 : end + ascentOf(siteText);
      sketch.text({{(*places)[i], base}, siteText, TextAnchor::Middle, 0, true, figures[i].words, -1});
    }
  }

  // Distances from the lip edge, at the upper end.
  void drawSides(Sketch& sketch) const {
    std::vector<Figure> figures;
    for (const BlankCut& cut : cuts_.cuts) {
      if (cut.along == Along::Lengthwise)
        figures.push_back({across(cut.from.x), cutText(cut.from.x - cuts_.left, words_.style)});
    }
    std::sort(figures.begin(), figures.end(), [](const Figure& a, const Figure& b) { return a.at < b.at; });
    std::vector<RowLabel> labels;
    for (const Figure& figure : figures) labels.push_back({figure.at, lineOf(siteText)});
    const auto places = rowOf(labels, box_.top - figureRow() / 2, box_.bottom + lowerRow(cuts_), 0.5, {});
    if (!places) return;
    for (std::size_t i = 0; i < figures.size(); ++i) {
      sketch.line({box_.right, figures[i].at}, {box_.right + cutTick, (*places)[i]}, thinLine);
      sketch.text({{box_.right + cutTick + 0.8, (*places)[i] + siteText / 2},
                   siteText,
                   TextAnchor::Start,
                   0,
                   true,
                   figures[i].words,
                   -1});
    }
  }

  void drawWaste(Sketch& sketch) const {
    std::vector<std::vector<PaperPoint>> rings{
        {{box_.left, box_.top}, {box_.right, box_.top}, {box_.right, box_.bottom}, {box_.left, box_.bottom}}};
    for (const PlacedPart& placed : cuts_.parts) {
      for (const auto& ring : placed.rings) rings.push_back(ringOf(ring));
    }
    for (const auto& [from, to] : hatchLines(rings, wasteApart)) {
      for (const auto& [a, b] : sketch.clearParts(from, to, roundText)) {
        if (std::hypot(b.x - a.x, b.y - a.y) >= shortestPart) sketch.line(a, b, thinLine);
      }
    }
  }

  const NumberedBlank& blank_;
  const BlankCuts& cuts_;
  const BlankWords& words_;
  double room_;  // beyond the upper end
  Box box_;
};

}  // namespace

PageBlock blankPicture(const NumberedBlank& blank, const BlankWords& words) {
  const auto draw = [blank, words](Sketch& sketch, const Box& room) { CutBlank(blank, words).draw(sketch, room); };
  return {blankHeight(blank.cuts) + figureRow() + lowerRow(blank.cuts), draw};
}

std::string blankHeading(const NumberedBlank& blank, const BlankWords& words) {
  std::string marks;
  for (const std::string& mark : blank.marks) marks.append(marks.empty() ? "" : " + ").append(mark);
  return words.words->say("sharing.heading",
                          {{"number", std::int64_t(blank.number)},
                           {"way", words.words->say(wayId(blank.blank.way), {}, words.style)},
                           {"marks", marks},
                           {"length", cutText(blank.cuts.length, words.style)},
                           {"saved", cutText(blank.blank.saved, words.style)}},
                          words.style);
}

std::vector<std::string> cutLines(const NumberedBlank& blank, const BlankWords& words) {
  std::vector<std::string> lines;
  const auto text = [&](Length length) { return cutText(length, words.style); };
  const Length lip = blank.cuts.left;
  for (const BlankCut& cut : blank.cuts.cuts) {
    const WordValues values{{"mark", blank.marks[static_cast<std::size_t>(cut.part)]},
                            {"from", text(cut.from.y)},
                            {"to", text(cut.to.y)},
                            {"left", text(cut.from.x - lip)},
                            {"right", text(cut.to.x - lip)}};
    const bool whole = cut.from.x == blank.cuts.left && cut.to.x == blank.cuts.right;
    const char* id = cut.along == Along::Lengthwise ? "sharing.cut.lengthwise"
                     : cut.along == Along::Across   ? "sharing.cut.across"
                     : whole                        ? "sharing.cut.slope"
                                                    : "sharing.cut.slope-from";
    lines.push_back(words.words->say(id, values, words.style));
  }
  return lines;
}

}  // namespace ribwright
