#include "ui/panels/blank_view.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "ui/painting/page_painter.h"

namespace ribwright {

namespace {

constexpr double margin = 4;       // mm round the drawing
constexpr double narrowest = 150;  // mm that its words need

std::vector<PageBlock> blocksOf(const NumberedBlank& blank, const BlankWords& words, const Box& room) {
  std::vector<PageBlock> blocks = paragraph(blankHeading(blank, words), room, 0, true);
  blocks.push_back(blankPicture(blank, words));
  blocks.push_back(clearPaper(1));
  for (const std::string& line : cutLines(blank, words)) addBlocks(blocks, paragraph(line, room));
  return blocks;
}

}  // namespace

BlankView::BlankView(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("blankView"));
  setAccessibleName(tr("The chosen blank"));
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Preferred);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

void BlankView::show(const std::optional<NumberedBlank>& blank, const BlankWords& words) {
  blank_ = blank;
  words_ = words;
  QStringList told;
  if (blank_) {
    told << QString::fromStdString(blankHeading(*blank_, words_));
    for (const std::string& line : cutLines(*blank_, words_)) told << QString::fromStdString(line);
  }
  setAccessibleDescription(told.join(QLatin1Char('\n')));
  draw();
}

// Its words are as tall as those of the window where there is room for that.
double BlankView::pixels() const {
  const double wanted = fontMetrics().capHeight() / siteText;
  return std::max(0.1, std::min(wanted, width() / narrowest));
}

void BlankView::draw() {
  Sketch sketch;
  tall_ = 0;
  if (blank_ && width() > 0) {
    const Box room{margin, margin, width() / pixels() - margin, 1e6};
    const PageBlock whole = together(blocksOf(*blank_, words_, room));
    whole.draw(sketch, room);
    tall_ = whole.height + 2 * margin;
  }
  drawing_ = sketch.drawing;
  setMinimumHeight(static_cast<int>(std::ceil(tall_ * pixels())));
  updateGeometry();
  update();
}

QSize BlankView::sizeHint() const {
  const int wide = static_cast<int>(narrowest * fontMetrics().capHeight() / siteText);
  return {wide, wide / 2};
}

int BlankView::heightForWidth(int) const { return minimumHeight(); }

void BlankView::paintEvent(QPaintEvent*) {
  if (!blank_) return;
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), Qt::white);  // as on paper, in dark windows too
  painter.scale(pixels(), pixels());
  paintDrawing(painter, drawing_, 1 / pixels());
}

void BlankView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  draw();
}

void BlankView::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) draw();
}

}  // namespace ribwright
