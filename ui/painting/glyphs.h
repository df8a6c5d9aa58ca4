// Words as glyphs of the paper's font, letter by letter at core's advances, so that they take exactly the room that
// core gave them.
#pragma once

#include <QGlyphRun>
#include <QRawFont>
#include <string_view>

namespace ribwright {

// Starts at (0, 0) on the baseline; `font` at the size that is wanted (paper_font.h).
QGlyphRun glyphsOf(std::string_view words, const QRawFont& font, bool bold);

}  // namespace ribwright
