#include "ui/painting/board_inks.h"

namespace ribwright {

namespace {

QColor between(const QColor& from, const QColor& to, double share) {
  const auto mix = [&](float a, float b) { return a + (b - a) * static_cast<float>(share); };
  return QColor::fromRgbF(mix(from.redF(), to.redF()), mix(from.greenF(), to.greenF()), mix(from.blueF(), to.blueF()));
}

}  // namespace

QColor BoardInks::of(BoardTone tone) const {
  switch (tone) {
    case BoardTone::Ground:
      return ground;
    case BoardTone::Sheet:
      return sheet;
    case BoardTone::Translucent:
      return translucent;
    case BoardTone::Quiet:
      return quiet;
    case BoardTone::Steel:
      return steel;
    case BoardTone::Line:
      break;
  }
  return line;
}

BoardInks boardInks(const QPalette& palette) {
  const QColor base = palette.color(QPalette::Base), text = palette.color(QPalette::Text);
  const QColor highlight = palette.color(QPalette::Highlight);
  BoardInks inks;
  inks.ground = base;
  inks.sheet = between(base, text, 0.075);
  inks.translucent = between(base, highlight, 0.2);
  inks.quiet = between(base, text, 0.36);
  inks.steel = between(between(base, text, 0.62), highlight, 0.2);
  inks.line = between(base, text, 0.92);
  inks.chosen = highlight;
  return inks;
}

}  // namespace ribwright
