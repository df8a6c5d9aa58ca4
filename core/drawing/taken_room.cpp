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

}  // namespace ribwright
