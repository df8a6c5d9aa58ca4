#include "ui/painting/glyphs.h"

#include "core/drawing/letter_widths.h"
#include "core/drawing/text_extent.h"

namespace ribwright {

QGlyphRun glyphsOf(std::string_view words, const QRawFont& font, bool bold) {
  QList<quint32> glyphs;
  QList<QPointF> places;
  double along = 0;
  for (const char32_t letter : lettersOf(words)) {
    const auto found = font.glyphIndexesForString(QString::fromUcs4(&letter, 1));
    glyphs << (found.isEmpty() ? 0u : found.front());
    places << QPointF(along, 0);
    along += font.pixelSize() * advanceOf(letter, bold) / unitsOfEm;
  }
  QGlyphRun run;
  run.setRawFont(font);
  run.setGlyphIndexes(glyphs);
  run.setPositions(places);
  return run;
}

}  // namespace ribwright
