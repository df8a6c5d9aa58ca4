#include "core/drawing/board_rooms.h"

#include <algorithm>

namespace ribwright {

namespace {

constexpr double hairRoom = 1e-6;

Box within(const Column& column) {
  return {column.left, -std::min(column.topLeft, column.topRight), column.right,
          -std::max(column.bottomLeft, column.bottomRight)};
}

double area(const Box& box) { return std::max(box.width(), 0.0) * std::max(box.height(), 0.0); }

}  // namespace

Box largestRoom(const std::vector<Column>& columns) {
  Box best{};
  for (std::size_t first = 0; first < columns.size(); ++first) {
    Box box = within(columns[first]);
    if (area(box) > area(best)) best = box;
    for (std::size_t next = first + 1; next < columns.size(); ++next) {
      const Box more = within(columns[next]);
      const Box joined{box.left, std::max(box.top, more.top), more.right, std::min(box.bottom, more.bottom)};
      if (std::abs(more.left - box.right) > hairRoom || joined.bottom <= joined.top) continue;
      box = joined;
      if (area(box) > area(best)) best = box;
    }
  }
  return best;
}

std::vector<std::pair<double, double>> roomsInRow(const std::vector<double>& places, double from, double to) {
  std::vector<std::pair<double, double>> rooms;
  for (std::size_t i = 0; i < places.size(); ++i) {
    rooms.push_back({i == 0 ? from : (places[i - 1] + places[i]) / 2,
                     i + 1 == places.size() ? to : (places[i] + places[i + 1]) / 2});
  }
  return rooms;
}

}  // namespace ribwright
