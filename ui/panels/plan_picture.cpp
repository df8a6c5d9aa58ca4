#include "ui/panels/plan_picture.h"

#include <QRectF>
#include <QTransform>
#include <algorithm>
#include <cmath>
#include <limits>

namespace ribwright {

namespace {

QPointF metres(const PlanPoint& point) { return {point.x.inMetres(), -point.y.inMetres()}; }

QRectF boundsOf(const Job& job, const Plan& plan) {
  QPolygonF points;
  for (const PlanPoint& corner : job.building.outline) points << metres(corner);
  for (const auto& wall : plan.walls) {
    if (const auto& line = wall->layout.face.line) points << metres(line->from) << metres(line->to);
  }
  return points.boundingRect();
}

// Metres of the plan into the middle of a room, to one scale.
QTransform into(const QRectF& room, const QRectF& plan) {
  const double width = std::max(plan.width(), 0.001), height = std::max(plan.height(), 0.001);
  const double scale = std::min(room.width() / width, room.height() / height);
  return QTransform::fromTranslate(room.center().x(), room.center().y())
      .scale(scale, scale)
      .translate(-plan.center().x(), -plan.center().y());
}

// Letters stand outside, to the right of who walks from the right corner to the left one.
QPointF outsideOf(const QLineF& line, double distance) {
  if (line.length() == 0) return line.p1();
  const QPointF along = (line.p2() - line.p1()) / line.length();
  return line.center() + QPointF(-along.y(), along.x()) * distance;
}

// A point beyond the frame comes to lie on it, in the same direction from its middle.
PlanPicture::Sight sight(const QRectF& frame, const QPointF& at, const QString& name) {
  if (frame.contains(at)) return {at, name, false};
  const QPointF away = at - frame.center();
  const double across = std::abs(away.x()) > 0 ? frame.width() / 2 / std::abs(away.x()) : 1e9;
  const double down = std::abs(away.y()) > 0 ? frame.height() / 2 / std::abs(away.y()) : 1e9;
  return {frame.center() + away * std::min(across, down), name, true};
}

void addUnplaced(PlanPicture& picture, const QRectF& room) {
  const auto count = std::count_if(picture.walls.begin(), picture.walls.end(),
                                   [](const PlanPicture::WallLine& wall) { return !wall.placed; });
  if (count == 0) return;
  const double step = room.width() / static_cast<double>(count);
  double left = room.left();
  for (PlanPicture::WallLine& wall : picture.walls) {
    if (wall.placed) continue;
    wall.line = QLineF(left + step * 0.15, room.top(), left + step * 0.85, room.top());
    wall.letter = {wall.line.center().x(), room.center().y()};
    left += step;
  }
}

double distanceTo(const QLineF& line, const QPointF& point) {
  const QPointF along = line.p2() - line.p1(), to = point - line.p1();
  const double square = QPointF::dotProduct(along, along);
  const double share = square > 0 ? std::clamp(QPointF::dotProduct(along, to) / square, 0.0, 1.0) : 0;
  return QLineF(point, line.p1() + along * share).length();
}

// A letter goes along its wall from under a sight point.
void standAside(PlanPicture::WallLine& wall, const std::vector<PlanPicture::Sight>& sights, double line) {
  const double along = wall.line.length();
  if (!wall.placed || along <= 0) return;
  for (const PlanPicture::Sight& sight : sights) {
    if (QLineF(sight.at, wall.letter).length() >= line) continue;
    wall.letter += (wall.line.p2() - wall.line.p1()) / along * std::min(line * 1.5, along * 0.4);
    return;
  }
}

}  // namespace

PlanPicture planPicture(const Job& job, const Plan& plan, const QSizeF& size, double line) {
  PlanPicture picture;
  const bool anyUnplaced =
      std::any_of(plan.walls.begin(), plan.walls.end(), [](const auto& wall) { return !wall->layout.face.line; });
  const QRectF frame = QRectF({0, 0}, size).adjusted(line * 0.6, line * 0.6, -line * 0.6, -line * 0.6);
  const double round = job.site.sightPoints.empty() ? line : 1.8 * line;
  QRectF room = frame.adjusted(round, round * 0.6, -round, -round * 0.6), row = frame;
  row.setTop(frame.bottom() - line * 1.3);
  if (anyUnplaced) room.setBottom(row.top() - line * 0.4);
  const QRectF bounds = boundsOf(job, plan);
  const QTransform toPixels = picture.toPixels = into(room, bounds);
  picture.frame = frame;
  for (const PlanPoint& corner : job.building.outline) picture.outline << toPixels.map(metres(corner));
  for (const auto& wall : plan.walls) {
    PlanPicture::WallLine shown;
    shown.sheeted = wall->layout.sheeted;
    shown.hand = wall->layout.direction.hand;
    const auto& place = wall->layout.face.line;
    shown.placed = place.has_value();
    if (place) shown.line = toPixels.map(QLineF(metres(place->from), metres(place->to)));
    if (place) shown.letter = outsideOf(shown.line, line * 0.75);
    picture.walls.push_back(shown);
  }
  addUnplaced(picture, row);
  if (bounds.isNull()) return picture;
  for (const SightPoint& point : job.site.sightPoints)
    picture.sights.push_back(sight(frame, toPixels.map(metres(point.at)), QString::fromStdString(point.name)));
  for (PlanPicture::WallLine& wall : picture.walls) standAside(wall, picture.sights, line);
  const double turn = static_cast<double>(job.site.trueNorth.microdegrees) * 1e-6 * std::acos(-1.0) / 180;
  picture.north = QPointF(std::sin(turn), -std::cos(turn));
  return picture;
}

PlanPoint sightAt(const PlanPicture& picture, const QPointF& pixel, const PlanPoint& from, UnitSystem units) {
  const QRectF inner = picture.frame.adjusted(3, 3, -3, -3);
  QPointF place = picture.toPixels.inverted().map(pixel);
  if (!inner.contains(pixel)) {
    const QPointF middle = picture.toPixels.inverted().map(picture.frame.center());
    const QLineF toward(middle, place);
    const double far = std::max(QLineF(middle, metres(from)).length(), toward.length());
    if (toward.length() > 0) place = middle + (place - middle) * (far / toward.length());
  }
  const Length unit = units == UnitSystem::FeetInches ? Length::feet(1) : Length::millimetres(100);
  const auto rounded = [&](double m) { return roundTo(Length::nanometres(std::llround(m * 1e9)), unit); };
  return {rounded(place.x()), rounded(-place.y())};
}

int sightNear(const PlanPicture& picture, const QPointF& pixel, double reach) {
  for (std::size_t i = 0; i < picture.sights.size(); ++i) {
    if (QLineF(picture.sights[i].at, pixel).length() <= reach) return static_cast<int>(i);
  }
  return -1;
}

int wallAt(const PlanPicture& picture, const QPointF& point, double reach) {
  int nearest = -1;
  double best = reach;
  for (std::size_t i = 0; i < picture.walls.size(); ++i) {
    const PlanPicture::WallLine& wall = picture.walls[i];
    const double distance = std::min(distanceTo(wall.line, point), QLineF(wall.letter, point).length());
    if (distance > best) continue;
    best = distance;
    nearest = static_cast<int>(i);
  }
  return nearest;
}

}  // namespace ribwright
