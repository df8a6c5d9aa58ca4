#include "core/drawing/elevation_fit.h"

#include <algorithm>
#include <optional>

#include "core/drawing/band_heights.h"
#include "core/drawing/girt_lines.h"
#include "core/drawing/page_breaks.h"
#include "core/drawing/piece_labels.h"
#include "core/drawing/text_extent.h"

namespace ribwright {

namespace {

constexpr double besideWall = 17;  // room for heights and match marks on either side of a wall

constexpr double comfort = 0.9;  // more than the least width that a label needs

// Width of the widest sheet on paper, without what the next one covers; far more than any need where there are no
// sheets.
double widestSeen(const Elevation& elevation, const DrawingScale& scale) {
  WallView whole = elevation.view;
  whole.from = Length();
  whole.to = whole.layout->face.width;
  Length widest;
  for (const Piece& piece : whole.layout->pieces) {
    const SeenPart seen = seenPart(whole, piece);
    widest = std::max(widest, seen.right - seen.left);
  }
  return widest == Length() ? 1e9 : onPaper(widest, scale);
}

std::vector<Length> breaksAt(const Elevation& elevation, const DrawingScale& scale) {
  const double room = elevation.work.width() - 2 * besideWall - roomForRowHeights(elevation.view) -
                      roomForHeights(bandHeights(elevation.view));
  const auto most = static_cast<std::int64_t>(room * 1e6) * scale.below;
  return pageBreaks(*elevation.view.layout, Length::nanometres(most));
}

bool mayFit(const Elevation& elevation, const DrawingScale& scale) {
  WallView whole = elevation.view;
  whole.from = Length();
  whole.to = whole.layout->face.width;
  return onPaper(highestSeen(whole) - lowestSeen(whole), scale) < elevation.work.height();
}

FittedWall attemptAt(const Elevation& elevation, const DrawingScale& scale, bool bays = true) {
  FittedWall attempt{scale, breaksAt(elevation, scale), {}, false};
  WallView view = elevation.view;
  view.scale = scale;
  view.bays = bays;
  for (std::size_t i = 1; i < attempt.breaks.size(); ++i) {
    view.from = attempt.breaks[i - 1];
    view.to = attempt.breaks[i];
    const int number = static_cast<int>(i), page = elevation.firstPage + number - 1;
    attempt.pictures.push_back(wallPicture(view, {number - 1, page - 1}, {number, page + 1}));
  }
  return attempt;
}

bool fits(const Elevation& elevation, const FittedWall& attempt) {
  return attempt.height() + noteHeight <= elevation.work.height() && attempt.width() <= elevation.work.width();
}

bool tablesFit(const Elevation& elevation, const FittedWall& attempt) {
  return attempt.height() + noteHeight + heightOfTables(elevation) <= elevation.work.height();
}

// Scales in the order they are tried: fewest pages first, then the largest drawing. None at which the widest sheet is
// narrower on paper than `narrowest`.
std::vector<DrawingScale> inOrder(const Elevation& elevation, double narrowest, std::vector<DrawingScale> scales) {
  std::erase_if(scales, [&](const DrawingScale& scale) {
    return !mayFit(elevation, scale) || widestSeen(elevation, scale) < narrowest;
  });
  std::stable_sort(scales.begin(), scales.end(), [&](const DrawingScale& a, const DrawingScale& b) {
    return breaksAt(elevation, a).size() < breaksAt(elevation, b).size();
  });
  return scales;
}

std::optional<FittedWall> firstThatFits(const Elevation& elevation, const std::vector<DrawingScale>& scales,
                                        bool bays) {
  for (const DrawingScale& scale : scales) {
    FittedWall attempt = attemptAt(elevation, scale, bays);
    if (fits(elevation, attempt)) return attempt;
  }
  return std::nullopt;
}

int marksLeftOut(const FittedWall& attempt) {
  int count = 0;
  for (const WallPicture& picture : attempt.pictures) count += picture.marksLeftOut;
  return count;
}

// The next smaller scale is better than a page more for the tables, unless screws would lose their marks by it.
FittedWall withTables(const Elevation& elevation, FittedWall best, const std::vector<DrawingScale>& usual) {
  if (tablesFit(elevation, best) || best.pictures.size() > 1) return best;
  for (const DrawingScale& scale : usual) {
    if (scale.below <= best.scale.below) continue;
    if (widestSeen(elevation, scale) < narrowestNamed() + comfort) return best;
    FittedWall smaller = attemptAt(elevation, scale);
    const bool better = fits(elevation, smaller) && tablesFit(elevation, smaller);
    return better && marksLeftOut(smaller) <= marksLeftOut(best) ? smaller : best;
  }
  return best;
}

FittedWall bestAttempt(const Elevation& elevation) {
  const UnitSystem units = elevation.view.style.units;
  const auto usual = usualScales(units), small = smallScales(units);
  // Sheets that cannot be named are worse than bays that are not dimensioned.
  for (const double narrowest : {narrowestNamed() + comfort, narrowestNamed(), 0.0}) {
    const std::vector<DrawingScale> scales = inOrder(elevation, narrowest, usual);
    for (const bool bays : {true, false}) {
      auto found = firstThatFits(elevation, scales, bays);
      if (found) return bays ? withTables(elevation, std::move(*found), usual) : std::move(*found);
    }
  }
  for (const DrawingScale& scale : small) {
    FittedWall attempt = attemptAt(elevation, scale);
    if (fits(elevation, attempt) || scale == small.back()) return attempt;
  }
  return attemptAt(elevation, usual.back());
}

}  // namespace

double FittedWall::height() const {
  double most = 0;
  for (const WallPicture& picture : pictures) most = std::max(most, picture.bounds.height());
  return most;
}

double FittedWall::width() const {
  double most = 0;
  for (const WallPicture& picture : pictures) most = std::max(most, picture.bounds.width());
  return most;
}

double heightOfTables(const Elevation& elevation) {
  double height = 0;
  for (const PaperTable& table : elevation.tables) {
    const double own = heightOf(table, elevation.work.width());
    if (own > 0) height += own + overTable;
  }
  return height;
}

FittedWall fitted(const Elevation& elevation) {
  FittedWall best = bestAttempt(elevation);
  best.tablesUnder = best.pictures.size() == 1 && tablesFit(elevation, best);
  return best;
}

}  // namespace ribwright
