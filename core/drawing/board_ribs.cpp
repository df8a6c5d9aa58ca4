// The sheets' cross-section as lines along them: from afar the middle of every crown, nearer its edges, nearer still
// every bend.
#include <algorithm>
#include <map>
#include <string>

#include "core/drawing/board_parts.h"
#include "core/drawing/piece_labels.h"
#include "core/fastening/seats.h"

namespace ribwright {

namespace {

constexpr double ribsApart = 6;  // pixels

// x from the module line, rising; those of one metal width.
struct RibLines {
  std::vector<Length> middles, edges, bends;
  ZoomRange middleZoom, edgeZoom, bendZoom;
};

// Zoom from which on lines stand ribsApart.
double apartFrom(const std::vector<Length>& places, Length around) {
  Length nearest = around;
  for (std::size_t i = 1; i < places.size(); ++i) {
    const Length space = places[i] - places[i - 1];
    if (space > Length()) nearest = std::min(nearest, space);
  }
  return ribsApart / nearest.inMillimetres();
}

RibLines ribLines(const Profile& profile) {
  RibLines lines;
  for (const Flat& crown : stitchSeats(profile)) {
    lines.middles.push_back(half(crown.from + crown.to));
    lines.edges.push_back(crown.from);
    lines.edges.push_back(crown.to);
  }
  const std::vector<SectionPoint> section = bends(profile.section);
  for (std::size_t i = 1; i + 1 < section.size(); ++i) lines.bends.push_back(section[i].x);
  lines.middleZoom.least = apartFrom(lines.middles, profile.cover);
  lines.edgeZoom.least = std::max(lines.middleZoom.least, apartFrom(lines.edges, profile.cover));
  lines.bendZoom.least = std::max(lines.edgeZoom.least, apartFrom(lines.bends, profile.cover));
  lines.middleZoom.most = lines.edgeZoom.least;
  lines.edgeZoom.most = lines.bendZoom.least;
  return lines;
}

class RibGatherer {
 public:
  RibGatherer(const WallView& view, const Piece& piece) : view_(view), columns_(seenColumns(view, piece)) {
    const SheetRun& run = view.layout->runs.at(static_cast<std::size_t>(piece.run));
    line_ = view.x(run.modules.at(static_cast<std::size_t>(piece.module)).startLine);
    way_ = view.layout->direction.hand == Hand::LeftToRight ? 1 : -1;
  }
  void gather(const std::vector<Length>& places, std::vector<BoardLine>& to) const {
    for (const Length place : places) {
      const double x = line_ + way_ * view_.size(place);
      for (const Upright& part : uprightsAt(columns_, x)) to.push_back({{x, part.top}, {x, part.bottom}});
    }
  }

 private:
  const WallView& view_;
  std::vector<Column> columns_;
  double line_ = 0, way_ = 1;
};

}  // namespace

void addRibs(BoardPicture& picture, const WallView& view) {
  struct Gathered {
    RibLines ribs;
    std::vector<BoardLine> middles, edges, bends;
  };
  std::map<std::string, Gathered> profiles;
  for (const Piece& piece : view.layout->pieces) {
    const Profile* profile = profileOf(view, piece);
    if (!profile) continue;
    auto [place, fresh] = profiles.try_emplace(profile->id);
    Gathered& gathered = place->second;
    if (fresh) gathered.ribs = ribLines(*profile);
    const RibGatherer gatherer(view, piece);
    gatherer.gather(gathered.ribs.middles, gathered.middles);
    gatherer.gather(gathered.ribs.edges, gathered.edges);
    gatherer.gather(gathered.ribs.bends, gathered.bends);
  }
  const auto add = [&](std::vector<BoardLine>& lines, const ZoomRange& zoom) {
    picture.lines.push_back({AlongWall(std::move(lines)), BoardTone::Quiet, 1, Dash::Solid, zoom});
  };
  for (auto& [id, gathered] : profiles) {
    add(gathered.middles, gathered.ribs.middleZoom);
    add(gathered.edges, gathered.ribs.edgeZoom);
    add(gathered.bends, gathered.ribs.bendZoom);
  }
}

}  // namespace ribwright
