#include "ui/board/wall_board.h"

#include <QContextMenuEvent>
#include <QEvent>
#include <QFontMetricsF>
#include <QGuiApplication>
#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

#include "core/drawing/board_pick.h"
#include "ui/board/board_notes.h"
#include "ui/board/hand_picture.h"
#include "ui/board/lit_part.h"
#include "ui/board/rulers.h"

namespace ribwright {

namespace {

constexpr double reach = 5;      // pixels from a screw or a line that still pick it
constexpr double mostZoom = 10;  // pixels per mm
constexpr double leastZoom = 0.0005;
constexpr double roundFitted = 10;    // pixels left free round a fitted wall
constexpr double smallestShown = 24;  // pixels: what is smaller is brought nearer
constexpr double shownSize = 140;

bool hasFace(const BoardPicture& picture) { return picture.face.width() > 0 && picture.face.height() > 0; }

}  // namespace

WallBoard::WallBoard(QWidget* parent) : ZoomedBoard({leastZoom, mostZoom}, Qt::ArrowCursor, parent) {
  setMouseTracking(true);
  setMinimumSize(240, 160);
  setAttribute(Qt::WA_OpaquePaintEvent);
  setAccessibleName(tr("Wall"));
  setAccessibleDescription(
      tr("The chosen wall seen from outside. Plus and minus zoom, arrow keys move, 0 shows the whole wall, Tab goes to "
         "the next sheet in hanging order, Escape lets go."));
  takeFont();
}

QRectF WallBoard::viewRect() const {
  const double size = rulerSize(font());
  return QRectF(rect()).adjusted(size, size, 0, 0);
}

void WallBoard::takeFont() {
  const double capital = QFontMetricsF(font()).capHeight();
  painter_.reset(capital > 0 ? capital : 8);
}

void WallBoard::setWall(std::shared_ptr<const BoardPicture> picture) {
  const bool same = picture && picture_ && picture->letter == picture_->letter;
  picture_ = std::move(picture);
  takeFont();
  setHovered(std::nullopt);
  setAccessibleName(picture_ ? QString::fromStdString(picture_->title) : tr("Wall"));
  if (!same || isFitted()) return fit();
  update();
}

void WallBoard::setChosen(const std::vector<Part>& parts) {
  if (chosen_ == parts) return;
  chosen_ = parts;
  if (picture_) {
    const QString title = QString::fromStdString(picture_->title);
    QStringList ids;
    for (const Part& part : parts) ids << QString::fromStdString(part.id);
    setAccessibleName(ids.isEmpty() ? title : tr("%1, chosen: %2").arg(title, ids.join(QStringLiteral(", "))));
  }
  update();
}

void WallBoard::setChanged(const std::vector<Part>& parts) {
  if (changed_ == parts) return;
  changed_ = parts;
  update();
}

void WallBoard::setUnderlay(const std::optional<Underlay>& underlay) {
  underlay_ = underlay;
  update();
}

void WallBoard::fit() {
  BoardView next = view();
  if (picture_ && hasFace(*picture_)) {
    const Box& face = picture_->face;
    const BoardMargins& margins = picture_->margins;
    const double capital = painter_.capital();
    // The sentence about screws stands under the wall and its margins.
    const double note = picture_->held.empty() ? 0 : QFontMetricsF(font()).height() + 20;
    const QRectF room =
        viewRect().adjusted(margins.left * capital + roundFitted, margins.top * capital + roundFitted,
                            -margins.right * capital - roundFitted, -margins.bottom * capital - roundFitted - note);
    const double across = std::max(room.width(), 40.0), down = std::max(room.height(), 30.0);
    next.zoom = std::clamp(std::min(across / face.width(), down / face.height()), leastZoom, mostZoom);
    next.origin = room.center() - QPointF(face.middle().x, face.middle().y) * next.zoom;
  }
  setView(next, true);
}

void WallBoard::show(const Part& part) {
  Box place{};
  if (!picture_ || !placeOf(*picture_, part, place)) return;
  BoardView next = view();
  const double size = std::max(place.width(), place.height());
  if (size * next.zoom < smallestShown) next.zoom = std::min(shownSize / std::max(size, 100.0), mostZoom);
  if (part.kind == Part::Kind::Screw) {
    for (const BoardMarks& layer : picture_->screws) next.zoom = std::max(next.zoom, std::min(layer.zoom.least, 1.0));
  }
  const QRectF area = viewRect();
  const bool seen = area.adjusted(8, 8, -8, -8).contains(next.at(place));
  if (seen && next.zoom == view().zoom) return;
  next.origin = area.center() - QPointF(place.middle().x, place.middle().y) * next.zoom;
  setView(next, false);
}

std::optional<Part> WallBoard::partAt(const QPointF& pixel) const {
  if (!picture_ || !viewRect().contains(pixel)) return std::nullopt;
  return ribwright::partAt(*picture_, view().placeOf(pixel), reach / view().zoom, view().zoom);
}

void WallBoard::clicked(const QPointF& pixel, Qt::KeyboardModifiers keys) {
  if (hand_ && hand_->clickedAt(pixel, keys)) return update();
  const std::optional<Part> part = partAt(pixel);
  if (!(keys & (Qt::ControlModifier | Qt::ShiftModifier))) return choose(part);
  if (part) emit partAlsoChosen(*part);
}

void WallBoard::pointedAt(const std::optional<QPointF>& pixel) {
  setHovered(pixel ? partAt(*pixel) : std::nullopt);
  if (!hand_ || !pixel) return;
  hand_->movedTo(*pixel, QGuiApplication::keyboardModifiers());
  if (hand_->picture()) update();
}

bool WallBoard::grabs(const QPointF& pixel, Qt::KeyboardModifiers keys) {
  const bool taken = hand_ && hand_->takes(pixel, keys);
  if (taken) update();
  return taken;
}

void WallBoard::draggedTo(const QPointF& pixel, Qt::KeyboardModifiers keys) {
  hand_->movedTo(pixel, keys);
  update();
}

void WallBoard::released(const QPointF& pixel, Qt::KeyboardModifiers keys) {
  hand_->letGo(pixel, keys);
  update();
}

Qt::CursorShape WallBoard::cursorAt(const QPointF& pixel) const {
  return hand_ ? hand_->cursorAt(pixel) : ZoomedBoard::cursorAt(pixel);
}

void WallBoard::contextMenuEvent(QContextMenuEvent* event) {
  if (!hand_) return ZoomedBoard::contextMenuEvent(event);
  const bool byKey = event->reason() == QContextMenuEvent::Keyboard;
  hand_->menuAsked(byKey ? std::nullopt : std::optional(QPointF(event->pos())), event->globalPos());
}

void WallBoard::choose(const std::optional<Part>& part) {
  if (part == chosen() && chosen_.size() < 2) return;
  setChosen(part ? std::vector<Part>{*part} : std::vector<Part>{});
  emit partChosen(part);
}

bool WallBoard::chooseNextSheet(int step) {
  if (!picture_) return false;
  const auto& things = picture_->things;
  int count = 0;
  while (count < static_cast<int>(things.size()) &&
         things[static_cast<std::size_t>(count)].part.kind == Part::Kind::Piece)
    ++count;
  const int now = chosen() ? thingOf(*picture_, *chosen()) : -1;
  const bool onSheet = now >= 0 && now < count;
  const int next = onSheet ? now + step : step > 0 ? 0 : -1;
  if (next < 0 || next >= count) return false;
  const Part part = things[static_cast<std::size_t>(next)].part;
  choose(part);
  show(part);
  return true;
}

void WallBoard::setHovered(const std::optional<Part>& part) {
  if (part == hovered_) return;
  hovered_ = part;
  update();
  emit hovered(part);
}

void WallBoard::keyPressEvent(QKeyEvent* event) {
  if (hand_ && hand_->keyPressed(*event)) return update();
  switch (event->key()) {
    case Qt::Key_Escape:
      if (!chosen_.empty()) return choose(std::nullopt);
      break;
    // Tab alone goes through the sheets: with Ctrl it leaves the board.
    case Qt::Key_Tab:
      QWidget::focusNextPrevChild(true);
      return;
    case Qt::Key_Backtab:
      QWidget::focusNextPrevChild(false);
      return;
    default:
      break;
  }
  ZoomedBoard::keyPressEvent(event);
}

bool WallBoard::focusNextPrevChild(bool next) {
  return chooseNextSheet(next ? 1 : -1) || QWidget::focusNextPrevChild(next);
}

void WallBoard::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const BoardInks inks = boardInks(palette());
  painter.fillRect(rect(), inks.ground);
  const QRectF area = viewRect();
  if (picture_) {
    const std::vector<BoardNote> notes = boardNotes(*picture_, view().zoom, area, font());
    std::vector<QRectF> plates;
    for (const BoardNote& note : notes) plates.push_back(note.plate);
    painter.setClipRect(area);
    const SeenBoard& seen = painter_.gather(*picture_, view(), area, inks, plates);
    drawGround(painter, seen);
    if (underlay_) paintUnderlay(painter, *underlay_, view(), area);
    drawLinesAndWords(painter, seen);
    paintParts(painter, area, inks);
    paintNotes(painter, notes, font(), inks);
    if (const HandPicture* hand = hand_ ? hand_->picture() : nullptr)
      paintHand(painter, *hand, view(), area, font(), palette());
    painter.setClipping(false);
    if (hasFace(*picture_)) paintRulers(painter, QRectF(rect()), view(), picture_->style, font(), palette());
  }
  paintFocus(painter);
}

void WallBoard::paintParts(QPainter& painter, const QRectF& area, const BoardInks& inks) {
  const auto lit = [&](const Part& part, Lit how) {
    paintLit(painter, *picture_, part, how, view(), area, painter_.capital(), inks.chosen);
  };
  const bool hoveredChosen = hovered_ && std::find(chosen_.begin(), chosen_.end(), *hovered_) != chosen_.end();
  for (const Part& part : changed_) lit(part, Lit::Changed);
  if (hovered_ && !hoveredChosen) lit(*hovered_, Lit::Hovered);
  for (const Part& part : chosen_) lit(part, Lit::Chosen);
}

void WallBoard::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) {
    takeFont();
    if (isFitted()) fit();
  }
  update();
}

}  // namespace ribwright
