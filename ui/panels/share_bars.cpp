#include "ui/panels/share_bars.h"

#include <QEvent>
#include <QPainter>
#include <algorithm>

namespace ribwright {

namespace {

// In tenths of a per cent, half away from nothing.
QString percentText(Money part, Money total, char decimalSign) {
  if (total <= Money()) return {};
  const auto tenths = static_cast<qint64>((Int128(part.cents()) * 2000 + total.cents()) / (Int128(total.cents()) * 2));
  return QStringLiteral("%1%2%3 %").arg(tenths / 10).arg(QLatin1Char(decimalSign)).arg(tenths % 10);
}

}  // namespace

ShareBars::ShareBars(QWidget* parent) : QWidget(parent) { setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed); }

void ShareBars::setShares(const QString& title, std::vector<Share> shares, Money total, char decimalSign,
                          const std::string& currency) {
  title_ = title;
  rows_.clear();
  Money greatest;
  for (const Share& share : shares) greatest = std::max(greatest, share.money);
  QStringList read;
  for (const Share& share : shares) {
    const double part =
        greatest > Money() ? static_cast<double>(share.money.cents()) / static_cast<double>(greatest.cents()) : 0;
    rows_.push_back({share.name, QString::fromStdString(shownMoney(share.money, decimalSign, currency)),
                     percentText(share.money, total, decimalSign), std::max(0.0, part)});
    read << rows_.back().name + QLatin1Char(' ') + rows_.back().figure;
  }
  setAccessibleName(title);
  setAccessibleDescription(read.join(QStringLiteral("; ")));
  setVisible(!rows_.empty());
  updateGeometry();
  update();
}

int ShareBars::rowHeight() const { return fontMetrics().height() + fontMetrics().height() / 3; }

int ShareBars::widest(QString Row::*text) const {
  int width = 0;
  for (const Row& row : rows_) width = std::max(width, fontMetrics().horizontalAdvance(row.*text));
  return width;
}

QSize ShareBars::sizeHint() const {
  const int gap = fontMetrics().averageCharWidth() * 2;
  const int width = widest(&Row::name) + widest(&Row::figure) + widest(&Row::percent) + 4 * gap + 8 * gap;
  return {width, rowHeight() * (static_cast<int>(rows_.size()) + 1)};
}

void ShareBars::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) updateGeometry();
}

void ShareBars::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const int gap = fontMetrics().averageCharWidth() * 2, row = rowHeight();
  const int names = widest(&Row::name), figures = widest(&Row::figure), percents = widest(&Row::percent);
  const int left = gap + names + gap, right = width() - gap - percents - gap - figures - gap;
  QFont bold = font();
  bold.setBold(true);
  painter.setFont(bold);
  painter.drawText(QRect(gap, 0, width() - 2 * gap, row), Qt::AlignVCenter | Qt::AlignLeft, title_);
  painter.setFont(font());
  int y = row;
  for (const Row& each : rows_) {
    painter.setPen(palette().color(QPalette::WindowText));
    painter.drawText(QRect(gap, y, names, row), Qt::AlignVCenter | Qt::AlignLeft, each.name);
    painter.drawText(QRect(right + gap, y, figures, row), Qt::AlignVCenter | Qt::AlignRight, each.figure);
    painter.drawText(QRect(right + gap + figures + gap, y, percents, row), Qt::AlignVCenter | Qt::AlignRight,
                     each.percent);
    const int length = static_cast<int>(each.part * std::max(0, right - left - 1));
    painter.setBrush(palette().color(QPalette::Highlight));
    painter.drawRect(QRect(left, y + row / 5, length, row - 2 * (row / 5)));
    y += row;
  }
}

}  // namespace ribwright
