// What a place snaps to, and the distances beside it.
#include "core/editing/snaps.h"

#include "core/editing/neighbours.h"
#include "tests/core/editing/edited_walls.h"
#include "tests/core/editing/length_styles.h"

using namespace ribwright;

namespace {

// Girts of a Z 8 x 2-1/2, typed by their centre, g1 ending at 50 ft.
Job withZedGirts() {
  Job job = workshop();
  job.members = {{"Z8", Member::Shape::Zed, in(8), in(2, 8), in(1), in(0, 1), in(0, 3)}};
  Wall& wall = job.walls[A];
  wall.hang = Hang::LeftToRight;
  wall.start.rule = Start::Rule::ModuleLine;
  for (Girt& girt : wall.girts) girt.member = "Z8";
  wall.girts[0].to = ft(50);
  wall.expansionJoints = {ft(31)};
  Penetration pipe;
  pipe.id = "P1";
  pipe.place.distance = ft(12);
  pipe.centre = ft(5);
  pipe.width = pipe.height = in(8);
  wall.penetrations = {pipe};
  return job;
}

std::vector<SnapCandidate> candidates(const std::vector<std::string>& leftOut = {}) {
  return snapCandidates(withZedGirts(), plan(withZedGirts()), A, leftOut);
}

std::string named(Axis axis, Length at, Length reach, Length unit = {}, const char* language = "en") {
  const auto found = snap(axis, at, candidates(), reach, unit, feetInches);
  return found ? Words::of(language).say(found->to.name, feetInches) : "nothing";
}

SnapCandidate thing(SnapCandidate::Kind kind, Length at) { return {kind, Axis::U, at, {}, ""}; }

std::vector<std::string> gapsBeside(const FaceBox& box, const std::vector<std::string>& leftOut) {
  std::vector<std::string> said;
  for (const NeighbourGap& gap : neighbourGaps(withZedGirts(), plan(withZedGirts()), A, box, leftOut))
    said.push_back(Words::of("en").say(gap.name, feetInches) + " " + fineText(gap.length(), feetInches));
  return said;
}

}  // namespace

TEST_CASE("a place snaps to what stands on the wall and says what it is") {
  CHECK(named(Axis::U, ft(20, 1), in(2)) == "column 2");
  CHECK(named(Axis::U, ft(28, 1), in(2)) == "left jamb of W1");
  CHECK(named(Axis::U, ft(31, 11), in(2)) == "right jamb of W1");
  CHECK(named(Axis::U, in(1), in(0, 4)) == "nothing");
  CHECK(named(Axis::U, ft(10), in(1)) == "middle of bay 1");
  CHECK(named(Axis::U, ft(31, 1), in(2)) == "expansion joint 1");
  CHECK(named(Axis::U, ft(50), in(1)) == "end of girt g1");
  CHECK(named(Axis::U, ft(3), in(1)) == "module line 2");
  CHECK(named(Axis::U, ft(12, 4), in(1)) == "right edge of P1");
  CHECK(named(Axis::Z, ft(10), in(1)) == "girt g2");
  CHECK(named(Axis::Z, ft(3, 6), in(1)) == "sill of W1");
  CHECK(named(Axis::Z, ft(6, 6), in(1)) == "head of W1");
  CHECK(named(Axis::Z, ft(14), in(1)) == "steel line");
  CHECK(named(Axis::Z, Length(), in(1)) == "top of concrete");
  CHECK(named(Axis::U, ft(28), in(1), {}, "es") == "jamba izquierda de W1");
}

TEST_CASE("a girt is snapped to by its row and by both edges of its flange's flat") {
  std::vector<Length> heights;
  for (const SnapCandidate& one : candidates()) {
    if (one.id == "g2" && one.axis == Axis::Z) heights.push_back(one.at);
  }
  REQUIRE(heights.size() == 3);
  CHECK(heights[1] < heights[0]);
  CHECK(heights[2] > heights[0]);
  CHECK(heights[2] - heights[1] < in(2, 8));
}

// Among real things the kind decides, then the distance, then the place.
TEST_CASE("of several things in reach the kind decides first and the distance after it") {
  const auto winner = [](std::vector<SnapCandidate> all) {
    return snap(Axis::U, ft(5), all, in(3), {}, feetInches)->to;
  };
  const SnapCandidate column = thing(SnapCandidate::Kind::Column, ft(5, 3)),
                      near = thing(SnapCandidate::Kind::ModuleLine, ft(5, 1)),
                      nearer = thing(SnapCandidate::Kind::ModuleLine, ft(5)),
                      below = thing(SnapCandidate::Kind::ModuleLine, ft(4, 11));
  CHECK(winner({near, column}) == column);
  CHECK(winner({column, near}) == column);
  CHECK(winner({near, nearer}) == nearer);
  CHECK(winner({near, below}) == below);
  CHECK(winner({below, near}) == below);
  CHECK_FALSE(snap(Axis::U, ft(6), {column, near}, in(3), {}, feetInches));
  CHECK_FALSE(snap(Axis::Z, ft(5), {column, near}, in(3), {}, feetInches));
}

TEST_CASE("a whole unit never wins over a real thing in reach") {
  const std::vector<SnapCandidate> one = {thing(SnapCandidate::Kind::Middle, ft(5, 2))};
  CHECK(snap(Axis::U, ft(5), one, in(3), ft(1), feetInches)->to.kind == SnapCandidate::Kind::Middle);
  const auto whole = snap(Axis::U, ft(5) + in(0, 3), one, in(1), in(1), feetInches);
  CHECK(whole->to.kind == SnapCandidate::Kind::WholeUnit);
  CHECK(whole->at == ft(5));
  CHECK(whole->by == -in(0, 3));
  CHECK(Words::of("en").say(whole->to.name, feetInches) == "5' 0\"");
  CHECK_FALSE(snap(Axis::U, ft(5, 6), {}, in(1), ft(1), feetInches));
}

TEST_CASE("the whole unit is as fine as the zoom lets it be of use") {
  CHECK(wholeUnit(UnitSystem::FeetInches, in(0, 4)) == in(1));
  CHECK(wholeUnit(UnitSystem::FeetInches, in(0, 5)) == ft(1));
  CHECK(wholeUnit(UnitSystem::FeetInches, ft(2)) == ft(1));
  CHECK(wholeUnit(UnitSystem::Millimetres, Length::millimetres(2)) == Length::millimetres(10));
  CHECK(wholeUnit(UnitSystem::Millimetres, Length::millimetres(3)) == Length::millimetres(100));
}

TEST_CASE("what is dragged is not snapped to") {
  for (const SnapCandidate& one : candidates({"W1", "g2", "2"})) {
    CHECK(one.id != "W1");
    CHECK(one.id != "g2");
    CHECK(one.id != "2");
  }
  CHECK(candidates({"W1"}).size() == candidates().size() - 6);
}

TEST_CASE("of an opening's jambs and centre the one snaps that wins") {
  const auto best = snapAny(Axis::U, {ft(16, 1), ft(20, 1), ft(18, 1)}, candidates({"W1"}), in(2), {}, feetInches);
  REQUIRE(best);
  CHECK(best->place == 1);
  CHECK(best->by == -in(1));
  CHECK(best->to.id == "2");
}

TEST_CASE("a wall that is not laid out has nothing to snap to") {
  Job job = withZedGirts();
  job.walls[A].width = ft(9);
  job.walls[A].top.clear();
  CHECK(snapCandidates(job, plan(job), A, {}).empty());
  CHECK(neighbourGaps(job, plan(job), A, {ft(1), ft(2), ft(1), ft(2)}, {}).empty());
}

TEST_CASE("beside an opening stand the next jamb or the corner, and the next column") {
  CHECK(gapsBeside({ft(43), ft(47), ft(3, 6), ft(6, 6)}, {"W3"}) ==
        std::vector<std::string>{"right jamb of W1 11' 0\"", "column 3 3' 0\"", "left jamb of W2 6' 0\"",
                                 "column 4 13' 0\"", "top of concrete 3' 6\"", "girt g2 3' 6\""});
}

TEST_CASE("what is moved and what stands higher or lower is no neighbour") {
  const FaceBox low{ft(28), ft(32), ft(1), ft(3)};
  CHECK(gapsBeside(low, {"W1"}) == std::vector<std::string>{"left corner 28' 0\"", "column 2 8' 0\"",
                                                            "right corner 28' 0\"", "column 3 8' 0\"",
                                                            "top of concrete 1' 0\"", "girt g1 2' 0\""});
  const FaceBox own{ft(28), ft(32), ft(3, 6), ft(6, 6)};
  CHECK(gapsBeside(own, {"W1"})[0] == "right edge of P1 15' 8\"");
}

TEST_CASE("a girt that ends before the opening is not measured to; above the last girt stands the steel") {
  CHECK(gapsBeside({ft(51), ft(52), ft(6), ft(11)}, {})[4] == "top of concrete 6' 0\"");
  CHECK(gapsBeside({ft(51), ft(52), ft(6), ft(11)}, {})[5] == "steel line 3' 0\"");
}
