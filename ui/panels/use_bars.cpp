#include "ui/panels/use_bars.h"

#include <QPainter>
#include <array>

#include "ui/panels/mixed_colour.h"

namespace ribwright {
namespace {

struct Share {
  QString name;
  Area area;
  Qt::BrushStyle pattern;
};

std::array<Share, 5> sharesOf(const SteelAccount& steel) {
  return {{{UseBars::tr("pieces"), steel.pieces, Qt::SolidPattern},
           {UseBars::tr("cut-outs"), steel.cutOuts, Qt::BDiagPattern},
           {UseBars::tr("drops kept"), steel.drops, Qt::HorPattern},
           {UseBars::tr("spares"), steel.spares, Qt::Dense6Pattern},
           {UseBars::tr("waste"), steel.waste, Qt::NoBrush}}};
}

QBrush brushOf(const QPalette& palette, Qt::BrushStyle pattern) {
  if (pattern == Qt::NoBrush) return palette.color(QPalette::Base);
  return QBrush(pattern == Qt::SolidPattern ? mixed(palette, 45) : palette.color(QPalette::Text), pattern);
}

}  // namespace

UseBars::UseBars(QWidget* parent) : QWidget(parent) { setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed); }

void UseBars::setBars(std::vector<Bar> bars) {
  bars_ = std::move(bars);
  QStringList said;
  for (const Bar& bar : bars_) said << bar.title + QStringLiteral(": ") + bar.waste;
  setAccessibleDescription(said.join(QStringLiteral("; ")));
  updateGeometry();
  update();
}

// The legend stands two or three beside one another.
int UseBars::legendLines() const { return 2; }

QSize UseBars::sizeHint() const {
  const int line = fontMetrics().height();
  return {32 * fontMetrics().averageCharWidth(),
          line * legendLines() + line / 2 + static_cast<int>(bars_.size()) * (2 * line + line / 2)};
}

void UseBars::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const int line = fontMetrics().height(), gap = line / 3;
  const auto box = [&](const QRect& at, Qt::BrushStyle pattern) {
    painter.fillRect(at, palette().color(QPalette::Base));
    painter.setPen(palette().color(QPalette::Text));
    painter.setBrush(brushOf(palette(), pattern));
    painter.drawRect(at);
  };
  const auto legend = sharesOf({});
  for (int i = 0; i < 5; ++i) {
    const int x = (i % 3) * width() / 3, y = (i / 3) * line;
    box({x + 1, y + gap / 2, line, line - gap - 1}, legend[static_cast<std::size_t>(i)].pattern);
    painter.drawText(QRect(x + line + gap, y, width() / 3 - line - gap, line), Qt::AlignVCenter | Qt::AlignLeft,
                     legend[static_cast<std::size_t>(i)].name);
  }
  int y = line * legendLines() + line / 2;
  for (const Bar& bar : bars_) {
    const int right = fontMetrics().horizontalAdvance(bar.waste) + gap;
    painter.setPen(palette().color(QPalette::Text));
    painter.drawText(QRect(0, y, width(), line), Qt::AlignRight | Qt::AlignVCenter, bar.waste);
    painter.drawText(QRect(0, y, width() - right, line), Qt::AlignLeft | Qt::AlignVCenter,
                     fontMetrics().elidedText(bar.title, Qt::ElideMiddle, width() - right));
    const double all = bar.steel.bought.inSquareMetres();
    double x = 0;
    for (const Share& share : sharesOf(bar.steel)) {
      const double wide = all > 0 ? share.area.inSquareMetres() / all * (width() - 1) : 0;
      if (wide > 0)
        box(QRect(static_cast<int>(x), y + line, static_cast<int>(x + wide) - static_cast<int>(x), line),
            share.pattern);
      x += wide;
    }
    y += 2 * line + line / 2;
  }
}

}  // namespace ribwright
