#include "core/drawing/girt_lines.h"

#include <algorithm>

#include "core/drawing/shown_length.h"
#include "core/drawing/text_extent.h"

namespace ribwright {

namespace {

constexpr double widestName = 24;   // a longer one is closed with an ellipsis
constexpr double shortestDash = 1;  // what is left of a line between two texts is drawn from this length on

// Calls with each stretch of a girt's own steel that this drawing reaches, and its limits there.
template <class Visit>
void forGirts(const WallView& view, const Visit& visit) {
  if (!view.holes) return;
  for (const SupportRow& row : view.holes->supports.rows) {
    if (row.kind != SupportKind::Girt) continue;
    for (const Stretch& stretch : row.stretches) {
      const Length from = std::max(stretch.from, view.from), to = std::min(stretch.to, view.to);
      if (stretch.steel == Stretch::Steel::Own && from < to) visit(stretch, from, to);
    }
  }
}

// Absent where nested girts turn their flanges differently, or no girt is told.
std::optional<Girt::Flange> flangeOf(const WallView& view, const Stretch& stretch) {
  std::optional<Girt::Flange> flange;
  for (const std::int32_t index : stretch.girts) {
    const Girt::Flange own = view.wall->girts.at(static_cast<std::size_t>(index)).flange;
    if (flange && *flange != own) return std::nullopt;
    flange = own;
  }
  return flange;
}

std::string rowWords(const WallView& view, const Stretch& stretch) {
  const std::string name = shortened(stretch.name, smallText, false, widestName);
  return view.say("paper.row", {{"name", name}, {"height", dimensionText(stretch.row, view.style)}});
}

}  // namespace

std::vector<HeightLabel> rowHeights(const WallView& view) {
  std::vector<HeightLabel> heights;
  forGirts(view, [&](const Stretch& stretch, Length from, Length to) {
    if (partsInFace(view, stretch.row, from, to).empty()) return;
    const HeightLabel row{rowWords(view, stretch), stretch.row, flangeOf(view, stretch)};
    const bool known = std::any_of(heights.begin(), heights.end(), [&](const HeightLabel& other) {
      return other.words == row.words && other.flange == row.flange;
    });
    if (!known) heights.push_back(row);
  });
  std::stable_sort(heights.begin(), heights.end(),
                   [](const HeightLabel& a, const HeightLabel& b) { return a.z < b.z; });
  return heights;
}

double roomForRowHeights(const WallView& view) { return roomForHeights(rowHeights(view)); }

int drawRowHeights(Sketch& sketch, const WallView& view) { return drawHeights(sketch, view, rowHeights(view), -1); }

void drawGirtLines(Sketch& sketch, const WallView& view) {
  forGirts(view, [&](const Stretch& stretch, Length from, Length to) {
    const double y = view.y(stretch.row);
    for (const LevelPart& part : partsInFace(view, stretch.row, from, to)) {
      for (const auto& [a, b] : sketch.clearParts({part.from, y}, {part.to, y}, roundText)) {
        if (b.x - a.x >= shortestDash) sketch.line(a, b, thinLine, Dash::Dashed);
      }
    }
  });
}

}  // namespace ribwright
