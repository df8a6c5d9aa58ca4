#include "core/drawing/scale_bar.h"

#include "core/drawing/shown_length.h"
#include "core/drawing/text_extent.h"

namespace ribwright {

namespace {
constexpr double barHeight = 1.8;
constexpr int parts = 4;
}  // namespace

void drawScaleBar(Sketch& sketch, const Words& words, const LengthStyle& style, const DrawingScale& scale,
                  const PaperPoint& at) {
  const Length bar = scaleBarOnPaper(style.units);
  const double whole = bar.inMillimetres(), part = whole / parts;
  for (int i = 0; i < parts; i += 2) {
    const double left = at.x + i * part;
    sketch.fill({{left, at.y - barHeight}, {left + part, at.y - barHeight}, {left + part, at.y}, {left, at.y}},
                Ink::Black);
  }
  // The outline's outer edge is the bar's exact length.
  sketch.rectangle(Box{at.x, at.y - barHeight, at.x + whole, at.y}.grown(-thinLine / 2), thinLine);
  const double baseline = at.y + 1 + ascentOf(smallText);
  for (int i = 0; i <= parts; i += 2) {
    const Length stands = scaled(bar * scale.below, i, parts);
    const TextAnchor anchor = i == 0 ? TextAnchor::Start : i == parts ? TextAnchor::End : TextAnchor::Middle;
    sketch.text({{at.x + i * part, baseline}, smallText, anchor, 0, false, dimensionText(stands, style), -1});
  }
  const std::string proof =
      words.say(style.units == UnitSystem::Millimetres ? "paper.bar.mm" : "paper.bar.in", {}, style);
  sketch.text({{at.x, at.y - barHeight - 1 - descentOf(smallText)}, smallText, TextAnchor::Start, 0, false, proof, -1});
}

}  // namespace ribwright
