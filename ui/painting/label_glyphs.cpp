#include "ui/painting/label_glyphs.h"

#include <algorithm>
#include <cmath>

#include "core/drawing/board_forms.h"
#include "core/drawing/text_extent.h"
#include "ui/painting/glyphs.h"
#include "ui/painting/label_places.h"
#include "ui/painting/paper_font.h"

namespace ribwright {

namespace {

double widthOf(const std::vector<BoardWords>& line) {
  double width = 0;
  for (const BoardWords& words : line) width += ribwright::widthOf(words.words, 1, words.bold);
  return width;
}

bool overlapsAny(const QRectF& rect, const std::vector<QRectF>& others) {
  return std::any_of(others.begin(), others.end(), [&](const QRectF& other) { return other.intersects(rect); });
}

// Labels that went to the left or lower edge of the view take room there from those within the wall.
QRectF without(QRectF area, const QRectF& edge, BoardLabel::Stand stand) {
  if (stand == BoardLabel::Stand::Before) area.setLeft(std::max(area.left(), edge.right()));
  if (stand == BoardLabel::Stand::Under) area.setBottom(std::min(area.bottom(), edge.top()));
  return area;
}

}  // namespace

void LabelGlyphs::reset(double capital) {
  capital_ = capital;
  regular_ = paperFont(emOf(capital), false);
  bold_ = paperFont(emOf(capital), true);
  forms_.clear();
}

const LabelGlyphs::Form& LabelGlyphs::formOf(const BoardPicture& picture, std::size_t label, std::size_t form) {
  const auto& labels = picture.labels.all();
  if (forms_.size() != labels.size()) forms_.assign(labels.size(), {});
  if (forms_[label].empty()) forms_[label].resize(labels[label].forms.size());
  Form& glyphs = forms_[label][form];
  if (glyphs.made) return glyphs;
  glyphs.made = true;
  const BoardForm& stated = labels[label].forms[form];
  const double length = stated.upward ? stated.height : stated.width;
  double baseline = overWords + ascentOf(1);
  for (const auto& line : stated.lines) {
    double x = (length - widthOf(line)) / 2;
    for (const BoardWords& words : line) {
      glyphs.words.push_back({glyphsOf(words.words, words.bold ? bold_ : regular_, words.bold),
                              QPointF(x * capital_, baseline * capital_)});
      x += ribwright::widthOf(words.words, 1, words.bold);
    }
    baseline += boardLine;
  }
  return glyphs;
}

void LabelGlyphs::write(const BoardPicture& picture, std::size_t label, std::size_t form, const QRectF& rect,
                        const BoardInks& inks, SeenLabels& to) {
  const BoardLabel& stated = picture.labels.all()[label];
  to.plates.push_back({rect, inks.of(stated.ground)});
  if (stated.framed) to.frames.push_back(rect.adjusted(0.5, 0.5, -0.5, -0.5));
  const bool upward = stated.forms[form].upward;
  for (const SeenWords& words : formOf(picture, label, form).words) {
    // Turned a quarter to the left a pixel (x, y) has the place (-y, x).
    const QPointF start = upward ? QPointF(-rect.bottom(), rect.left()) : rect.topLeft();
    (upward ? to.upward : to.level).push_back({words.run, start + words.at});
  }
}

void LabelGlyphs::gather(const BoardPicture& picture, const BoardView& view, const QRectF& area, const BoardInks& inks,
                         const std::vector<QRectF>& barred, SeenLabels& to) {
  to.ink = inks.line;
  const auto [first, last] = picture.labels.between(view.placeOf(area.topLeft()).x, view.placeOf(area.bottomRight()).x);
  std::vector<QRectF> taken = barred;
  QRectF inner = area;
  for (const bool staying : {true, false}) {
    for (std::size_t i = first; i < last; ++i) {
      const BoardLabel& label = picture.labels.all()[i];
      if (label.stays != staying) continue;
      const int form = formAt(label, view.zoom, capital_);
      if (form < 0) continue;
      const auto chosen = static_cast<std::size_t>(form);
      bool moved = false;
      const QRectF rect = placeOf(label, label.forms[chosen], view, staying ? area : inner, capital_, moved);
      if (!area.intersects(rect) || overlapsAny(rect, taken)) continue;
      if (staying) taken.push_back(rect);
      if (moved) inner = without(inner, rect, label.stand);
      write(picture, i, chosen, rect, inks, to);
    }
  }
}

}  // namespace ribwright
