#include "ui/panels/perimeter_strip.h"

#include <QEvent>
#include <QScrollBar>
#include <algorithm>
#include <numeric>

#include "ui/panels/strip_widths.h"
#include "ui/panels/wall_tile.h"

namespace ribwright {

namespace {

constexpr int between = 3;  // pixels

}  // namespace

PerimeterStrip::PerimeterStrip(Session& session, QWidget* parent)
    : QScrollArea(parent), session_(session), row_(new QWidget(this)) {
  setObjectName(QStringLiteral("walls"));
  setAccessibleName(tr("Walls in walking order"));
  setFrameShape(QFrame::NoFrame);
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFocusPolicy(Qt::NoFocus);
  setWidget(row_);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  connect(&session_, &Session::jobChanged, this, &PerimeterStrip::showJob);
  connect(&session_, &Session::wallChanged, this, &PerimeterStrip::showWall);
}

int PerimeterStrip::tileHeight() const {
  int height = WallTile().sizeHint().height();
  for (const WallTile* tile : tiles_) height = std::max(height, tile->sizeHint().height());
  return height;
}

QSize PerimeterStrip::sizeHint() const {
  return {60 * fontMetrics().averageCharWidth(), tileHeight() + horizontalScrollBar()->sizeHint().height()};
}

QSize PerimeterStrip::minimumSizeHint() const { return {20 * fontMetrics().averageCharWidth(), sizeHint().height()}; }

void PerimeterStrip::showJob() {
  const std::size_t walls = session_.job().walls.size();
  while (tiles_.size() > walls) {
    delete tiles_.back();
    tiles_.pop_back();
  }
  while (tiles_.size() < walls) {
    auto* tile = new WallTile(row_);
    const int index = static_cast<int>(tiles_.size());
    connect(tile, &QAbstractButton::clicked, this, [this, index] {
      session_.chooseWall(index);
      showWall();
    });
    connect(tile, &WallTile::stepAsked, this, &PerimeterStrip::step);
    tile->show();
    tiles_.push_back(tile);
  }
  std::vector<WallState> states;
  double tallest = 0;
  for (std::size_t i = 0; i < walls; ++i) {
    states.push_back(wallState(session_, i));
    tallest = std::max(tallest, states.back().tallest);
  }
  for (std::size_t i = 0; i < walls; ++i) tiles_[i]->setState(states[i], tallest);
  placeTiles();
  updateGeometry();
}

// One tile at a time takes part in the round of the tabulator; arrow keys go on from it.
void PerimeterStrip::showWall() {
  for (std::size_t i = 0; i < tiles_.size(); ++i) {
    const bool chosen = static_cast<int>(i) == session_.wall();
    tiles_[i]->setChecked(chosen);
    tiles_[i]->setFocusPolicy(chosen ? Qt::StrongFocus : Qt::ClickFocus);
    if (chosen) {
      setFocusProxy(tiles_[i]);
      ensureWidgetVisible(tiles_[i], between, 0);
    }
  }
}

void PerimeterStrip::step(int by) {
  if (tiles_.empty()) return;
  const int wall = std::clamp(session_.wall() + by, 0, static_cast<int>(tiles_.size()) - 1);
  session_.chooseWall(wall);
  tiles_[static_cast<std::size_t>(wall)]->setFocus(Qt::TabFocusReason);
}

void PerimeterStrip::placeTiles() {
  std::vector<double> sizes;
  std::vector<int> least;
  for (const WallTile* tile : tiles_) {
    sizes.push_back(tile->state().width);
    least.push_back(tile->minimumSizeHint().width());
  }
  const int gaps = between * std::max(0, static_cast<int>(tiles_.size()) - 1);
  const std::vector<int> widths = stripWidths(sizes, least, viewport()->width() - gaps);
  const int height = tileHeight();
  int left = 0;
  for (std::size_t i = 0; i < tiles_.size(); ++i) {
    tiles_[i]->setGeometry(left, 0, widths[i], height);
    left += widths[i] + between;
  }
  row_->resize(std::max(0, left - between), height);
}

void PerimeterStrip::resizeEvent(QResizeEvent* event) {
  QScrollArea::resizeEvent(event);
  placeTiles();
}

void PerimeterStrip::changeEvent(QEvent* event) {
  QScrollArea::changeEvent(event);
  if (event->type() != QEvent::FontChange && event->type() != QEvent::StyleChange) return;
  placeTiles();
  updateGeometry();
}

}  // namespace ribwright
