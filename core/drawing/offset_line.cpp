#include "core/drawing/offset_line.h"

#include <algorithm>

#include "core/drawing/label_row.h"
#include "core/drawing/shown_length.h"
#include "core/drawing/text_extent.h"

namespace ribwright {
namespace {

constexpr double besideHoles = 12;  // for labels beyond the outermost holes
constexpr double ribHeight = 3;
constexpr double leaders = 5;  // from the holes to their labels
constexpr double edgeHeight = 7;
constexpr double offsetGap = 1.6;

struct Offsets {
  std::vector<double> places;  // x of the holes from the room's left
  std::vector<double> labels;  // x of their labels' middles
  std::vector<std::string> words;
  bool level = true;
  double height = 0;  // of the labels' room
};

// In the order from left to right on the page.
Offsets placed(const DrillWall& wall, const OffsetSet& set, Length width, bool startsAtLeft) {
  Offsets offsets;
  const double room = wall.work.width(), line = room - 2 * besideHoles;
  std::vector<Length> inOrder = set.offsets;
  if (!startsAtLeft) std::reverse(inOrder.begin(), inOrder.end());
  std::vector<RowLabel> lying, upright;
  for (const Length offset : inOrder) {
    const double part = offset.inMillimetres() / width.inMillimetres() * line;
    offsets.places.push_back(startsAtLeft ? besideHoles + part : room - besideHoles - part);
    offsets.words.push_back(cutText(offset, wall.style));
    lying.push_back({offsets.places.back(), widthOf(offsets.words.back(), siteText, true)});
    upright.push_back({offsets.places.back(), lineOf(siteText)});
    offsets.height = std::max(offsets.height, lying.back().width);
  }
  auto labels = rowOf(lying, 0, room, offsetGap, {});
  offsets.level = labels.has_value();
  if (offsets.level) offsets.height = lineOf(siteText);
  if (!labels) labels = rowOf(upright, 0, room, 0.4, {});
  if (labels) offsets.labels = *labels;
  if (!labels) offsets.height = 0;
  return offsets;
}

// What has no room beside the holes, from the starting edge on.
std::string listed(const Offsets& offsets, bool startsAtLeft) {
  std::vector<std::string> words = offsets.words;
  if (!startsAtLeft) std::reverse(words.begin(), words.end());
  std::string all;
  for (const std::string& one : words) all.append(all.empty() ? "" : ", ").append(one);
  return all;
}

}  // namespace

PageBlock offsetLine(const DrillWall& wall, const StackedSheet& sheet, const OffsetSet& set, const std::string& heading,
                     bool startsAtLeft) {
  const Offsets offsets = placed(wall, set, sheet.width, startsAtLeft);
  const double line = wall.work.width() - 2 * besideHoles;
  std::vector<PageBlock> words = paragraph(heading, wall.work, 0, true);
  if (offsets.labels.empty()) addBlocks(words, paragraph(listed(offsets, startsAtLeft), wall.work));
  const PageBlock head = together(words);
  const auto draw = [offsets, sheet, line, startsAtLeft, head, start = wall.say("template.starting-edge")](
                        Sketch& sketch, const Box& room) {
    const double left = room.left + besideHoles, right = left + line;
    head.draw(sketch, {room.left, room.top, room.right, room.top + head.height});
    const double labels = room.top + head.height, y = labels + offsets.height + 0.8;
    const double sheetY = y + leaders;
    for (std::size_t i = 0; i < offsets.labels.size(); ++i) {
      const double at = room.left + offsets.labels[i], hole = room.left + offsets.places[i];
      const double middle = labels + offsets.height / 2;
      sketch.text(textAround({at, middle}, siteText, true, offsets.level ? 0 : 90, offsets.words[i]));
      sketch.polyline({{at, y}, {hole, y + leaders * 0.7}, {hole, sheetY + 1.2}}, thinLine);
    }
    sketch.line({left, sheetY}, {right, sheetY}, openingLine);
    const auto x = [&](Length offset) {
      const double part = offset.inMillimetres() / sheet.width.inMillimetres() * line;
      return startsAtLeft ? left + part : right - part;
    };
    for (const Flat& rib : sheet.ribs) {
      const double a = x(rib.from), b = x(rib.to), slant = (b - a) / 4;
      sketch.polyline({{a, sheetY}, {a + slant, sheetY + ribHeight}, {b - slant, sheetY + ribHeight}, {b, sheetY}},
                      thinLine);
    }
    sketch.line({x(Length()), sheetY - 1.5}, {x(Length()), sheetY + edgeHeight}, 1.4);
    sketch.line({x(sheet.width), sheetY - 1.5}, {x(sheet.width), sheetY + 2}, thinLine);
    sketch.text({{x(Length()) + (startsAtLeft ? 2 : -2), sheetY + ribHeight + 1 + ascentOf(siteText)},
                 siteText,
                 startsAtLeft ? TextAnchor::Start : TextAnchor::End,
                 0,
                 false,
                 start,
                 -1});
  };
  return {head.height + offsets.height + 0.8 + leaders + ribHeight + 1 + lineOf(siteText) + 1, draw};
}

}  // namespace ribwright
