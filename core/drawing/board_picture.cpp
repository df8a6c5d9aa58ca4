#include "core/drawing/board_picture.h"

#include <algorithm>
#include <charconv>

#include "core/drawing/board_parts.h"

namespace ribwright {

namespace {

constexpr double groundReach = 600;  // the concrete's line goes on beyond the corners
constexpr double jointReach = 150;

const char* noteId(const WallView& view) {
  if (view.wall->cladding == Cladding::Open) return "board.open";
  if (view.wall->cladding == Cladding::ByOthers) return "board.by-others";
  if (view.layout->face.top.vertices().empty()) return "board.not-laid-out";
  if (!view.layout->sheeted) return "board.no-profile";
  return view.wall->girts.empty() && view.holes->holes.empty() ? "board.no-girts" : nullptr;
}

void gather(const std::vector<PaperPoint>& points, std::vector<BoardLine>& to) {
  for (std::size_t i = 1; i < points.size(); ++i) to.push_back({points[i - 1], points[i]});
}

Box faceBox(const WallView& view) { return {0, view.y(highestSeen(view)), view.x(view.to), view.y(lowestSeen(view))}; }

void addBatches(BoardPicture& picture, const WallPlan& plan) {
  for (const DrillBatch& batch : plan.batches) {
    BoardGroup group{{Part::Kind::Batch, picture.letter, batch.id}, {}};
    for (const std::int32_t piece : batch.pieces) {
      const std::string& mark = plan.layout.pieces[static_cast<std::size_t>(piece)].mark;
      const int thing = thingOf(picture, {Part::Kind::Piece, picture.letter, mark});
      if (thing >= 0) group.things.push_back(thing);
    }
    picture.groups.push_back(std::move(group));
  }
}

}  // namespace

void addFace(BoardPicture& picture, const WallView& view) {
  const WallFace& face = view.layout->face;
  std::vector<BoardLine> ground, outline, joints;
  auto concrete = pointsOf(view, face.concrete);
  concrete.insert(concrete.begin(), {concrete.front().x - groundReach, concrete.front().y});
  concrete.push_back({concrete.back().x + groundReach, concrete.back().y});
  gather(concrete, ground);
  auto ring = pointsOf(view, face.top);
  const auto bottom = pointsOf(view, face.bottom);
  ring.insert(ring.end(), bottom.rbegin(), bottom.rend());
  ring.push_back(ring.front());
  gather(ring, outline);
  for (const Length joint : view.wall->expansionJoints) {
    if (joint <= view.from || joint >= view.to) continue;
    joints.push_back(
        {{view.x(joint), picture.face.top - jointReach}, {view.x(joint), picture.face.bottom + jointReach}});
  }
  for (const Band& band : view.wall->bands) {
    if (band.from && view.layout->sheeted)
      joints.push_back({{0, view.y(*band.from)}, {picture.face.right, view.y(*band.from)}});
  }
  const Dash dash = view.layout->sheeted ? Dash::Solid : Dash::Dashed;
  picture.lines.push_back({AlongWall(std::move(ground)), BoardTone::Line, 1, Dash::Dashed, {}});
  picture.lines.push_back({AlongWall(std::move(joints)), BoardTone::Line, 2, Dash::Chain, {}});
  picture.lines.push_back({AlongWall(std::move(outline)), BoardTone::Line, 2, dash, {}});
}

BoardPicture boardPicture(const Job& job, const Plan& plan, std::size_t wall, const Words& words) {
  WallView view = wholeWall(job, plan, wall, words);
  view.scale = {1};  // the face itself
  BoardPicture picture;
  picture.letter = view.wall->letter;
  picture.title = wallTitle(*view.wall, words);
  picture.style = view.style;
  if (const char* id = noteId(view)) picture.note = view.say(id);
  if (view.layout->face.top.vertices().empty()) return picture;
  picture.face = faceBox(view);
  addSheets(picture, view);
  addRibs(picture, view);
  addGirts(picture, view);
  addMeasured(picture, view);
  addColumns(picture, view);
  addOpenings(picture, view);
  addFace(picture, view);
  addScrews(picture, view);
  addLabels(picture, view);
  addBatches(picture, *plan.walls[wall]);
  return picture;
}

std::vector<int> thingsOf(const BoardPicture& picture, const Part& part) {
  for (const BoardGroup& group : picture.groups) {
    if (group.part == part) return group.things;
  }
  const int thing = thingOf(picture, part);
  return thing < 0 ? std::vector<int>{} : std::vector<int>{thing};
}

int thingOf(const BoardPicture& picture, const Part& part) {
  const auto found = std::find_if(picture.things.begin(), picture.things.end(),
                                  [&](const BoardThing& thing) { return thing.part == part; });
  return found == picture.things.end() ? -1 : static_cast<int>(found - picture.things.begin());
}

bool placeOf(const BoardPicture& picture, const Part& part, Box& place) {
  if (part.wall != picture.letter) return false;
  if (part.kind == Part::Kind::Screw) {
    int index = -1;
    std::from_chars(part.id.data(), part.id.data() + part.id.size(), index);
    for (const BoardMarks& layer : picture.screws) {
      for (const BoardMark& mark : layer.marks.all()) {
        if (mark.index != index) continue;
        place = {mark.at.x, mark.at.y, mark.at.x, mark.at.y};
        return true;
      }
    }
    return false;
  }
  const std::vector<int> things = thingsOf(picture, part);
  for (const int thing : things) {
    const Box& box = picture.things[static_cast<std::size_t>(thing)].box;
    place = thing == things.front() ? box : united(place, box);
  }
  return !things.empty();
}

}  // namespace ribwright
