#include "core/drawing/wall_view.h"

#include <algorithm>

#include "core/drawing/shown_length.h"
#include "core/job/by_id.h"
#include "core/job/length_style.h"

namespace ribwright {

namespace {

// The sheet hung after this one in its run lies over its leading edge.
const Module* nextSheet(const WallLayout& layout, const Piece& piece) {
  const auto& modules = layout.runs[static_cast<std::size_t>(piece.run)].modules;
  const auto next = static_cast<std::size_t>(piece.module) + 1;
  return next < modules.size() ? &modules[next] : nullptr;
}

const Piece* upperTier(const WallLayout& layout, const Piece& piece) {
  const SheetRun& run = layout.runs[static_cast<std::size_t>(piece.run)];
  if (!run.modules[static_cast<std::size_t>(piece.module)].tiered) return nullptr;
  const auto found = std::find_if(layout.pieces.begin(), layout.pieces.end(), [&](const Piece& other) {
    return other.run == piece.run && other.module == piece.module && other.tier == piece.tier + 1 &&
           other.bottom < piece.top && other.bottom > piece.bottom;
  });
  return found == layout.pieces.end() ? nullptr : &*found;
}

}  // namespace

WallView wholeWall(const Job& job, const Plan& plan, std::size_t wall, const Words& words) {
  WallView view;
  view.wall = &job.walls.at(wall);
  view.layout = &plan.walls.at(wall)->layout;
  view.holes = &plan.walls.at(wall)->holes;
  view.profiles = &job.profiles;
  view.words = &words;
  view.style = styleOf(job);
  view.topIsEave = view.wall->top.empty() && job.building.roof.kind != Roof::Kind::None;
  view.to = view.layout->face.width;
  return view;
}

std::string wallTitle(const Wall& wall, const Words& words) {
  const char* id = wall.name.empty() ? "paper.wall" : "paper.wall.named";
  return words.say(id, {{"letter", wall.letter}, {"name", wall.name}}, {});
}

std::string heightWords(const WallView& view, const char* id, Length height) {
  return view.say(id, {{"height", dimensionText(height, view.style)}});
}

bool isTranslucent(const WallView& view, const Piece& piece) {
  const SheetRun& run = view.layout->runs.at(static_cast<std::size_t>(piece.run));
  return run.modules.at(static_cast<std::size_t>(piece.module)).translucent;
}

const Profile* profileOf(const WallView& view, const Piece& piece) {
  if (!view.profiles) return nullptr;
  const SheetRun& run = view.layout->runs.at(static_cast<std::size_t>(piece.run));
  return byId(*view.profiles, view.wall->bands.at(static_cast<std::size_t>(run.band)).profile);
}

std::vector<PaperPoint> pointsOf(const WallView& view, const HeightLine& line) {
  std::vector<PaperPoint> points{view.at(view.from, line.heightAt(view.from, Beside::Right))};
  for (const FaceVertex& vertex : line.vertices()) {
    if (vertex.u > view.from && vertex.u < view.to) points.push_back(view.at(vertex.u, vertex.z));
  }
  points.push_back(view.at(view.to, line.heightAt(view.to, Beside::Left)));
  return points;
}

std::vector<PaperPoint> pointsOf(const WallView& view, const Ring& ring) {
  std::vector<PaperPoint> points;
  for (const FaceVertex& vertex : ring) points.push_back(view.at(vertex.u, vertex.z));
  return points;
}

SeenPart seenPart(const WallView& view, const Piece& piece) {
  SeenPart seen{piece.left, piece.right, piece.top};
  if (const Module* next = nextSheet(*view.layout, piece)) {
    if (view.layout->direction.hand == Hand::LeftToRight) seen.right = std::min(seen.right, next->metalLeft);
    if (view.layout->direction.hand == Hand::RightToLeft) seen.left = std::max(seen.left, next->metalRight);
  }
  if (const Piece* upper = upperTier(*view.layout, piece)) seen.top = upper->bottom;
  seen.left = std::max(seen.left, view.from);
  seen.right = std::min(seen.right, view.to);
  return seen;
}

bool isNamedHere(const WallView& view, const Piece& piece) {
  WallView whole = view;
  whole.from = Length();
  whole.to = view.layout->face.width;
  const SeenPart seen = seenPart(whole, piece);
  if (seen.empty()) return view.shows(half(piece.left + piece.right));
  const Length middle = half(seen.left + seen.right);
  return middle >= view.from && (middle < view.to || view.hasRightCorner());
}

Length highestSeen(const WallView& view) {
  const WallFace& face = view.layout->face;
  return std::max(face.steel.highest(view.from, view.to), face.top.highest(view.from, view.to));
}

Length lowestSeen(const WallView& view) {
  const WallFace& face = view.layout->face;
  return std::min({face.bottom.lowest(view.from, view.to), face.concrete.lowest(view.from, view.to), Length()});
}

}  // namespace ribwright
