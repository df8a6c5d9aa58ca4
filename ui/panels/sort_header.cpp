#include "ui/panels/sort_header.h"

#include <QKeyEvent>
#include <QPainter>
#include <QStyleOptionFocusRect>
#include <algorithm>

#include "ui/session/kept_settings.h"

namespace ribwright {

namespace {

constexpr int shortWhile = 400;  // ms, after which a drawn width is written down

}  // namespace

SortHeader::SortHeader(QWidget* parent) : QHeaderView(Qt::Horizontal, parent) {
  setSectionsClickable(true);
  setSortIndicatorShown(true);
  setSortIndicatorClearable(true);
  setSortIndicator(-1, Qt::AscendingOrder);
  setHighlightSections(false);
  setStretchLastSection(false);
  setFocusPolicy(Qt::TabFocus);
  later_.setSingleShot(true);
  later_.setInterval(shortWhile);
  connect(&later_, &QTimer::timeout, this, &SortHeader::keep);
  connect(this, &QHeaderView::sectionResized, this, [this](int column, int, int width) {
    if (fitting_ || fontMetrics().averageCharWidth() == 0) return;
    drawn_[column] = double(width) / fontMetrics().averageCharWidth();
    later_.start();
  });
}

QString SortHeader::key() const { return QStringLiteral("columns/") + parentWidget()->objectName(); }

void SortHeader::read() {
  if (read_ || parentWidget()->objectName().isEmpty()) return;
  read_ = true;
  const QStringList widths = keptSettings().value(key()).toStringList();
  for (qsizetype i = 0; i < widths.size(); ++i) {
    bool number = false;
    const double letters = widths[i].toDouble(&number);
    if (number && letters > 0 && letters < 1000) drawn_[int(i)] = letters;
  }
}

int SortHeader::drawnWidth(int column) {
  read();
  const auto found = drawn_.find(column);
  return found == drawn_.end() ? 0 : qRound(found->second * fontMetrics().averageCharWidth());
}

void SortHeader::keep() {
  QStringList widths;
  for (int column = 0; column < count(); ++column) {
    const auto found = drawn_.find(column);
    widths << (found == drawn_.end() ? QStringLiteral("0") : QString::number(found->second, 'f', 2));
  }
  keptSettings().setValue(key(), widths);
}

void SortHeader::sortBy(int column) {
  const bool here = sortIndicatorSection() == column;
  if (here && sortIndicatorOrder() == Qt::DescendingOrder) return setSortIndicator(-1, Qt::AscendingOrder);
  setSortIndicator(column, here ? Qt::DescendingOrder : Qt::AscendingOrder);
}

void SortHeader::goTo(int column) {
  at_ = std::clamp(column, 0, std::max(0, count() - 1));
  const int left = sectionViewportPosition(at_);
  if (left < 0 || left + sectionSize(at_) > viewport()->width()) setOffset(sectionPosition(at_));
  setAccessibleDescription(model() ? model()->headerData(at_, Qt::Horizontal).toString() : QString());
  viewport()->update();
}

void SortHeader::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Left:
      return goTo(at_ - 1);
    case Qt::Key_Right:
      return goTo(at_ + 1);
    case Qt::Key_Home:
      return goTo(0);
    case Qt::Key_End:
      return goTo(count() - 1);
    case Qt::Key_Space:
    case Qt::Key_Return:
    case Qt::Key_Enter:
      return sortBy(at_);
    default:
      return event->ignore();  // not the grandparent's selection by arrows
  }
}

void SortHeader::focusInEvent(QFocusEvent* event) {
  QHeaderView::focusInEvent(event);
  goTo(at_);
}

void SortHeader::focusOutEvent(QFocusEvent* event) {
  QHeaderView::focusOutEvent(event);
  viewport()->update();
}

void SortHeader::paintSection(QPainter* painter, const QRect& rect, int column) const {
  painter->save();
  QHeaderView::paintSection(painter, rect, column);
  painter->restore();
  if (!hasFocus() || column != at_) return;
  painter->save();
  painter->setPen(QPen(palette().color(QPalette::Highlight), 2));
  painter->drawRect(rect.adjusted(1, 1, -2, -2));
  painter->restore();
}

}  // namespace ribwright
