#include "core/drawing/taken_room.h"

#include <algorithm>
#include <cmath>

namespace ribwright {

namespace {

constexpr double side = 8;    // of a square of the grid
constexpr double hair = 0.1;  // between a line's edge and a text

std::int64_t squareOf(std::int64_t column, std::int64_t row) { return column * 1'000'003 + row; }

std::int64_t placeOf(double at) { return static_cast<std::int64_t>(std::floor(at / side)); }

// Calls with every square that the box touches.
template <class Visit>
void forSquares(const Box& box, const Visit& visit) {
  for (std::int64_t column = placeOf(box.left); column <= placeOf(box.right); ++column) {
    for (std::int64_t row = placeOf(box.top); row <= placeOf(box.bottom); ++row) visit(squareOf(column, row));
  }
}

Box boxOf(const PaperPoint& a, const PaperPoint& b) {
  return {std::min(a.x, b.x), std::min(a.y, b.y), std::max(a.x, b.x), std::max(a.y, b.y)};
}

// Calls with the boxes of a line's parts, each no longer than a square, so that a slanting line takes few squares.
template <class Visit>
void forParts(const PaperPoint& a, const PaperPoint& b, const Visit& visit) {
  const int parts = 1 + static_cast<int>(std::hypot(b.x - a.x, b.y - a.y) / side);
  PaperPoint from = a;
  for (int i = 1; i <= parts; ++i) {
    const double along = static_cast<double>(i) / parts;
    const PaperPoint to{a.x + (b.x - a.x) * along, a.y + (b.y - a.y) * along};
    visit(boxOf(from, to));
    from = to;
  }
}

// How far along a line it enters a box and leaves it: 0 at a, 1 at b; `enter` >= `leave` when it stays outside.
struct CoveredPart {
  double enter = 0, leave = 1;
};
CoveredPart inBox(const Box& box, const PaperPoint& a, const PaperPoint& b) {
  CoveredPart inside;
  const auto clip = [&](double from, double to, double low, double high) {
    if (from == to) {
      if (from <= low || from >= high) inside.leave = -1;
      return;
    }
    const double first = (low - from) / (to - from), second = (high - from) / (to - from);
    inside.enter = std::max(inside.enter, std::min(first, second));
    inside.leave = std::min(inside.leave, std::max(first, second));
  };
  clip(a.x, b.x, box.left, box.right);
  clip(a.y, b.y, box.top, box.bottom);
  return inside;
}

void addOnce(std::vector<std::size_t>& all, std::size_t index) {
  if (all.empty() || all.back() != index) all.push_back(index);
}

}  // namespace

template <class Visit>
void TakenRoom::visitSquares(const Box& box, const Visit& visit) const {
  forSquares(box, [&](std::int64_t square) {
    const auto found = squares_.find(square);
    if (found != squares_.end()) visit(found->second);
  });
}

void TakenRoom::takeText(const Box& box) {
  forSquares(box, [&](std::int64_t square) { addOnce(squares_[square].texts, texts_.size()); });
  texts_.push_back(box);
}

void TakenRoom::takeLine(const PaperPoint& a, const PaperPoint& b, double width) {
  forParts(a, b, [&](const Box& part) {
    forSquares(part, [&](std::int64_t square) { addOnce(squares_[square].lines, lines_.size()); });
  });
  lines_.push_back({a, b, width / 2});
}

bool TakenRoom::isFreeOfText(const Box& box, double room) const {
  bool free = true;
  visitSquares(box.grown(room), [&](const Square& square) {
    for (std::size_t i = 0; free && i < square.texts.size(); ++i) {
      free = !overlap(box.grown(room), texts_[square.texts[i]]);
    }
  });
  return free;
}

bool TakenRoom::isFree(const Box& box, double room) const {
  if (!isFreeOfText(box, room)) return false;
  constexpr double reach = 1;  // more than half the widest line
  bool free = true;
  visitSquares(box.grown(reach), [&](const Square& square) {
    for (std::size_t i = 0; free && i < square.lines.size(); ++i) {
      const Line& line = lines_[square.lines[i]];
      free = !crosses(box.grown(line.halfWidth + hair), line.a, line.b);
    }
  });
  return free;
}

bool TakenRoom::isClear(const PaperPoint& a, const PaperPoint& b, double room) const {
  bool clear = true;
  forParts(a, b, [&](const Box& part) {
    visitSquares(part.grown(room), [&](const Square& square) {
      for (std::size_t i = 0; clear && i < square.texts.size(); ++i) {
        clear = !crosses(texts_[square.texts[i]].grown(room), a, b);
      }
    });
  });
  return clear;
}

std::vector<std::pair<PaperPoint, PaperPoint>> TakenRoom::clearParts(const PaperPoint& a, const PaperPoint& b,
                                                                     double room) const {
  std::vector<std::size_t> near;
  forParts(a, b, [&](const Box& part) {
    visitSquares(part.grown(room),
                 [&](const Square& square) { near.insert(near.end(), square.texts.begin(), square.texts.end()); });
  });
  std::vector<CoveredPart> covered;
  for (const std::size_t text : near) {
    const CoveredPart inside = inBox(texts_[text].grown(room), a, b);
    if (inside.enter < inside.leave) covered.push_back(inside);
  }
  std::sort(covered.begin(), covered.end(),
            [](const CoveredPart& x, const CoveredPart& y) { return x.enter < y.enter; });
  covered.push_back({1, 1});
  const auto point = [&](double along) { return PaperPoint{a.x + (b.x - a.x) * along, a.y + (b.y - a.y) * along}; };
  std::vector<std::pair<PaperPoint, PaperPoint>> parts;
  double from = 0;
  for (const CoveredPart& next : covered) {
    if (from < next.enter) parts.emplace_back(point(from), point(next.enter));
    from = std::max(from, next.leave);
  }
  return parts;
}

}  // namespace ribwright
