#include "core/drawing/rib_ends.h"

#include <algorithm>
#include <optional>

#include "core/fastening/seats.h"

namespace ribwright {

namespace {

constexpr double offSheet = 0.75;                      // from the sheet's end, clear of the face's outline
constexpr Length hairLength = Length::millimetres(1);  // an end nearer to the face's than this is at it
constexpr double nearestOnPaper = 1.5;                 // ribs nearer to one another than this are not drawn

// Middles of its crowns from the module line, 0 <= x < cover, rising.
std::vector<Length> ribsOf(const Profile& profile) {
  std::vector<Length> ribs;
  for (const Flat& crown : stitchSeats(profile)) {
    const Length middle = half(crown.from + crown.to);
    if (middle >= Length() && middle < profile.cover) ribs.push_back(middle);
  }
  return ribs;
}

bool canBeToldApart(const WallView& view, const Profile& profile, const std::vector<Length>& ribs) {
  Length nearest = profile.cover;
  for (std::size_t i = 1; i < ribs.size(); ++i) nearest = std::min(nearest, ribs[i] - ribs[i - 1]);
  return view.size(nearest) >= nearestOnPaper;
}

// Lowest z of a piece's metal at u.
std::optional<Length> lowEnd(const Piece& piece, Length u) {
  std::optional<Length> low;
  for (const Cell& cell : piece.cells) {
    if (u < cell.left || u > cell.right) continue;
    const HeightLine end({{cell.left, cell.bottomLeft}, {cell.right, cell.bottomRight}});
    const Length z = end.heightAt(u, Beside::Right);
    low = low ? std::min(*low, z) : z;
  }
  return low;
}

}  // namespace

std::vector<Length> ribsSeen(const WallView& view, const Piece& piece) {
  const Profile* profile = profileOf(view, piece);
  if (!profile) return {};
  const std::vector<Length> ribs = ribsOf(*profile);
  if (!canBeToldApart(view, *profile, ribs)) return {};
  const SheetRun& run = view.layout->runs[static_cast<std::size_t>(piece.run)];
  const Length line = run.modules[static_cast<std::size_t>(piece.module)].startLine;
  const bool toRight = view.layout->direction.hand == Hand::LeftToRight;
  std::vector<Length> seen;
  for (const Length rib : ribs) {
    const Length u = toRight ? line + rib : line - rib;
    if (u > piece.left && u < piece.right && view.shows(u)) seen.push_back(u);
  }
  std::sort(seen.begin(), seen.end());
  return seen;
}

std::vector<PaperPoint> ribRing(const PaperPoint& at) {
  constexpr double half = thinLine / 2;
  return {{at.x - half, at.y}, {at.x + half, at.y}, {at.x + half, at.y + ribTick}, {at.x - half, at.y + ribTick}};
}

bool drawRibEnds(Sketch& sketch, const WallView& view) {
  std::vector<std::vector<PaperPoint>> ticks;
  for (const Piece& piece : view.layout->pieces) {
    for (const Length u : ribsSeen(view, piece)) {
      const auto low = lowEnd(piece, u);
      if (!low || *low > view.layout->face.bottom.heightAt(u, Beside::Right) + hairLength) continue;
      const double x = view.x(u), y = view.y(*low) + offSheet;
      if (sketch.isFreeOfText({x - thinLine, y, x + thinLine, y + ribTick})) ticks.push_back(ribRing({x, y}));
    }
  }
  const bool any = !ticks.empty();
  sketch.marks(std::move(ticks));
  return any;
}

}  // namespace ribwright
