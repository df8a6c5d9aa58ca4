#include "ui/board/wall_board.h"

#include <QEvent>
#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>

#include "core/drawing/board_pick.h"
#include "ui/board/board_notes.h"
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

WallBoard::WallBoard(QWidget* parent) : QWidget(parent) {
  setFocusPolicy(Qt::StrongFocus);
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
  if (!same || fitted_) return fit();
  update();
}

void WallBoard::setChosen(const std::optional<Part>& part) {
  if (chosen_ == part) return;
  chosen_ = part;
  if (picture_) {
    const QString title = QString::fromStdString(picture_->title);
    setAccessibleName(part ? tr("%1, chosen: %2").arg(title, QString::fromStdString(part->id)) : title);
  }
  update();
}

void WallBoard::setView(const BoardView& view, bool fitted) {
  view_ = view;
  fitted_ = fitted;
  update();
  emit viewChanged();
}

void WallBoard::fit() {
  BoardView view = view_;
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
    view.zoom = std::clamp(std::min(across / face.width(), down / face.height()), leastZoom, mostZoom);
    view.origin = room.center() - QPointF(face.middle().x, face.middle().y) * view.zoom;
  }
  setView(view, true);
}

void WallBoard::zoomBy(double factor, const QPointF& pixel) {
  const double zoom = std::clamp(view_.zoom * factor, leastZoom, mostZoom);
  setView({pixel - (pixel - view_.origin) * (zoom / view_.zoom), zoom}, false);
}

void WallBoard::pan(const QPointF& pixels) { setView({view_.origin + pixels, view_.zoom}, false); }

void WallBoard::zoomIn() { zoomBy(1.25, viewRect().center()); }

void WallBoard::zoomOut() { zoomBy(1 / 1.25, viewRect().center()); }

void WallBoard::show(const Part& part) {
  Box place{};
  if (!picture_ || !placeOf(*picture_, part, place)) return;
  BoardView view = view_;
  const double size = std::max(place.width(), place.height());
  if (size * view.zoom < smallestShown) view.zoom = std::min(shownSize / std::max(size, 100.0), mostZoom);
  if (part.kind == Part::Kind::Screw) {
    for (const BoardMarks& layer : picture_->screws) view.zoom = std::max(view.zoom, std::min(layer.zoom.least, 1.0));
  }
  const QRectF area = viewRect();
  const bool seen = area.adjusted(8, 8, -8, -8).contains(view.at(place));
  if (seen && view.zoom == view_.zoom) return;
  view.origin = area.center() - QPointF(place.middle().x, place.middle().y) * view.zoom;
  setView(view, false);
}

std::optional<Part> WallBoard::partAt(const QPointF& pixel) const {
  if (!picture_ || !viewRect().contains(pixel)) return std::nullopt;
  return ribwright::partAt(*picture_, view_.placeOf(pixel), reach / view_.zoom, view_.zoom);
}

void WallBoard::choose(const std::optional<Part>& part) {
  if (part == chosen_) return;
  setChosen(part);
  emit partChosen(part);
}

bool WallBoard::chooseNextSheet(int step) {
  if (!picture_) return false;
  const auto& things = picture_->things;
  int count = 0;
  while (count < static_cast<int>(things.size()) &&
         things[static_cast<std::size_t>(count)].part.kind == Part::Kind::Piece)
    ++count;
  const int now = chosen_ ? thingOf(*picture_, *chosen_) : -1;
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

void WallBoard::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const BoardInks inks = boardInks(palette());
  painter.fillRect(rect(), inks.ground);
  const QRectF area = viewRect();
  if (picture_) {
    const std::vector<BoardNote> notes = boardNotes(*picture_, view_.zoom, area, font());
    std::vector<QRectF> plates;
    for (const BoardNote& note : notes) plates.push_back(note.plate);
    painter.setClipRect(area);
    painter_.paint(painter, *picture_, view_, area, inks, plates);
    const double capital = painter_.capital();
    if (hovered_ && hovered_ != chosen_)
      paintLit(painter, *picture_, *hovered_, Lit::Hovered, view_, area, capital, inks.chosen);
    if (chosen_) paintLit(painter, *picture_, *chosen_, Lit::Chosen, view_, area, capital, inks.chosen);
    paintNotes(painter, notes, font(), inks);
    painter.setClipping(false);
    if (hasFace(*picture_)) paintRulers(painter, QRectF(rect()), view_, picture_->style, font(), palette());
  }
  if (!hasFocus()) return;
  painter.setRenderHint(QPainter::Antialiasing, false);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
  painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
}

void WallBoard::resizeEvent(QResizeEvent*) {
  if (fitted_) fit();
}

void WallBoard::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) {
    takeFont();
    if (fitted_) fit();
  }
  update();
}

}  // namespace ribwright
