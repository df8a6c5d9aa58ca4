#include "core/fastening/metal_between.h"

#include <algorithm>

namespace ribwright {
namespace {

// A cell in hanging coordinates.
struct StandingCell {
  Length from, to;
  Length lowFrom, lowTo, highFrom, highTo;
};

StandingCell standing(const Cell& cell, const HangingFrame& frame) {
  if (frame.hand == Hand::LeftToRight) {
    return {frame.toHanging(cell.left),
            frame.toHanging(cell.right),
            cell.bottomLeft,
            cell.bottomRight,
            cell.topLeft,
            cell.topRight};
  }
  return {frame.toHanging(cell.right),
          frame.toHanging(cell.left),
          cell.bottomRight,
          cell.bottomLeft,
          cell.topRight,
          cell.topLeft};
}

// One sheet after the other whose metal is whole at a level row, each reaching into the next.
bool goesOnPlainly(const RunSheets& sheets, std::size_t first, std::size_t last, Length from, Length to, Length z) {
  Length reached = from;
  for (std::size_t m = first; m <= last; ++m) {
    for (const SheetMetal& metal : sheets[m].pieces) {
      if (z < metal.innerLow || z > metal.innerHigh) continue;
      const Length a = sheets.frame().toHanging(metal.shape->left), b = sheets.frame().toHanging(metal.shape->right);
      if (std::min(a, b) <= reached) reached = std::max(reached, std::max(a, b));
    }
  }
  return reached >= to;
}

std::vector<StandingCell> cellsBetween(const RunSheets& sheets, std::size_t first, std::size_t last, Length from,
                                       Length to) {
  std::vector<StandingCell> cells;
  const std::size_t begin = sheets.beside(first, Length()).first, end = sheets.beside(last, Length()).second;
  for (std::size_t m = begin; m <= end; ++m) {
    for (const SheetMetal& metal : sheets[m].pieces) {
      for (const Cell& cell : metal.shape->cells) {
        const StandingCell one = standing(cell, sheets.frame());
        if (one.from < to && one.to > from) cells.push_back(one);
      }
    }
  }
  std::sort(cells.begin(), cells.end(), [](const StandingCell& a, const StandingCell& b) {
    if (a.from != b.from) return a.from < b.from;
    return a.lowFrom + a.lowTo < b.lowFrom + b.lowTo;
  });
  return cells;
}

Length between(Length from, Length zFrom, Length to, Length zTo, Length at) {
  if (zFrom == zTo) return zFrom;
  return HeightLine({{from, zFrom}, {to, zTo}}).heightAt(at, Beside::Right);
}

bool holds(const StandingCell& stack, Length from, Length to, const RowHeight& height) {
  for (const auto& [at, beyond] :
       {std::pair(std::max(stack.from, from), true), std::pair(std::min(stack.to, to), false)}) {
    const Length z = height(at, beyond);
    if (z < between(stack.from, stack.lowFrom, stack.to, stack.lowTo, at)) return false;
    if (z > between(stack.from, stack.highFrom, stack.to, stack.highTo, at)) return false;
  }
  return true;
}

}  // namespace

bool isMetalBetween(const RunSheets& sheets, std::size_t first, std::size_t last, Length from, Length to,
                    const RowHeight& height) {
  const Length z = height(from, true);
  const bool level = z == height(to, false);
  if (level && goesOnPlainly(sheets, first, last, from, to, z)) return true;
  // Every sheet of a run is cut at the same breaks, so that its cells stand in columns. In a column cells that touch
  // are one stack, and a straight row that lies in it at both ends lies in it throughout.
  const std::vector<StandingCell> cells = cellsBetween(sheets, first, last, from, to);
  Length reached = from;
  for (std::size_t i = 0; i < cells.size() && reached < to;) {
    if (cells[i].from > reached) return false;
    bool held = false;
    const Length end = cells[i].to;
    std::size_t next = i;
    while (next < cells.size() && cells[next].from == cells[i].from) {
      StandingCell stack = cells[next++];
      while (next < cells.size() && cells[next].from == cells[i].from && cells[next].lowFrom <= stack.highFrom &&
             cells[next].lowTo <= stack.highTo) {
        stack.highFrom = std::max(stack.highFrom, cells[next].highFrom);
        stack.highTo = std::max(stack.highTo, cells[next].highTo);
        ++next;
      }
      held = held || holds(stack, from, to, height);
    }
    if (!held) return false;
    reached = end;
    i = next;
  }
  return reached >= to;
}

}  // namespace ribwright
