#include "ui/session/appearance.h"

#include <QApplication>
#include <QFont>
#include <QPalette>
#include <QStyle>
#include <algorithm>
#include <iterator>
#include <optional>

#include "ui/session/kept_settings.h"
#include "ui/session/window_style.h"

namespace ribwright {

namespace {

const QString appearanceKey = QStringLiteral("appearance");
const QString percentKey = QStringLiteral("text-percent");

// In Appearance's order.
constexpr const char* names[] = {"system", "light", "dark"};

// As the program was started by the system.
struct AsStarted {
  QString style = QApplication::style()->name();
  QFont font = QApplication::font();
};

const AsStarted& asStarted() {
  static const AsStarted started;
  return started;
}

struct Inks {
  QColor window, base, alternate, text, quiet, button, highlight, onHighlight, link;
};

QPalette paletteOf(const Inks& inks) {
  QPalette palette(inks.button, inks.window);
  const auto set = [&](QPalette::ColorRole role, const QColor& colour) { palette.setColor(role, colour); };
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::ToolTipText})
    set(role, inks.text);
  set(QPalette::Base, inks.base);
  set(QPalette::ToolTipBase, inks.base);
  set(QPalette::AlternateBase, inks.alternate);
  set(QPalette::Highlight, inks.highlight);
  set(QPalette::HighlightedText, inks.onHighlight);
  set(QPalette::PlaceholderText, inks.quiet);
  set(QPalette::Link, inks.link);
  set(QPalette::LinkVisited, inks.link);
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
    palette.setColor(QPalette::Disabled, role, inks.quiet);
  return palette;
}

QPalette lightPalette() {
  return paletteOf({QColor(240, 240, 240), Qt::white, QColor(246, 246, 246), QColor(20, 20, 20), QColor(110, 110, 110),
                    QColor(236, 236, 236), QColor(20, 90, 160), Qt::white, QColor(20, 80, 150)});
}

QPalette darkPalette() {
  return paletteOf({QColor(44, 46, 48), QColor(30, 31, 33), QColor(38, 39, 41), QColor(235, 235, 235),
                    QColor(150, 150, 150), QColor(58, 60, 62), QColor(110, 180, 240), QColor(15, 15, 15),
                    QColor(140, 195, 245)});
}

void drawAs(const QString& style) {
  const auto* drawn = dynamic_cast<const WindowStyle*>(QApplication::style());
  if (!drawn || drawn->drawnAs() != style) QApplication::setStyle(new WindowStyle(style));
}

void apply(Appearance appearance) {
  const QString style = appearance == Appearance::System ? asStarted().style : QStringLiteral("fusion");
  drawAs(style);
  QApplication::setPalette(appearance == Appearance::System  ? QPalette()
                           : appearance == Appearance::Light ? lightPalette()
                                                             : darkPalette());
}

void applyPercent(int percent) {
  QFont font = asStarted().font;
  if (font.pointSizeF() > 0) font.setPointSizeF(font.pointSizeF() * percent / 100);
  if (font.pointSizeF() <= 0) font.setPixelSize(font.pixelSize() * percent / 100);
  if (font != QApplication::font()) QApplication::setFont(font);
}

}  // namespace

Appearance keptAppearance() {
  const QString kept = keptSettings().value(appearanceKey).toString();
  const auto found = std::find(std::begin(names), std::end(names), kept);
  return found == std::end(names) ? Appearance::System : static_cast<Appearance>(found - std::begin(names));
}

void chooseAppearance(Appearance appearance) {
  asStarted();
  keptSettings().setValue(appearanceKey, QLatin1String(names[static_cast<int>(appearance)]));
  apply(appearance);
}

int keptTextPercent() {
  const int kept = keptSettings().value(percentKey, 100).toInt();
  return std::find(std::begin(textPercents), std::end(textPercents), kept) == std::end(textPercents) ? 100 : kept;
}

void chooseTextPercent(int percent) {
  asStarted();
  keptSettings().setValue(percentKey, percent);
  applyPercent(percent);
}

void applyKeptAppearance() {
  drawAs(asStarted().style);
  if (const Appearance kept = keptAppearance(); kept != Appearance::System) apply(kept);
  if (const int percent = keptTextPercent(); percent != 100) applyPercent(percent);
}

}  // namespace ribwright
