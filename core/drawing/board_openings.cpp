// Openings and penetrations: the cut of the sheets, and nearer the steel of the frame within it.
#include <algorithm>

#include "core/drawing/board_parts.h"
#include "core/drawing/face_picture.h"

namespace ribwright {

namespace {

constexpr double cutsApart = 3;  // pixels between cut and steel

void gatherRing(const std::vector<PaperPoint>& ring, std::vector<BoardLine>& to) {
  for (std::size_t i = 0; i < ring.size(); ++i) to.push_back({ring[i], ring[(i + 1) % ring.size()]});
}

// A round penetration's steel is its cut drawn in; else it is the rectangle as stated.
std::vector<PaperPoint> steelRing(const WallView& view, const CutRegion& cut, const std::vector<PaperPoint>& open) {
  if (!cut.steelLeft || !cut.steelRight || !cut.steelBottom || !cut.steelTop) return {};
  const double left = view.x(*cut.steelLeft), right = view.x(*cut.steelRight);
  const double top = view.y(*cut.steelTop), bottom = view.y(*cut.steelBottom);
  if (!cut.round) return {{left, bottom}, {left, top}, {right, top}, {right, bottom}};
  const PaperPoint middle{(left + right) / 2, (top + bottom) / 2};
  const double share = (right - left) / view.size(cut.right - cut.left);
  std::vector<PaperPoint> ring;
  for (const PaperPoint& point : open)
    ring.push_back({middle.x + (point.x - middle.x) * share, middle.y + (point.y - middle.y) * share});
  return ring;
}

}  // namespace

void addOpenings(BoardPicture& picture, const WallView& view) {
  std::vector<BoardLine> cuts, steels, crosses;
  double clearance = kNoLimit;
  for (const CutRegion& cut : view.layout->cuts) {
    const auto ring = openOutline(view, cut);
    if (ring.size() < 3) continue;
    const auto kind = cut.penetration ? Part::Kind::Penetration : Part::Kind::Opening;
    const Box box = boxRound({ring});
    picture.things.push_back({{kind, view.layout->letter, cut.id}, {ring}, false, box});
    gatherRing(ring, cuts);
    if (!cut.penetration) {
      crosses.push_back({{box.left, box.top}, {box.right, box.bottom}});
      crosses.push_back({{box.left, box.bottom}, {box.right, box.top}});
    }
    const auto steel = steelRing(view, cut, ring);
    if (steel.empty()) continue;
    gatherRing(steel, steels);
    const double gap = view.size(*cut.steelLeft - cut.left);
    if (gap > 0) clearance = std::min(clearance, gap);
  }
  picture.lines.push_back({AlongWall(std::move(crosses)), BoardTone::Quiet, 1, Dash::Solid, {}});
  if (clearance < kNoLimit)
    picture.lines.push_back({AlongWall(std::move(steels)), BoardTone::Steel, 1, Dash::Solid, {cutsApart / clearance}});
  picture.lines.push_back({AlongWall(std::move(cuts)), BoardTone::Line, 2, Dash::Solid, {}});
}

}  // namespace ribwright
