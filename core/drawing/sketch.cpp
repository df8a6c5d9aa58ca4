#include "core/drawing/sketch.h"

#include <algorithm>
#include <optional>

#include "core/drawing/text_extent.h"

namespace ribwright {

namespace {

Box boxAround(const std::vector<PaperPoint>& points, double by) {
  Box box{points.front().x, points.front().y, points.front().x, points.front().y};
  for (const PaperPoint& point : points) box = united(box, {point.x, point.y, point.x, point.y});
  return box.grown(by);
}

Box boxOf(const Stroke& stroke) { return boxAround(stroke.points, stroke.width.size / 2); }

Box boxOf(const Fill& fill) {
  Box box = boxAround(fill.rings.front(), 0);
  for (const auto& ring : fill.rings) box = united(box, boxAround(ring, 0));
  return box;
}

}  // namespace

PartIndex Sketch::part(Part::Kind kind, const std::string& wall, const std::string& id) {
  const Part wanted{kind, wall, id};
  const auto found = std::find(drawing.parts.begin(), drawing.parts.end(), wanted);
  const auto index = found - drawing.parts.begin();
  if (found == drawing.parts.end()) drawing.parts.push_back(wanted);
  return static_cast<PartIndex>(index);
}

void Sketch::line(const PaperPoint& a, const PaperPoint& b, double width, Dash dash, PartIndex part) {
  polyline({a, b}, width, dash, part);
}

void Sketch::polyline(std::vector<PaperPoint> points, double width, Dash dash, PartIndex part) {
  for (std::size_t i = 1; i < points.size(); ++i) taken_.takeLine(points[i - 1], points[i], width);
  drawing.items.emplace_back(Stroke{std::move(points), false, {width}, dash, part});
}

void Sketch::rectangle(const Box& box, double width) {
  const std::vector<PaperPoint> corners = {
      {box.left, box.top}, {box.right, box.top}, {box.right, box.bottom}, {box.left, box.bottom}};
  for (std::size_t i = 0; i < 4; ++i) taken_.takeLine(corners[i], corners[(i + 1) % 4], width);
  drawing.items.emplace_back(Stroke{corners, true, {width}, Dash::Solid, -1});
}

void Sketch::fill(std::vector<PaperPoint> ring, Ink ink, PartIndex part) {
  if (ring.size() < 3) return;
  if (ink == Ink::Black) {
    for (std::size_t i = 0; i < ring.size(); ++i) taken_.takeLine(ring[i], ring[(i + 1) % ring.size()], 0);
  }
  drawing.items.emplace_back(Fill{{std::move(ring)}, ink, part});
}

void Sketch::marks(std::vector<std::vector<PaperPoint>> rings) {
  if (!rings.empty()) drawing.items.emplace_back(Fill{std::move(rings), Ink::Black, -1});
}

void Sketch::arrowHead(const PaperPoint& point, double dx, double dy, double size) {
  const double half = size * 0.3;
  const PaperPoint back{point.x - dx * size, point.y - dy * size};
  fill({point, {back.x - dy * half, back.y + dx * half}, {back.x + dy * half, back.y - dx * half}}, Ink::Black);
}

void Sketch::text(Text text) {
  taken_.takeText(boxOf(text));
  drawing.items.emplace_back(std::move(text));
}

void Sketch::reserve(const PaperPoint& a, const PaperPoint& b) { taken_.takeLine(a, b, thinLine); }

bool Sketch::hasRoom(const Box& box) const { return taken_.isFree(box, textRoom); }

bool Sketch::isFreeOfText(const Box& box) const { return taken_.isFreeOfText(box, textRoom); }

bool Sketch::isClear(const PaperPoint& a, const PaperPoint& b) const { return taken_.isClear(a, b, textRoom); }

std::vector<std::pair<PaperPoint, PaperPoint>> Sketch::clearParts(const PaperPoint& a, const PaperPoint& b,
                                                                  double room) const {
  return taken_.clearParts(a, b, room);
}

Box Sketch::bounds() const { return boundsOf(drawing); }

Box boundsOf(const Drawing& drawing) {
  std::optional<Box> all;
  for (const Item& item : drawing.items) {
    const Box box = std::visit([](const auto& it) { return boxOf(it); }, item);
    all = all ? united(*all, box) : box;
  }
  return all.value_or(Box{});
}

void shift(Drawing& drawing, double dx, double dy) {
  const auto move = [&](PaperPoint& point) { point = {point.x + dx, point.y + dy}; };
  for (Item& item : drawing.items) {
    if (auto* stroke = std::get_if<Stroke>(&item)) std::for_each(stroke->points.begin(), stroke->points.end(), move);
    if (auto* fill = std::get_if<Fill>(&item)) {
      for (auto& ring : fill->rings) std::for_each(ring.begin(), ring.end(), move);
    }
    if (auto* text = std::get_if<Text>(&item)) move(text->at);
  }
}

void append(Drawing& to, Drawing from) {
  const int offset = static_cast<int>(to.parts.size());
  to.parts.insert(to.parts.end(), from.parts.begin(), from.parts.end());
  for (Item& item : from.items) {
    std::visit(
        [&](auto& it) {
          if (it.part >= 0) it.part += offset;
        },
        item);
    to.items.emplace_back(std::move(item));
  }
}

}  // namespace ribwright
