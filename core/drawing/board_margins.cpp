#include "core/drawing/board_margins.h"

#include <algorithm>

#include "core/drawing/band_heights.h"
#include "core/drawing/board_forms.h"
#include "core/drawing/board_parts.h"
#include "core/drawing/board_rooms.h"
#include "core/drawing/column_marks.h"
#include "core/drawing/girt_lines.h"
#include "core/drawing/shown_length.h"

namespace ribwright {

namespace {

using Stand = BoardLabel::Stand;

// Rows under the wall, in capitals.
constexpr double numberRow = 0.8;
constexpr double hangRow = 4.6;
constexpr double flagTop = 3.3, flagLong = 2.2;  // of the start flag
constexpr double arrowLong = 8, arrowHead = 1.2, arrowThin = 0.14;

struct MarginLabel {
  double place;  // x or y
  std::vector<BoardForm> forms;
  int thing = -1;
};

void sortByPlace(std::vector<MarginLabel>& labels) {
  std::stable_sort(labels.begin(), labels.end(),
                   [](const MarginLabel& a, const MarginLabel& b) { return a.place < b.place; });
}

std::vector<double> placesOf(const std::vector<MarginLabel>& labels) {
  std::vector<double> places;
  for (const MarginLabel& label : labels) places.push_back(label.place);
  return places;
}

// Beside the wall, at x.
void addBeside(std::vector<BoardLabel>& labels, std::vector<MarginLabel> rows, double x, Stand stand, double foot) {
  sortByPlace(rows);
  const auto rooms = roomsInRow(placesOf(rows), -kNoLimit, foot);
  for (std::size_t i = 0; i < rows.size(); ++i) {
    BoardLabel label;
    label.stand = stand;
    const bool before = stand == Stand::Before;
    label.room = {before ? x - kNoLimit : x, rooms[i].first, before ? x : x + kNoLimit, rooms[i].second};
    label.at = {x, rows[i].place};
    label.off = {before ? -0.6 : 0.6, 0};
    label.forms = std::move(rows[i].forms);
    label.ground = BoardTone::Ground;
    label.stays = before;
    label.thing = rows[i].thing;
    labels.push_back(std::move(label));
  }
}

MarginLabel eaveLabel(const WallView& view, Length u, Beside side) {
  const Length height = view.layout->face.steel.heightAt(u, side);
  return {view.y(height), lineForms({heightWords(view, view.topIsEave ? "paper.eave" : "paper.top", height),
                                     dimensionText(height, view.style)})};
}

int girtThing(const BoardPicture& picture, const WallView& view, Length z) {
  for (const BoardThing& thing : picture.things) {
    if (thing.part.kind == Part::Kind::Girt && thing.box.top == view.y(z))
      return static_cast<int>(&thing - picture.things.data());
  }
  return -1;
}

void addHeights(std::vector<BoardLabel>& labels, const BoardPicture& picture, const WallView& view) {
  const double foot = view.y(lowestSeen(view));
  std::vector<MarginLabel> left{eaveLabel(view, view.from, Beside::Right)};
  std::vector<MarginLabel> right{eaveLabel(view, view.to, Beside::Left)};
  for (const HeightLabel& row : rowHeights(view))
    left.push_back({view.y(row.z), lineForms({row.words}), girtThing(picture, view, row.z)});
  for (const HeightLabel& band : bandHeights(view)) right.push_back({view.y(band.z), lineForms({band.words})});
  addBeside(labels, std::move(left), 0, Stand::Before, foot);
  addBeside(labels, std::move(right), view.x(view.to), Stand::After, foot);
}

void addNumbers(std::vector<BoardLabel>& labels, const BoardPicture& picture, const WallView& view) {
  const std::vector<ColumnPlace> columns = columnsSeen(view);
  const double foot = view.y(lowestSeen(view));
  std::vector<double> places;
  for (const ColumnPlace& column : columns) places.push_back(view.x(column.u));
  const auto rooms = roomsInRow(places, -kNoLimit, kNoLimit);
  for (std::size_t i = 0; i < columns.size(); ++i) {
    const std::string number = std::to_string(columns[i].number);
    BoardLabel label;
    label.stand = Stand::Under;
    label.room = {rooms[i].first, foot, rooms[i].second, kNoLimit};
    label.at = {places[i], foot};
    label.off = {0, numberRow};
    label.forms = {boardForm({{{number, true}}})};
    label.ground = BoardTone::Ground;
    label.framed = label.stays = true;
    label.thing = thingOf(picture, {Part::Kind::Column, view.layout->letter, number});
    labels.push_back(std::move(label));
  }
}

// Where the steel turns between the corners, and expansion joints.
void addOver(std::vector<BoardLabel>& labels, const WallView& view) {
  const WallFace& face = view.layout->face;
  std::vector<MarginLabel> tops;
  for (const FaceVertex& vertex : face.steel.vertices()) {
    if (vertex.u <= view.from || vertex.u >= view.to) continue;
    const char* id = face.ridge == vertex.u ? "paper.ridge" : "paper.top";
    tops.push_back(
        {view.x(vertex.u), lineForms({heightWords(view, id, vertex.z), dimensionText(vertex.z, view.style)})});
  }
  for (const Length joint : view.wall->expansionJoints) {
    if (joint > view.from && joint < view.to) tops.push_back({view.x(joint), lineForms({view.say("paper.joint")})});
  }
  sortByPlace(tops);
  const auto rooms = roomsInRow(placesOf(tops), 0, view.x(view.to));
  const double over = view.y(highestSeen(view));
  for (std::size_t i = 0; i < tops.size(); ++i) {
    BoardLabel label;
    label.stand = Stand::Over;
    label.room = {rooms[i].first, -kNoLimit, rooms[i].second, over};
    label.at = {tops[i].place, over};
    label.off = {0, -0.6};
    label.forms = std::move(tops[i].forms);
    label.ground = BoardTone::Ground;
    labels.push_back(std::move(label));
  }
}

void addHang(std::vector<BoardLabel>& labels, BoardPicture& picture, const WallView& view) {
  if (!view.layout->sheeted) return;
  const bool toRight = view.layout->direction.hand == Hand::LeftToRight;
  const double x = toRight ? 0 : view.x(view.to), way = toRight ? 1 : -1, foot = view.y(lowestSeen(view));
  const double y = hangRow + overWords + 0.5, tip = arrowLong;
  const auto mark = [&](std::vector<PaperPoint> ring) {
    for (PaperPoint& point : ring) point.x *= way;
    picture.marks.push_back({std::move(ring), AlongWall(std::vector<BoardMark>{{{x, foot}}}), BoardTone::Line, {}});
  };
  mark({{-0.1, flagTop}, {0.1, flagTop}, {0.1, y + 1}, {-0.1, y + 1}});
  mark({{-0.1, y - 0.9}, {-flagLong, y}, {-0.1, y + 0.9}});
  mark({{0.8, y - arrowThin},
        {tip - arrowHead, y - arrowThin},
        {tip - arrowHead, y - 0.5},
        {tip, y},
        {tip - arrowHead, y + 0.5},
        {tip - arrowHead, y + arrowThin},
        {0.8, y + arrowThin}});
  BoardLabel label;
  label.stand = toRight ? Stand::After : Stand::Before;
  label.room = {toRight ? x : 0, foot, toRight ? view.x(view.to) : x, kNoLimit};
  label.at = {x, foot};
  label.off = {way * (tip + 0.4), y};
  const std::string hang = view.say(toRight ? "paper.hang.right" : "paper.hang.left");
  label.forms = lineForms({hang + ": " + view.say("paper.lap"), hang});
  label.ground = BoardTone::Ground;
  labels.push_back(label);
  label.stand = toRight ? Stand::Before : Stand::After;
  label.room = {toRight ? x - kNoLimit : x, foot, toRight ? x : x + kNoLimit, kNoLimit};
  label.off = {-way * (flagLong + 0.3), y};
  label.forms = {boardForm({{{view.say("paper.start"), true}}})};
  labels.push_back(label);
}

}  // namespace

void addMarginLabels(std::vector<BoardLabel>& labels, BoardPicture& picture, const WallView& view) {
  addHeights(labels, picture, view);
  addNumbers(labels, picture, view);
  addOver(labels, view);
  addHang(labels, picture, view);
}

BoardMargins marginsOf(const std::vector<BoardLabel>& labels) {
  BoardMargins margins{2, 2, 2, 2};
  for (const BoardLabel& label : labels) {
    const BoardForm& form = label.forms.front();
    const auto grow = [](double& margin, double to) { margin = std::max(margin, to); };
    const bool below = label.off.y > 0;
    if (below) grow(margins.bottom, label.off.y + form.height);
    if (label.stand == Stand::Over) grow(margins.top, form.height - label.off.y);
    if (label.stand == Stand::Before && label.room.left <= -kNoLimit) grow(margins.left, form.width - label.off.x);
    if (label.stand == Stand::After && label.room.right >= kNoLimit) grow(margins.right, form.width + label.off.x);
  }
  return margins;
}

}  // namespace ribwright
