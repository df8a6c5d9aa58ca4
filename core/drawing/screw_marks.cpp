#include "core/drawing/screw_marks.h"

#include <cmath>
#include <numeric>

namespace ribwright {

namespace {

constexpr double dotReach = 0.5;
constexpr double crossReach = 0.8;
constexpr double crossArm = 0.18;  // half the width of its arms
constexpr double dashReach = 0.9;
constexpr double dashHalf = 0.25;  // half its height
constexpr double betweenMarks = 0.25;
constexpr std::size_t marksInOne = 500;  // so that a page stays quick to paint part by part

std::vector<PaperPoint> dot(const PaperPoint& at) {
  constexpr double r = dotReach, slant = r * 0.7071;
  return {{at.x + r, at.y}, {at.x + slant, at.y + slant}, {at.x, at.y + r}, {at.x - slant, at.y + slant},
          {at.x - r, at.y}, {at.x - slant, at.y - slant}, {at.x, at.y - r}, {at.x + slant, at.y - slant}};
}

std::vector<PaperPoint> dash(const PaperPoint& at) {
  return {{at.x - dashReach, at.y - dashHalf},
          {at.x + dashReach, at.y - dashHalf},
          {at.x + dashReach, at.y + dashHalf},
          {at.x - dashReach, at.y + dashHalf}};
}

// Two slanting arms in one ring.
std::vector<PaperPoint> slantCross(const PaperPoint& at) {
  constexpr double r = crossReach, w = crossArm, in = crossArm * 1.4142;
  const PaperPoint quarter[] = {{in, 0}, {r, r - 2 * w}, {r, r}, {r - 2 * w, r}};
  std::vector<PaperPoint> ring;
  for (int turn = 0; turn < 4; ++turn) {
    for (const PaperPoint& point : quarter) {
      const PaperPoint turned[] = {{point.x, point.y}, {-point.y, point.x}, {-point.x, -point.y}, {point.y, -point.x}};
      ring.push_back({at.x + turned[turn].x, at.y + turned[turn].y});
    }
  }
  return ring;
}

Box boxOfMark(ScrewMark mark, const PaperPoint& at) {
  const double up = mark == ScrewMark::Stitch ? dashHalf : reachOf(mark);
  return {at.x - reachOf(mark), at.y - up, at.x + reachOf(mark), at.y + up};
}

// Marks of one shape, gathered into few items.
class MarkInk {
 public:
  MarkInk(Sketch& sketch, ScrewMark mark) : sketch_(sketch), mark_(mark) {}
  void add(const PaperPoint& at) {
    rings_.push_back(markRing(mark_, at));
    if (rings_.size() == marksInOne) flush();
  }
  void flush() {
    sketch_.marks(std::move(rings_));
    rings_.clear();
  }

 private:
  Sketch& sketch_;
  ScrewMark mark_;
  std::vector<std::vector<PaperPoint>> rings_;
};

}  // namespace

ScrewMark markOf(HoleKind kind) {
  if (kind == HoleKind::Stitch) return ScrewMark::Stitch;
  return kind == HoleKind::Jamb ? ScrewMark::Jamb : ScrewMark::Structural;
}

std::vector<PaperPoint> markRing(ScrewMark mark, const PaperPoint& at) {
  switch (mark) {
    case ScrewMark::Structural:
      return dot(at);
    case ScrewMark::Stitch:
      return dash(at);
    case ScrewMark::Jamb:
      break;
  }
  return slantCross(at);
}

double reachOf(ScrewMark mark) {
  switch (mark) {
    case ScrewMark::Structural:
      return dotReach;
    case ScrewMark::Stitch:
      return dashReach;
    case ScrewMark::Jamb:
      break;
  }
  return crossReach;
}

int ScrewsShown::all() const { return std::accumulate(here.begin(), here.end(), 0); }

bool isShownHere(const WallView& view, const Hole& hole) {
  return (hole.u >= view.from || view.hasLeftCorner()) && (hole.u < view.to || view.hasRightCorner());
}

ScrewsShown drawScrewMarks(Sketch& sketch, const WallView& view) {
  ScrewsShown shown;
  if (!view.holes) return shown;
  TakenRoom marked;
  for (const ScrewMark mark : {ScrewMark::Structural, ScrewMark::Jamb, ScrewMark::Stitch}) {
    MarkInk ink(sketch, mark);
    for (const Hole& hole : view.holes->holes) {
      if (markOf(hole.kind) != mark || !isShownHere(view, hole)) continue;
      ++shown.here.at(static_cast<std::size_t>(hole.kind));
      const Box box = boxOfMark(mark, view.at(hole.u, hole.z));
      if (!sketch.isFreeOfText(box) || !marked.isFreeOfText(box, betweenMarks)) {
        ++shown.marksLeftOut;
        continue;
      }
      marked.takeText(box);
      ink.add(box.middle());
    }
    ink.flush();
  }
  return shown;
}

}  // namespace ribwright
