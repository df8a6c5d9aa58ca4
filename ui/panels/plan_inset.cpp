#include "ui/panels/plan_inset.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QMenu>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>

#include "core/editing/sight_edits.h"
#include "ui/panels/mixed_colour.h"
#include "ui/panels/wall_state.h"

namespace ribwright {

namespace {

void paintCentred(QPainter& painter, const QPointF& middle, const QString& words) {
  const QFontMetricsF metrics(painter.font());
  QRectF box(0, 0, metrics.horizontalAdvance(words) + 2, metrics.height());
  box.moveCenter(middle);
  painter.drawText(box, Qt::AlignCenter, words);
}

// A solid head with its point at `point`, looking along `along` (a unit vector).
void paintHead(QPainter& painter, const QPointF& point, const QPointF& along, double size) {
  const QPointF back = point - along * size * 1.5, side(-along.y() * size * 0.7, along.x() * size * 0.7);
  painter.drawPolygon(QPolygonF{point, back + side, back - side});
}

}  // namespace

PlanInset::PlanInset(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
  setObjectName(QStringLiteral("plan"));
  setAccessibleName(tr("Plan of the building"));
  setAccessibleDescription(tr("The arrow keys go from wall to wall."));
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
  connect(&session_, &Session::jobChanged, this, &PlanInset::place);
  connect(&session_, &Session::previewChanged, this, &PlanInset::place);
  connect(&session_, &Session::wallChanged, this, QOverload<>::of(&QWidget::update));
}

QSize PlanInset::sizeHint() const { return {34 * fontMetrics().averageCharWidth(), 7 * fontMetrics().lineSpacing()}; }

void PlanInset::place() {
  picture_ = session_.isOpen()
                 ? planPicture(session_.seenJob(), session_.seenPlan(), QSizeF(size()), fontMetrics().lineSpacing())
                 : PlanPicture{};
  update();
}

void PlanInset::resizeEvent(QResizeEvent*) { place(); }

void PlanInset::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() != QEvent::FontChange) return;
  updateGeometry();
  place();
}

void PlanInset::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), palette().color(QPalette::Base));
  painter.setPen(QPen(mixed(palette(), 35), 1));
  painter.drawRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5));
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(Qt::NoPen);
  painter.setBrush(mixed(palette(), 12));
  painter.drawPolygon(picture_.outline);
  paintWalls(painter);
  paintSights(painter);
  paintNorth(painter);
  if (!hasFocus()) return;
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
  painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
}

// The chosen wall is thick, its letter bold.
void PlanInset::paintWalls(QPainter& painter) const {
  const QColor ink = palette().color(QPalette::Text);
  for (std::size_t i = 0; i < picture_.walls.size(); ++i) {
    const PlanPicture::WallLine& wall = picture_.walls[i];
    const bool chosen = static_cast<int>(i) == session_.wall();
    painter.setPen(
        QPen(chosen ? palette().color(QPalette::Highlight) : ink, chosen ? 4 : 1.5, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(wall.line);
    QFont font = this->font();
    font.setBold(chosen);
    painter.setFont(font);
    painter.setPen(ink);
    paintCentred(painter, wall.letter, QString::fromStdString(session_.seenJob().walls[i].letter));
    const double size = fontMetrics().height() / 3.0;
    if (!wall.sheeted || wall.line.length() < 3 * size) continue;
    const QPointF along = (wall.line.p2() - wall.line.p1()) / wall.line.length();
    const QPointF hang = wall.hand == Hand::LeftToRight ? along : -along;
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink);
    const QPointF inside(along.y(), -along.x());
    paintHead(painter, wall.line.center() + hang * size * 0.75 + inside * size * 1.2, hang, size);
  }
}

// An eye: a ring with a dot, and an arrow outward where it stands beyond the plan.
void PlanInset::paintSights(QPainter& painter) const {
  const QColor ink = palette().color(QPalette::Text);
  const double radius = fontMetrics().height() / 3.2;
  const QPointF middle = QRectF(rect()).center();
  for (const PlanPicture::Sight& sight : picture_.sights) {
    painter.setPen(QPen(ink, 1.5));
    painter.setBrush(palette().color(QPalette::Base));
    painter.drawEllipse(sight.at, radius, radius);
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink);
    painter.drawEllipse(sight.at, radius / 2.6, radius / 2.6);
    const QLineF away(middle, sight.at);
    if (sight.beyond && away.length() > 0)
      paintHead(painter, sight.at + (away.p2() - away.p1()) / away.length() * radius * 2,
                (away.p2() - away.p1()) / away.length(), radius * 0.8);
  }
}

void PlanInset::paintNorth(QPainter& painter) const {
  if (!picture_.north) return;
  const double size = fontMetrics().height();
  const QPointF foot(width() - size * 1.1, size * 1.5), tip = foot + *picture_.north * size * 0.9;
  painter.setPen(QPen(palette().color(QPalette::Text), 1.5));
  painter.drawLine(foot - *picture_.north * size * 0.2, tip);
  painter.setBrush(palette().color(QPalette::Text));
  painter.setPen(Qt::NoPen);
  paintHead(painter, tip, *picture_.north, size / 3);
  QFont font = this->font();
  font.setPointSizeF(font.pointSizeF() * 0.8);
  painter.setFont(font);
  painter.setPen(palette().color(QPalette::Text));
  paintCentred(painter, foot - *picture_.north * size * 0.75, tr("N", "north"));
}

QString PlanInset::hintAt(const QPointF& point) const {
  const int sight = sightNear(picture_, point, reach() / 2);
  if (sight >= 0) {
    const PlanPicture::Sight& eye = picture_.sights[static_cast<std::size_t>(sight)];
    const QString words = eye.beyond ? tr("Sight point: %1, farther away. Drag it: the laps turn away from it.")
                                     : tr("Sight point: %1. Drag it: the laps turn away from it.");
    return words.arg(eye.name);
  }
  const int wall = wallAt(picture_, point, reach());
  return wall < 0 ? QString() : wallState(session_, static_cast<std::size_t>(wall)).sentences();
}

bool PlanInset::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return QWidget::event(event);
  const auto* help = static_cast<QHelpEvent*>(event);
  const QString hint = hintAt(help->pos());
  if (hint.isEmpty()) QToolTip::hideText();
  if (!hint.isEmpty()) QToolTip::showText(help->globalPos(), hint, this);
  return true;
}

void PlanInset::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  dragged_ = session_.isOpen() ? sightNear(picture_, event->position(), reach() / 2) : -1;
  pressedAt_ = event->position();
  moved_ = false;
  if (dragged_ < 0) session_.chooseWall(wallAt(picture_, event->position(), reach()));
}

void PlanInset::mouseMoveEvent(QMouseEvent* event) {
  if (dragged_ >= 0) return dragSight(event->position());
  const bool onSight = sightNear(picture_, event->position(), reach() / 2) >= 0;
  const bool onWall = wallAt(picture_, event->position(), reach()) >= 0;
  setCursor(onSight ? Qt::SizeAllCursor : onWall ? Qt::PointingHandCursor : Qt::ArrowCursor);
}

Outcome<Job> PlanInset::sightMoved(const QPointF& pixel) const {
  const Job& job = session_.newest();
  const auto index = static_cast<std::size_t>(dragged_);
  if (index >= job.site.sightPoints.size()) return job;
  return sightPointMovedTo(job, index, sightAt(picture_, pixel, job.site.sightPoints[index].at, job.units));
}

void PlanInset::dragSight(const QPointF& pixel) {
  moved_ = true;
  if (const auto moved = sightMoved(pixel)) session_.preview(moved.value());
}

std::string PlanInset::sightEdit() const { return session_.words().say("edit.sight", {}, session_.style()); }

void PlanInset::mouseReleaseEvent(QMouseEvent* event) {
  if (dragged_ < 0 || event->button() != Qt::LeftButton) return;
  const bool moved = moved_ || pressedAt_ != event->position();
  const auto job = sightMoved(event->position());
  dragged_ = -1;
  if (moved && job) session_.apply(sightEdit(), job.value());
  session_.endPreview();
}

void PlanInset::contextMenuEvent(QContextMenuEvent* event) {
  if (!session_.isOpen()) return;
  const int sight = sightNear(picture_, event->pos(), reach() / 2);
  QMenu menu(this);
  menu.setObjectName(QStringLiteral("planMenu"));
  QAction* add = menu.addAction(tr("&Add a sight point here"));
  QAction* remove = sight < 0 ? nullptr : menu.addAction(tr("&Delete the sight point"));
  QAction* picked = menu.exec(event->globalPos());
  if (!picked) return;
  const PlanPoint at = sightAt(picture_, event->pos(), {}, session_.newest().units);
  session_.edit(sightEdit(), [&](const Job& job) {
    if (picked == remove) return sightPointRemoved(job, static_cast<std::size_t>(sight));
    return picked == add ? sightPointAdded(job, {tr("sight point").toStdString(), at, 1}) : Outcome<Job>(job);
  });
}

void PlanInset::keyPressEvent(QKeyEvent* event) {
  const int key = event->key();
  if (key == Qt::Key_Escape && dragged_ >= 0) {
    dragged_ = -1;
    return session_.endPreview();
  }
  const bool back = key == Qt::Key_Left || key == Qt::Key_Up, on = key == Qt::Key_Right || key == Qt::Key_Down;
  if (!back && !on) return QWidget::keyPressEvent(event);
  session_.chooseWall(session_.wall() + (on ? 1 : -1));
}

}  // namespace ribwright
