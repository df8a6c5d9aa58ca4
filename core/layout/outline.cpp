#include "core/layout/outline.h"

#include <algorithm>
#include <map>
#include <optional>

namespace ribwright {

namespace {

struct Edge {
  FaceVertex from, to;
  std::optional<EdgeSource> source;  // absent: upright
  bool used = false;
};

struct Interval {
  Length low, high;
};

// The parts of `whole` that no interval of `others` covers; all rising and disjoint.
std::vector<Interval> without(const std::vector<Interval>& whole, const std::vector<Interval>& others) {
  std::vector<Interval> left;
  for (const Interval& part : whole) {
    Length low = part.low;
    for (const Interval& other : others) {
      if (other.high <= low || other.low >= part.high) continue;
      if (other.low > low) left.push_back({low, other.low});
      low = std::max(low, other.high);
    }
    if (low < part.high) left.push_back({low, part.high});
  }
  return left;
}

void addInterval(std::vector<Interval>& intervals, Length low, Length high) {
  if (high <= low) return;
  if (!intervals.empty() && intervals.back().high == low) {
    intervals.back().high = high;
  } else {
    intervals.push_back({low, high});
  }
}

// Upright sides stand where the intervals left and right of a break differ.
void addUprights(const std::map<Length, std::pair<std::vector<Interval>, std::vector<Interval>>>& sides,
                 std::vector<Edge>& edges) {
  for (const auto& [t, beside] : sides) {
    const auto& [leftOfIt, rightOfIt] = beside;
    for (const Interval& part : without(rightOfIt, leftOfIt))
      edges.push_back({{t, part.low}, {t, part.high}, std::nullopt});
    for (const Interval& part : without(leftOfIt, rightOfIt))
      edges.push_back({{t, part.high}, {t, part.low}, std::nullopt});
  }
}

std::vector<Edge> edgesOf(const std::vector<RunCell>& cells) {
  std::vector<Edge> edges;
  std::map<Length, std::pair<std::vector<Interval>, std::vector<Interval>>> sides;
  for (const RunCell& cell : cells) {
    const Cell& c = cell.cell;
    edges.push_back({{c.left, c.topLeft}, {c.right, c.topRight}, cell.above});
    edges.push_back({{c.right, c.bottomRight}, {c.left, c.bottomLeft}, cell.below});
    addInterval(sides[c.left].second, c.bottomLeft, c.topLeft);
    addInterval(sides[c.right].first, c.bottomRight, c.topRight);
  }
  addUprights(sides, edges);
  return edges;
}

bool goOn(const Edge& one, const Edge& next) {
  if (!one.source || !next.source)
    return !one.source && !next.source && (one.to.z > one.from.z) == (next.to.z > next.from.z);
  const bool level = one.from.z == one.to.z && next.from.z == next.to.z;
  const bool sameWay = (one.to.u > one.from.u) == (next.to.u > next.from.u);
  return sameWay && (level || *one.source == *next.source);
}

bool isJog(const Edge& edge) {
  const Length height = edge.to.z - edge.from.z;
  return !edge.source && height <= kRounding && height >= -kRounding;
}

// Less than a few nanometres off the straight line between its neighbours.
bool isStraight(const FaceVertex& before, const FaceVertex& at, const FaceVertex& after) {
  const Int128 du = (after.u - before.u).nanometres(), dz = (after.z - before.z).nanometres();
  const Int128 off = du * (at.z - before.z).nanometres() - dz * (at.u - before.u).nanometres();
  const auto size = [](Int128 value) { return value < 0 ? -value : value; };
  return size(off) <= kRounding.nanometres() * std::max(size(du), size(dz));
}

Ring withoutStraight(Ring ring) {
  for (std::size_t i = 0; i < ring.size() && ring.size() > 3;) {
    const std::size_t count = ring.size();
    if (isStraight(ring[(i + count - 1) % count], ring[i], ring[(i + 1) % count])) {
      ring.erase(ring.begin() + static_cast<std::ptrdiff_t>(i));
      i = i > 0 ? i - 1 : 0;
    } else {
      ++i;
    }
  }
  return ring;
}

Ring cornersOf(std::vector<Edge> loop) {
  // A jog is closed by drawing its neighbours together.
  if (loop.size() > 4) {
    for (std::size_t i = 0; i < loop.size();) {
      if (!isJog(loop[i]) || loop.size() <= 4) {
        ++i;
        continue;
      }
      loop[(i + 1) % loop.size()].from = loop[i].from;
      loop.erase(loop.begin() + static_cast<std::ptrdiff_t>(i));
    }
  }
  Ring ring;
  for (std::size_t i = 0; i < loop.size(); ++i) {
    const Edge& before = loop[(i + loop.size() - 1) % loop.size()];
    if (!goOn(before, loop[i])) ring.push_back(loop[i].from);
  }
  return withoutStraight(std::move(ring));
}

Int128 twiceSignedArea(const std::vector<Edge>& loop) {
  Int128 sum = 0;
  for (const Edge& edge : loop) {
    sum += Int128((edge.to.u - edge.from.u).nanometres()) * (edge.from.z + edge.to.z).nanometres();
  }
  return sum;  // positive when clockwise
}

// Follows edges from `first` until it closes; a loop that meets itself in a point is parted there.
std::vector<std::vector<Edge>> follow(std::size_t first, std::vector<Edge>& edges,
                                      const std::multimap<FaceVertex, std::size_t>& starts) {
  std::vector<std::vector<Edge>> loops;
  std::vector<Edge> path;
  std::size_t at = first;
  while (true) {
    edges[at].used = true;
    path.push_back(edges[at]);
    const FaceVertex end = edges[at].to;
    const auto met = std::find_if(path.begin(), path.end(), [&](const Edge& edge) { return edge.from == end; });
    if (met != path.end()) {
      loops.emplace_back(met, path.end());
      path.erase(met, path.end());
      if (path.empty()) return loops;
    }
    const auto [low, high] = starts.equal_range(end);
    const auto next = std::find_if(low, high, [&](const auto& entry) { return !edges[entry.second].used; });
    if (next == high) return loops;  // cannot happen: every vertex has as many edges in as out
    at = next->second;
  }
}

// One cell in each column, each beside the next: the ordinary piece, whose boundary is its tops and its bottoms.
bool isStack(const std::vector<RunCell>& cells) {
  for (std::size_t i = 1; i < cells.size(); ++i) {
    if (cells[i].column != cells[i - 1].column + 1) return false;
  }
  return true;
}

std::vector<Edge> roundStack(const std::vector<RunCell>& cells) {
  std::vector<Edge> loop;
  loop.reserve(cells.size() * 4);
  FaceVertex at{cells.front().cell.left, cells.front().cell.bottomLeft};
  const auto to = [&](FaceVertex next, std::optional<EdgeSource> source) {
    if (next != at) loop.push_back({at, next, source});
    at = next;
  };
  for (const RunCell& cell : cells) {
    to({cell.cell.left, cell.cell.topLeft}, std::nullopt);
    to({cell.cell.right, cell.cell.topRight}, cell.above);
  }
  for (auto cell = cells.rbegin(); cell != cells.rend(); ++cell) {
    to({cell->cell.right, cell->cell.bottomRight}, std::nullopt);
    to({cell->cell.left, cell->cell.bottomLeft}, cell->below);
  }
  return loop;
}

}  // namespace

std::vector<Ring> outline(const std::vector<RunCell>& cells) {
  if (isStack(cells)) return {cornersOf(roundStack(cells))};
  std::vector<Edge> edges = edgesOf(cells);
  std::erase_if(edges, [](const Edge& edge) { return edge.from == edge.to; });
  std::multimap<FaceVertex, std::size_t> starts;
  for (std::size_t i = 0; i < edges.size(); ++i) starts.emplace(edges[i].from, i);
  std::vector<Ring> outer, inner;
  for (std::size_t i = 0; i < edges.size(); ++i) {
    if (edges[i].used) continue;
    for (std::vector<Edge>& loop : follow(i, edges, starts)) {
      const Int128 area = twiceSignedArea(loop);
      Ring ring = cornersOf(std::move(loop));
      if (area == 0 || ring.size() < 3) continue;
      if (area > 0) {
        outer.push_back(std::move(ring));
      } else {
        std::reverse(ring.begin(), ring.end());
        inner.push_back(std::move(ring));
      }
    }
  }
  outer.insert(outer.end(), std::make_move_iterator(inner.begin()), std::make_move_iterator(inner.end()));
  return outer;
}

}  // namespace ribwright
