#include "core/drawing/face_picture.h"

#include <algorithm>
#include <array>

#include "core/drawing/ring_within.h"
#include "core/layout/crossing.h"

namespace ribwright {

namespace {

constexpr double matchReach = 6;  // a match line reaches this far beyond the face
constexpr double endReach = 4;

void drawWithin(Sketch& sketch, const PaperPoint& a, const PaperPoint& b, const Box& box, PartIndex part) {
  if (const auto line = lineWithin(a, b, box)) sketch.line(line->first, line->second, thinLine, Dash::Solid, part);
}

void drawPiece(Sketch& sketch, const WallView& view, const Piece& piece) {
  const SeenPart seen = seenPart(view, piece);
  if (seen.empty()) return;
  const Box box{view.x(seen.left), view.y(seen.top), view.x(seen.right), view.y(piece.bottom)};
  const PartIndex part = sketch.part(Part::Kind::Piece, view.layout->letter, piece.mark);
  Fill fill{{}, Ink::White, part};
  for (const Ring& ring : piece.rings) {
    auto points = ringWithin(pointsOf(view, ring), box);
    if (points.size() >= 3) fill.rings.push_back(std::move(points));
  }
  if (!fill.rings.empty()) sketch.drawing.items.emplace_back(std::move(fill));
  for (const Ring& ring : piece.rings) {
    const std::vector<PaperPoint> points = pointsOf(view, ring);
    for (std::size_t i = 0; i < points.size(); ++i) {
      drawWithin(sketch, points[i], points[(i + 1) % points.size()], box, part);
    }
  }
}

void drawOutline(Sketch& sketch, const WallView& view) {
  const WallFace& face = view.layout->face;
  const PartIndex part = sketch.part(Part::Kind::Face, view.layout->letter, "");
  const Dash dash = view.layout->sheeted ? Dash::Solid : Dash::Dashed;
  const auto top = pointsOf(view, face.top), bottom = pointsOf(view, face.bottom);
  sketch.polyline(top, outlineLine, dash, part);
  sketch.polyline(bottom, outlineLine, dash, part);
  if (view.hasLeftCorner()) sketch.line(bottom.front(), top.front(), outlineLine, dash, part);
  if (view.hasRightCorner()) sketch.line(bottom.back(), top.back(), outlineLine, dash, part);
}

void drawConcrete(Sketch& sketch, const WallView& view) {
  auto points = pointsOf(view, view.layout->face.concrete);
  if (view.hasLeftCorner()) points.insert(points.begin(), {points.front().x - endReach, points.front().y});
  if (view.hasRightCorner()) points.push_back({points.back().x + endReach, points.back().y});
  sketch.polyline(points, thinLine, Dash::Dashed);
}

void drawUpright(Sketch& sketch, const WallView& view, Length u) {
  const WallFace& face = view.layout->face;
  const Length top = std::max(face.top.heightAt(u, Beside::Left), face.top.heightAt(u, Beside::Right));
  const Length bottom = std::min(face.bottom.heightAt(u, Beside::Left), face.bottom.heightAt(u, Beside::Right));
  sketch.line({view.x(u), view.y(top) - matchReach}, {view.x(u), view.y(bottom) + matchReach}, thinLine, Dash::Chain);
}

}  // namespace

std::array<Length, 2> openHeights(const WallLayout& layout, const CutRegion& cut, Length u, Beside side) {
  const Length floor = layout.face.bottom.heightAt(u, side), ceiling = layout.face.top.heightAt(u, side);
  const Length lower = cut.reachesFloor ? floor : std::max(floor, cut.lower.heightAt(u, side));
  return {lower, std::min(ceiling, cut.upper.heightAt(u, side))};
}

namespace {

// Where the wall's top and bottom cross the outline of what is cut, between two of its places.
void addCrossings(std::vector<Length>& places, const WallFace& face, const CutRegion& cut) {
  std::vector<Length> more;
  for (std::size_t i = 0; i + 1 < places.size(); ++i) {
    for (const HeightLine* wall : {&face.top, &face.bottom}) {
      for (const HeightLine* open : {&cut.lower, &cut.upper}) {
        const auto at =
            crossing(straightAt(*wall, places[i], Beside::Right), straightAt(*open, places[i], Beside::Right));
        if (at && *at > places[i] && *at < places[i + 1]) more.push_back(*at);
      }
    }
  }
  places.insert(places.end(), more.begin(), more.end());
}

void sortOnce(std::vector<Length>& places) {
  std::sort(places.begin(), places.end());
  places.erase(std::unique(places.begin(), places.end()), places.end());
}

}  // namespace

std::vector<PaperPoint> openOutline(const WallView& view, const CutRegion& cut) {
  const WallFace& face = view.layout->face;
  const Length left = std::max({cut.left, view.from, Length()}), right = std::min({cut.right, view.to, face.width});
  if (left >= right) return {};
  std::vector<Length> places{left, right};
  for (const HeightLine* line : {&cut.lower, &cut.upper, &face.top, &face.bottom}) {
    for (const FaceVertex& vertex : line->vertices()) {
      if (vertex.u > left && vertex.u < right) places.push_back(vertex.u);
    }
  }
  sortOnce(places);
  addCrossings(places, face, cut);
  sortOnce(places);
  std::vector<PaperPoint> upper, lower;
  for (std::size_t i = 0; i + 1 < places.size(); ++i) {
    const auto first = openHeights(*view.layout, cut, places[i], Beside::Right);
    const auto last = openHeights(*view.layout, cut, places[i + 1], Beside::Left);
    if (first[1] < first[0] && last[1] < last[0]) continue;
    upper.push_back(view.at(places[i], std::max(first[0], first[1])));
    upper.push_back(view.at(places[i + 1], std::max(last[0], last[1])));
    lower.push_back(view.at(places[i], first[0]));
    lower.push_back(view.at(places[i + 1], last[0]));
  }
  upper.insert(upper.end(), lower.rbegin(), lower.rend());
  upper.erase(std::unique(upper.begin(), upper.end()), upper.end());
  return upper;
}

void drawFace(Sketch& sketch, const WallView& view) {
  drawConcrete(sketch, view);
  for (const Piece& piece : view.layout->pieces) drawPiece(sketch, view, piece);
  for (const CutRegion& cut : view.layout->cuts) {
    auto ring = openOutline(view, cut);
    if (ring.size() < 3) continue;
    const auto kind = cut.penetration ? Part::Kind::Penetration : Part::Kind::Opening;
    const PartIndex part = sketch.part(kind, view.layout->letter, cut.id);
    sketch.fill(ring, Ink::White, part);
    ring.push_back(ring.front());
    sketch.polyline(std::move(ring), openingLine, Dash::Solid, part);
  }
  drawOutline(sketch, view);
  for (const Length joint : view.wall->expansionJoints) {
    if (joint > view.from && joint < view.to) drawUpright(sketch, view, joint);
  }
  if (!view.hasLeftCorner()) drawUpright(sketch, view, view.from);
  if (!view.hasRightCorner()) drawUpright(sketch, view, view.to);
}

}  // namespace ribwright
