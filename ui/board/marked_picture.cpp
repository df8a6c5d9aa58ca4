#include "ui/board/marked_picture.h"

#include <QKeyEvent>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

namespace ribwright {

namespace {

constexpr double mostPictureZoom = 32;  // pixels of the screen to one of the picture
constexpr double leastPictureZoom = 0.005;
constexpr double roundPicture = 8;  // pixels left free
constexpr double crossReach = 12;   // pixels from a cross that still take it
constexpr double arm = 14;          // pixels of a cross from its middle
constexpr double hole = 3;          // pixels round its middle that stay to be seen
constexpr double largeStep = 10;    // pixels of the picture, with Shift

QPointF stepOf(int key) {
  switch (key) {
    case Qt::Key_Left:
      return {-1, 0};
    case Qt::Key_Right:
      return {1, 0};
    case Qt::Key_Up:
      return {0, -1};
    case Qt::Key_Down:
      return {0, 1};
    default:
      return {};
  }
}

}  // namespace

MarkedPicture::MarkedPicture(QWidget* parent)
    : ZoomedBoard({leastPictureZoom, mostPictureZoom}, Qt::CrossCursor, parent) {
  setMouseTracking(true);
  setMinimumSize(240, 160);
  setAttribute(Qt::WA_OpaquePaintEvent);
  setAccessibleName(tr("Picture of the plan"));
  setAccessibleDescription(tr(
      "Click to set the chosen cross. Arrow keys move it by a pixel, with Shift by ten; 1 and 2 choose a cross; plus "
      "and minus zoom, arrow keys with Ctrl move the picture, 0 shows all of it."));
}

void MarkedPicture::setPicture(const ScaledPicture& picture) {
  picture_ = picture;
  fit();
}

void MarkedPicture::setCross(int which, const std::optional<QPointF>& place) {
  at_[static_cast<std::size_t>(which)] = place;
  update();
}

void MarkedPicture::chooseCross(int which) {
  if (which == chosen_) return;
  chosen_ = which;
  update();
  emit crossChosen(which);
}

void MarkedPicture::fit() {
  BoardView next = view();
  const QSizeF size = picture_.size();
  if (!picture_.isNull()) {
    const QRectF room = viewRect().adjusted(roundPicture, roundPicture, -roundPicture, -roundPicture);
    next.zoom = std::clamp(std::min(room.width() / size.width(), room.height() / size.height()), leastPictureZoom,
                           mostPictureZoom);
    next.origin = room.center() - QPointF(size.width(), size.height()) / 2 * next.zoom;
  }
  setView(next, true);
}

// The nearest place that is on the picture.
QPointF MarkedPicture::onPicture(const QPointF& place) const {
  const QRectF all = pictureRect();
  return {std::clamp(place.x(), all.left(), all.right()), std::clamp(place.y(), all.top(), all.bottom())};
}

std::optional<int> MarkedPicture::crossAt(const QPointF& pixel) const {
  for (const int which : {chosen_, 1 - chosen_}) {
    if (!cross(which)) continue;
    const QPointF away = onScreen(*cross(which)) - pixel;
    if (std::hypot(away.x(), away.y()) <= crossReach) return which;
  }
  return std::nullopt;
}

void MarkedPicture::move(int which, const QPointF& place) {
  setCross(which, onPicture(place));
  emit crossMoved(which);
}

// The other one is next, as long as it is not set.
void MarkedPicture::clicked(const QPointF& pixel, Qt::KeyboardModifiers) {
  const QPointF place = onShown(pixel);
  if (!pictureRect().contains(place)) return;
  move(chosen_, place);
  if (!cross(1 - chosen_)) chooseCross(1 - chosen_);
}

bool MarkedPicture::grabs(const QPointF& pixel, Qt::KeyboardModifiers) {
  const std::optional<int> which = picture_.isNull() ? std::nullopt : crossAt(pixel);
  if (!which) return false;
  chooseCross(*which);
  grip_ = onScreen(*cross(*which)) - pixel;
  return true;
}

void MarkedPicture::draggedTo(const QPointF& pixel, Qt::KeyboardModifiers) { move(chosen_, onShown(pixel + grip_)); }

Qt::CursorShape MarkedPicture::cursorAt(const QPointF& pixel) const {
  return crossAt(pixel) ? Qt::SizeAllCursor : ZoomedBoard::cursorAt(pixel);
}

// A cross that is not set yet comes into the middle of what is seen.
bool MarkedPicture::moveByKey(const QKeyEvent& event) {
  if (picture_.isNull() || event.modifiers() & (Qt::ControlModifier | Qt::AltModifier)) return false;
  const QPointF step = stepOf(event.key());
  if (step.isNull() && event.key() != Qt::Key_Space) return false;
  const auto& now = cross(chosen_);
  const double length = event.modifiers() & Qt::ShiftModifier ? largeStep : 1;
  move(chosen_, now ? *now + step * length : onShown(viewRect().center()));
  keepInView(*cross(chosen_));
  return true;
}

void MarkedPicture::keepInView(const QPointF& place) {
  const QRectF area = viewRect().adjusted(arm, arm, -arm, -arm);
  if (area.contains(onScreen(place))) return;
  setView({area.center() - place * zoom(), zoom()}, false);
}

void MarkedPicture::keyPressEvent(QKeyEvent* event) {
  if (moveByKey(*event)) return;
  if (event->key() == Qt::Key_1) return chooseCross(0);
  if (event->key() == Qt::Key_2) return chooseCross(1);
  ZoomedBoard::keyPressEvent(event);
  const bool zoomed = event->key() == Qt::Key_Plus || event->key() == Qt::Key_Equal || event->key() == Qt::Key_Minus;
  if (zoomed && cross(chosen_)) keepInView(*cross(chosen_));
}

// Light round dark, to be seen on any picture; the chosen one has a ring.
void MarkedPicture::paintCross(QPainter& painter, int which) const {
  const QPointF middle = onScreen(*cross(which));
  const QString name = QString::number(which + 1);
  const QPointF nameAt = middle + QPointF(arm + 2, -arm - 2);
  QPainterPath letters;
  letters.addText(nameAt, font(), name);
  for (const auto& [colour, width] : {std::pair(QColor(Qt::white), 4.5), std::pair(QColor(0xc0, 0x00, 0x60), 1.8)}) {
    painter.setPen(QPen(colour, width));
    painter.setBrush(Qt::NoBrush);
    for (const QPointF& way : {QPointF(1, 0), QPointF(-1, 0), QPointF(0, 1), QPointF(0, -1)})
      painter.drawLine(middle + way * hole, middle + way * arm);
    if (which == chosen_) painter.drawEllipse(middle, arm + 3, arm + 3);
    painter.strokePath(letters, QPen(colour, width > 3 ? width : 0.6));
  }
  painter.fillPath(letters, QColor(0xc0, 0x00, 0x60));
}

void MarkedPicture::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), palette().color(QPalette::Mid));
  if (picture_.isNull()) {
    painter.setPen(palette().color(QPalette::Text));
    painter.fillRect(rect(), palette().color(QPalette::Base));
    painter.drawText(rect(), Qt::AlignCenter | Qt::TextWordWrap,
                     tr("Choose a picture of the wall as the plans have it."));
  } else {
    const QTransform toScreen(zoom(), 0, 0, zoom(), view().origin.x(), view().origin.y());
    paintPicture(painter, picture_, toScreen, viewRect());
    painter.setRenderHint(QPainter::Antialiasing);
    for (const int which : {1 - chosen_, chosen_}) {
      if (cross(which)) paintCross(painter, which);
    }
  }
  paintFocus(painter);
}

}  // namespace ribwright
