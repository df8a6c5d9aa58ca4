#include "core/drawing/trim_flat.h"

#include <algorithm>
#include <cmath>

#include "core/drawing/shown_length.h"
#include "core/drawing/text_extent.h"

namespace ribwright {
namespace {

constexpr double tall = 26, sectionWide = 34, stripTall = 11, lipWide = 14;

double lengthBetween(const SectionPoint& a, const SectionPoint& b) {
  return std::hypot((b.x - a.x).inMillimetres(), (b.y - a.y).inMillimetres());
}

void drawSection(Sketch& sketch, const Trim& trim, const Box& room) {
  if (trim.section.size() < 2) return;
  double left = 1e9, right = -1e9, low = 1e9, high = -1e9;
  for (const SectionPoint& point : trim.section) {
    left = std::min(left, point.x.inMillimetres());
    right = std::max(right, point.x.inMillimetres());
    low = std::min(low, point.y.inMillimetres());
    high = std::max(high, point.y.inMillimetres());
  }
  const double scale = std::min(room.width() / std::max(right - left, 1.0), room.height() / std::max(high - low, 1.0));
  std::vector<PaperPoint> line;
  for (const SectionPoint& point : trim.section)
    line.push_back(
        {room.left + (point.x.inMillimetres() - left) * scale, room.bottom - (point.y.inMillimetres() - low) * scale});
  sketch.polyline(std::move(line), outlineLine);
}

void centred(Sketch& sketch, double x, double baseline, const std::string& words) {
  sketch.text({{x, baseline}, smallText, TextAnchor::Middle, 0, false, words, -1});
}

// Slits run in from the end along the bends, as far as the fold.
void drawLip(Sketch& sketch, const Box& strip, double fold, double end, const std::vector<double>& bends) {
  sketch.line({fold, strip.top}, {fold, strip.bottom}, thinLine, Dash::Dashed);
  for (const double bend : bends) {
    const double y = strip.bottom - bend * strip.height();
    sketch.line({fold, y}, {end, y}, outlineLine);
  }
}

void drawStrip(Sketch& sketch, const Trim& trim, const TrimRule& rule, const TrimWords& words, const Box& strip) {
  const std::vector<double> bends = bendsOf(trim);
  const bool lips = rule.lip > Length();
  const double from = strip.left + (lips ? lipWide : 0), to = strip.right - (lips ? lipWide : 0);
  for (const double bend : bends) {
    const double y = strip.bottom - bend * strip.height();
    sketch.line({from, y}, {to, y}, thinLine, Dash::Chain);
  }
  if (lips) {
    drawLip(sketch, strip, from, strip.left, bends);
    drawLip(sketch, strip, to, strip.right, bends);
    const std::string lip = dimensionText(rule.lip, words.style);
    centred(sketch, (strip.left + from) / 2, strip.top - 1.2, lip);
    centred(sketch, (to + strip.right) / 2, strip.top - 1.2, lip);
    centred(sketch, (from + to) / 2, strip.top - 1.2, words.say("trim.flat.fold"));
  }
  sketch.rectangle(strip, openingLine);
  centred(sketch, strip.middle().x, strip.bottom + 1.2 + ascentOf(smallText), words.say("trim.flat.length"));
}

}  // namespace

std::vector<double> bendsOf(const Trim& trim) {
  std::vector<double> bends;
  double along = 0, whole = 0;
  for (std::size_t i = 0; i + 1 < trim.section.size(); ++i)
    whole += lengthBetween(trim.section[i], trim.section[i + 1]);
  for (std::size_t i = 0; i + 2 < trim.section.size(); ++i) {
    along += lengthBetween(trim.section[i], trim.section[i + 1]);
    if (whole > 0) bends.push_back(along / whole);
  }
  return bends;
}

PageBlock flatPicture(const Trim& trim, const TrimRule& rule, const TrimWords& words) {
  const auto draw = [trim, rule, words](Sketch& sketch, const Box& room) {
    drawSection(sketch, trim, {room.left + 1, room.top + 2, room.left + sectionWide - 6, room.bottom - 3});
    const double left = room.left + sectionWide, top = room.top + 2 + lineOf(smallText);
    drawStrip(sketch, trim, rule, words, {left, top, std::min(room.right - 1, left + 130), top + stripTall});
  };
  return {tall, draw};
}

}  // namespace ribwright
