// What the board shows is what the model says: places, rooms of labels, steps of rulers.
#include <algorithm>
#include <catch2/catch.hpp>

#include "core/drawing/board_pick.h"
#include "core/drawing/board_picture.h"
#include "core/drawing/board_ruler.h"
#include "tests/core/drawing/board_faults.h"
#include "tests/core/drawing/drawn_jobs.h"

using namespace ribwright;

namespace {

BoardPicture pictureOf(const Job& job, std::size_t wall = 0) {
  return boardPicture(job, plan(job), wall, Words::of("en"));
}

const BoardThing& thing(const BoardPicture& picture, Part::Kind kind, const std::string& id) {
  const int index = thingOf(picture, {kind, picture.letter, id});
  REQUIRE(index >= 0);
  return picture.things[static_cast<std::size_t>(index)];
}

constexpr double foot = 304.8, inch = 25.4;

}  // namespace

// Frozen gable, 40 ft wide, 36 in cover, lip 1-1/2 in: sheet 2 is seen from its lip's edge to where sheet 3 lies over
// it.
TEST_CASE("of a sheet the board shows what the next sheet does not lie over") {
  const Job job = frozenGable();
  const Plan made = plan(job);
  const BoardPicture picture = boardPicture(job, made, 0, Words::of("en"));
  const Piece& second = made.walls[0]->layout.pieces[1];
  const Piece& third = made.walls[0]->layout.pieces[2];
  const Box box = thing(picture, Part::Kind::Piece, second.mark).box;
  const bool toRight = made.walls[0]->layout.direction.hand == Hand::LeftToRight;
  CHECK(box.width() == Approx(36 * inch));
  CHECK((toRight ? box.left : box.right) == Approx((toRight ? second.left : second.right).inMillimetres()));
  CHECK((toRight ? box.right : box.left) == Approx((toRight ? third.left : third.right).inMillimetres()));
  CHECK(box.bottom == Approx(-second.bottom.inMillimetres()));
}

TEST_CASE("the board's face reaches from corner to corner and from the lowest end to the peak") {
  const BoardPicture picture = pictureOf(frozenGable());
  CHECK(picture.face.left == 0);
  CHECK(picture.face.right == Approx(40 * foot));
  CHECK(picture.face.top == Approx(-(12 * foot + 20 * foot * 4 / 12)));
  CHECK(picture.note.find("No girts are stated") == 0);
}

TEST_CASE("all lines, marks and areas of the board lie on the wall or just beside it") {
  for (const DrawnJob& drawn : drawnJobs()) {
    for (std::size_t wall = 0; wall < drawn.job.walls.size(); ++wall) {
      const BoardPicture picture = boardPicture(drawn.job, drawn.plan, wall, Words::of("en"));
      INFO(drawn.name << ", wall " << picture.letter);
      const Box near = picture.face.grown(1000);
      for (const BoardLines& layer : picture.lines) {
        for (const BoardLine& line : layer.lines.all()) {
          CHECK(inside({line.left(), std::min(line.a.y, line.b.y), line.right(), std::max(line.a.y, line.b.y)}, near));
        }
      }
      for (const BoardThing& each : picture.things) CHECK(inside(each.box, near));
    }
  }
}

TEST_CASE("every screw of a wall has one mark, where its hole is") {
  const Job job = screwedFront();
  const Plan made = plan(job);
  const BoardPicture picture = boardPicture(job, made, 0, Words::of("en"));
  const auto& holes = made.walls[0]->holes.holes;
  REQUIRE(holes.size() > 100);
  std::vector<int> marks(holes.size());
  for (const BoardMarks& layer : picture.screws) {
    CHECK(layer.zoom.least > 0);
    for (const BoardMark& mark : layer.marks.all()) {
      const auto index = static_cast<std::size_t>(mark.index);
      ++marks.at(index);
      CHECK(mark.at == PaperPoint{holes[index].u.inMillimetres(), -holes[index].z.inMillimetres()});
    }
  }
  CHECK(std::all_of(marks.begin(), marks.end(), [](int count) { return count == 1; }));
  CHECK(picture.held == "screw heights from plan: not for drilling");
}

TEST_CASE("labels of the board never overlap at any zoom, and their ways go from full to short") {
  for (const DrawnJob& drawn : drawnJobs()) {
    for (std::size_t wall = 0; wall < drawn.job.walls.size(); ++wall) {
      const BoardPicture picture = boardPicture(drawn.job, drawn.plan, wall, Words::of("en"));
      INFO(drawn.name << ", wall " << picture.letter);
      CHECK(boardFaults(picture) == std::vector<std::string>{});
    }
  }
}

TEST_CASE("a label takes the fullest way that its room holds") {
  const BoardPicture picture = pictureOf(frozenGable());
  const auto& labels = picture.labels.all();
  const auto label = std::find_if(labels.begin(), labels.end(), [](const BoardLabel& each) {
    return each.stand == BoardLabel::Stand::Within && each.thing == 1;
  });
  REQUIRE(label != labels.end());
  CHECK(formAt(*label, 1.0, 8) == 0);
  CHECK(formAt(*label, 0.0001, 8) == -1);
  int last = 0;
  for (double zoom = 1; zoom > 0.0001 && last >= 0; zoom /= 1.1) {
    const int form = formAt(*label, zoom, 8);
    if (form < 0) break;
    const BoardForm& way = label->forms[static_cast<std::size_t>(form)];
    CHECK(way.width * 8 <= label->room.width() * zoom + 1e-9);
    CHECK(way.height * 8 <= label->room.height() * zoom + 1e-9);
    CHECK(form >= last);
    last = form;
  }
  CHECK(last > 0);
}

TEST_CASE("walls without sheets say so on the board") {
  const Job job = unsheetedWalls();
  const Plan made = plan(job);
  for (std::size_t wall = 0; wall < job.walls.size(); ++wall)
    CHECK(!boardPicture(job, made, wall, Words::of("en")).note.empty());
}

TEST_CASE("what stands in a stretch of the wall is found without looking at all of it") {
  const AlongWall<BoardLine> lines(
      std::vector<BoardLine>{{{50, 0}, {60, 0}}, {{0, 0}, {100, 0}}, {{10, 0}, {20, 0}}, {{90, 0}, {95, 0}}});
  CHECK(lines.between(-20, -10) == std::pair<std::size_t, std::size_t>(0, 0));
  CHECK(lines.between(55, 70) == std::pair<std::size_t, std::size_t>(0, 3));
  CHECK(lines.between(101, 200).first == 4);
  CHECK(lines.between(0, 100) == std::pair<std::size_t, std::size_t>(0, 4));
}

TEST_CASE("rulers step in inches and feet, or in millimetres, as finely as figures have room") {
  const RulerSteps feet = rulerSteps(UnitSystem::FeetInches, 0.1, 60, 5);
  CHECK(feet.labelled == Length::feet(2));
  CHECK(feet.marked == Length::inches(2));
  CHECK(rulerSteps(UnitSystem::FeetInches, 40, 60, 5).labelled == Length::sixtyFourths(4));
  const RulerSteps metric = rulerSteps(UnitSystem::Millimetres, 0.1, 60, 5);
  CHECK(metric.labelled == Length::millimetres(1000));
  CHECK(metric.marked == Length::millimetres(50));
  CHECK(rulerFigure(Length::feet(12, 6), {}) == "12' 6\"");
}

TEST_CASE("a drill batch is all its sheets, wherever they stand") {
  int batches = 0;
  for (const DrawnJob& drawn : drawnJobs()) {
    const Plan made = plan(drawn.job);
    for (std::size_t wall = 0; wall < drawn.job.walls.size(); ++wall) {
      const BoardPicture picture = boardPicture(drawn.job, made, wall, Words::of("en"));
      for (const DrillBatch& batch : made.walls[wall]->batches) {
        const Part part{Part::Kind::Batch, picture.letter, batch.id};
        std::vector<int> sheets;
        for (const std::int32_t piece : batch.pieces) {
          const std::string& mark = made.walls[wall]->layout.pieces[static_cast<std::size_t>(piece)].mark;
          sheets.push_back(thingOf(picture, {Part::Kind::Piece, picture.letter, mark}));
        }
        CHECK(thingsOf(picture, part) == sheets);
        Box place{};
        REQUIRE(placeOf(picture, part, place));
        for (const int sheet : sheets) CHECK(inside(picture.things[static_cast<std::size_t>(sheet)].box, place));
        ++batches;
      }
    }
  }
  CHECK(batches > 0);
}
