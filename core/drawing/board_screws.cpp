// A mark for every screw, in the same shapes as on paper, shown where they stand apart.
#include <algorithm>
#include <map>
#include <tuple>

#include "core/drawing/board_parts.h"
#include "core/drawing/screw_marks.h"

namespace ribwright {

namespace {

constexpr double spaceToSee = 6;  // pixels between neighbours of a row
constexpr double onBoard = 0.5;   // capitals to a millimetre of the marks on paper

// The space that nine of ten neighbours in a row keep at least.
double usualSpace(const std::vector<Hole>& holes, ScrewMark mark) {
  std::map<std::tuple<HoleKind, std::int32_t, std::int32_t, Length>, std::vector<Length>> rows;
  for (const Hole& hole : holes) {
    if (markOf(hole.kind) != mark) continue;
    const bool level = mark == ScrewMark::Structural;
    rows[{hole.kind, hole.row, hole.run, level ? Length() : hole.u}].push_back(level ? hole.u : hole.z);
  }
  std::vector<Length> spaces;
  for (auto& [row, places] : rows) {
    std::sort(places.begin(), places.end());
    for (std::size_t i = 1; i < places.size(); ++i) spaces.push_back(places[i] - places[i - 1]);
  }
  if (spaces.empty()) return 100;
  const auto tenth = spaces.begin() + static_cast<std::ptrdiff_t>(spaces.size() / 10);
  std::nth_element(spaces.begin(), tenth, spaces.end());
  return std::max(tenth->inMillimetres(), 1.0);
}

}  // namespace

void addScrews(BoardPicture& picture, const WallView& view) {
  const std::vector<Hole>& holes = view.holes->holes;
  if (holes.empty()) return;
  double least = 0;  // all kinds are seen together, or none
  picture.held = view.say("paper.screws.not-for-drilling");
  for (const ScrewMark mark : {ScrewMark::Stitch, ScrewMark::Structural, ScrewMark::Jamb}) {
    std::vector<BoardMark> marks;
    for (std::size_t i = 0; i < holes.size(); ++i) {
      if (markOf(holes[i].kind) == mark) marks.push_back({view.at(holes[i].u, holes[i].z), static_cast<int>(i)});
    }
    if (marks.empty()) continue;
    std::vector<PaperPoint> ring = markRing(mark, {0, 0});
    for (PaperPoint& point : ring) point = {point.x * onBoard, point.y * onBoard};
    least = std::max(least, spaceToSee / usualSpace(holes, mark));
    picture.screws.push_back({std::move(ring), AlongWall(std::move(marks)), BoardTone::Line, {}});
  }
  for (BoardMarks& layer : picture.screws) layer.zoom.least = least;
}

}  // namespace ribwright
