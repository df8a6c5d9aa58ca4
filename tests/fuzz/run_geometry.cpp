#include "tests/fuzz/run_geometry.h"

#include <algorithm>
#include <set>

namespace ribwright::fuzz {
namespace {

// A straight line of the run between two places.
struct Edge {
  Segment segment;
  Nm from = 0, to = 0;
};

void addEdges(std::vector<Edge>& edges, const StatedLine& line, Nm from, Nm to) {
  for (std::size_t i = 0; i < line.segments.size(); ++i) {
    Edge edge{line.segments[i], from, to};
    if (i > 0) edge.from = std::max(from, edge.segment.u0);
    if (i + 1 < line.segments.size()) edge.to = std::min(to, edge.segment.u1);
    if (edge.from < edge.to) edges.push_back(edge);
  }
}

std::vector<Edge> edgesOf(const RunGeometry& run) {
  std::vector<Edge> edges;
  addEdges(edges, run.face->top, run.left, run.right);
  addEdges(edges, run.face->bottom, run.left, run.right);
  for (const auto& limit : {run.floor, run.ceiling}) {
    if (limit) addEdges(edges, StatedLine::level(*limit), run.left, run.right);
  }
  for (const StatedCut& cut : run.cuts) {
    if (!cut.reachesFloor) addEdges(edges, cut.lower, cut.left, cut.right);
    addEdges(edges, cut.upper, cut.left, cut.right);
  }
  for (const LegCutAway& leg : run.legs) {
    addEdges(edges, leg.lower, leg.left, leg.right);
    addEdges(edges, leg.upper, leg.left, leg.right);
  }
  return edges;
}

void addCrossings(const RunGeometry& run, const std::set<Nm>& found, std::set<Nm>& breaks) {
  const std::vector<Edge> edges = edgesOf(run);
  for (std::size_t i = 0; i < edges.size(); ++i) {
    for (std::size_t j = i + 1; j < edges.size(); ++j) {
      const Edge &a = edges[i], &b = edges[j];
      const Nm from = std::max(a.from, b.from), to = std::min(a.to, b.to);
      if (from >= to) continue;
      const auto u = crossing(a.segment, b.segment);
      if (!u || *u <= from || *u >= to) continue;
      const auto near = found.lower_bound(*u - 1);
      if (near == found.end() || *near > *u + 1) breaks.insert(*u);
    }
  }
}

void addLegs(const RunGeometry& run, Hand hand, std::size_t earlier, std::vector<LegCutAway>& legs) {
  const std::size_t later = earlier + 1;
  const Nm left = std::max(run.sheets[earlier].left, run.sheets[later].left);
  const Nm right = std::min(run.sheets[earlier].right, run.sheets[later].right);
  if (left >= right) return;
  // Left to right the later sheet's strip of the lap lies left of an opening's left edge, the earlier one's right of
  // its right.
  const bool onward = hand == Hand::LeftToRight;
  const std::size_t first = legs.size();
  for (const std::size_t sheet : {earlier, later}) {
    const bool rightOfCut = (sheet == earlier) == onward;
    const std::size_t taken = legs.size();
    for (const StatedCut& cut : run.cuts) {
      const Nm edge = rightOfCut ? cut.right : cut.left;
      if (!cut.straight || edge < left || edge > right) continue;
      const LegCutAway leg{sheet, rightOfCut ? edge : left, rightOfCut ? right : edge, cut.lower, cut.upper};
      const auto meets = [&](const LegCutAway& other) {
        return other.left < leg.right && leg.left < other.right && other.lower.heightAt(0, Side::Left) < cut.high() &&
               cut.low() < other.upper.heightAt(0, Side::Left);
      };
      const auto begin = legs.begin() + static_cast<std::ptrdiff_t>(first);
      const auto end = legs.begin() + static_cast<std::ptrdiff_t>(sheet == earlier ? first : taken);
      const bool barred =
          std::any_of(begin, end, [&](const LegCutAway& other) { return other.sheet == earlier && meets(other); });
      if (leg.left < leg.right && !barred) legs.push_back(leg);
    }
  }
}

}  // namespace

std::vector<LegCutAway> legsCutAway(const RunGeometry& run, Hand hand) {
  std::vector<LegCutAway> legs;
  for (std::size_t i = 0; i + 1 < run.sheets.size(); ++i) addLegs(run, hand, i, legs);
  return legs;
}

std::vector<Nm> breaksOf(const RunGeometry& run, const std::vector<Nm>& found) {
  const std::set<Nm> cells(found.begin(), found.end());
  std::set<Nm> breaks = cells;
  const auto add = [&](const std::vector<Nm>& places) { breaks.insert(places.begin(), places.end()); };
  add({run.left, run.right});
  for (const SheetMetal& sheet : run.sheets) add({sheet.left, sheet.right});
  for (const StatedLine* line : {&run.face->top, &run.face->bottom}) add(line->joints());
  for (const StatedCut& cut : run.cuts) {
    add({cut.left, cut.right});
    add(cut.lower.joints());
    add(cut.upper.joints());
  }
  addCrossings(run, cells, breaks);
  return {breaks.begin(), breaks.end()};
}

}  // namespace ribwright::fuzz
