#include "ui/session/window_style.h"

#include <QGuiApplication>
#include <QIconEngine>
#include <QPainter>
#include <QPalette>
#include <vector>

namespace ribwright {

namespace {

enum class Sign { Close, Float, MoreBeside, MoreBelow };

using Lines = std::vector<QPolygonF>;

// In a square of side 6.
Lines linesOf(Sign sign) {
  switch (sign) {
    case Sign::Close:
      return {{{0, 0}, {6, 6}}, {{0, 6}, {6, 0}}};
    case Sign::Float:
      return {{{2, 0}, {6, 0}, {6, 4}, {2, 4}, {2, 0}}, {{2, 2}, {0, 2}, {0, 6}, {4, 6}, {4, 4}}};
    case Sign::MoreBeside:
      return {{{0, 0}, {3, 3}, {0, 6}}, {{3, 0}, {6, 3}, {3, 6}}};
    case Sign::MoreBelow:
      return {{{0, 0}, {3, 3}, {6, 0}}, {{0, 3}, {3, 6}, {6, 3}}};
  }
  return {};
}

class SignEngine : public QIconEngine {
 public:
  explicit SignEngine(Sign sign) : sign_(sign) {}

  void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State) override {
    const double side = std::min(rect.width(), rect.height());
    const auto group = mode == QIcon::Disabled ? QPalette::Disabled : QPalette::Active;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->translate(QRectF(rect).center());
    painter->scale(side / 12, side / 12);
    painter->translate(-3, -3);
    painter->setPen(QPen(QGuiApplication::palette().color(group, QPalette::WindowText), 1.2));
    for (const QPolygonF& line : linesOf(sign_)) painter->drawPolyline(line);
    painter->restore();
  }

  QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
    QPixmap drawn(size);
    drawn.fill(Qt::transparent);
    QPainter painter(&drawn);
    paint(&painter, QRect({}, size), mode, state);
    return drawn;
  }

  QIconEngine* clone() const override { return new SignEngine(*this); }

 private:
  Sign sign_;
};

}  // namespace

QIcon WindowStyle::standardIcon(StandardPixmap sign, const QStyleOption* option, const QWidget* widget) const {
  const auto drawn = [](Sign lines) { return QIcon(new SignEngine(lines)); };
  if (sign == SP_TitleBarCloseButton || sign == SP_DockWidgetCloseButton) return drawn(Sign::Close);
  if (sign == SP_TitleBarNormalButton) return drawn(Sign::Float);
  if (sign == SP_ToolBarHorizontalExtensionButton) return drawn(Sign::MoreBeside);
  if (sign == SP_ToolBarVerticalExtensionButton) return drawn(Sign::MoreBelow);
  return QProxyStyle::standardIcon(sign, option, widget);
}

}  // namespace ribwright
