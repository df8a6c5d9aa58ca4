#include "ui/painting/paper_font.h"

#include <QFont>
#include <QFontDatabase>
#include <QStringList>
#include <cmath>

// The resources lie in a static library, which a linker keeps only where they are named.
static void keepResources() { Q_INIT_RESOURCE(ui); }

namespace ribwright {

namespace {

QString loaded() {
  keepResources();
  QString family;
  for (const char* file : {":/fonts/LiberationSans-Regular.ttf", ":/fonts/LiberationSans-Bold.ttf"}) {
    const QStringList families = QFontDatabase::applicationFontFamilies(QFontDatabase::addApplicationFont(file));
    if (families.isEmpty()) return {};
    family = families.front();
  }
  return family;
}

}  // namespace

QString paperFontFamily() {
  static const QString family = loaded();
  return family;
}

QRawFont paperFont(double em, bool bold) {
  QFont font(paperFontFamily());
  font.setBold(bold);
  font.setHintingPreference(QFont::PreferNoHinting);
  font.setStyleStrategy(QFont::StyleStrategy(QFont::NoFontMerging | QFont::PreferOutline));
  // Whole pixels first: a raw font takes any size, a font is matched by whole ones.
  font.setPixelSize(64);
  QRawFont raw = QRawFont::fromFont(font);
  raw.setPixelSize(em);
  return raw;
}

}  // namespace ribwright
