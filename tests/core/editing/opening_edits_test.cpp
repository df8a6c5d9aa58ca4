// Openings drawn, moved and resized on a wall with columns every 20 ft.
#include "core/editing/opening_edits.h"

#include "core/editing/next_ids.h"
#include "core/editing/penetration_edits.h"
#include "tests/core/editing/workshop_parts.h"

using namespace ribwright;

namespace {

FaceBox pipeOn(const Job& job, const std::string& id) {
  return penetrationBox(job, job.walls[A], *byId(job.walls[A].penetrations, id)).value();
}

const Anchor& anchorOf(const Job& job, const std::string& id) { return byId(job.walls[A].openings, id)->place; }

Job withPipes() {
  Job job = workshop();
  Penetration pipe;
  pipe.id = "P1";
  pipe.place.distance = ft(12);
  pipe.centre = ft(7);
  pipe.width = pipe.height = in(8);
  Penetration beam = pipe;
  beam.id = "P2";
  beam.shape = Penetration::Shape::Rectangular;
  beam.place = {Anchor::From::RightCorner, 0, ft(20), Anchor::To::NearJamb};
  beam.height = in(4);
  job.walls[A].penetrations = {pipe, beam};
  return job;
}

}  // namespace

TEST_CASE("the next opening has the letter of its kind and a number that the building has not") {
  CHECK(nextOpeningId(workshop(), Opening::Kind::Window) == "W3");
  CHECK(nextOpeningId(workshop(), Opening::Kind::WalkDoor) == "DR1");
  CHECK(nextOpeningId(workshop(), Opening::Kind::Louvre) == "L1");
  CHECK(nextOpeningId(workshop(), Opening::Kind::Framed) == "F1");
  CHECK(nextPenetrationId(withPipes()) == "P3");
  Job job = workshop();
  job.walls[B].openings = {window("W9", {})};
  CHECK(nextOpeningId(job, Opening::Kind::Window) == "W10");
}

TEST_CASE("a door is not called as a sheet of the wall whose letter it would have") {
  Job job = workshop();
  CHECK(nextOpeningId(job, Opening::Kind::OverheadDoor) == "DR1");
  std::erase_if(job.walls, [](const Wall& wall) { return wall.letter == "D"; });
  CHECK(nextOpeningId(job, Opening::Kind::OverheadDoor) == "D1");
  job.walls[A].letter = "W";
  CHECK(nextOpeningId(job, Opening::Kind::Window) != "W1");
}

TEST_CASE("a job that calls its windows otherwise goes on so") {
  Job job = workshop();
  job.walls[A].openings = {window("F3", {}), window("opening by the gate", {})};
  CHECK(nextOpeningId(job, Opening::Kind::Window) == "F4");
  job.walls[A].openings[0].kind = Opening::Kind::OverheadDoor;
  CHECK(nextOpeningId(job, Opening::Kind::WalkDoor) == "F4");
  CHECK(nextOpeningIdLike(job, job.walls[A].openings[1]) == "W1");
}

TEST_CASE("a window drawn from any corner is anchored from the nearest column to its left jamb") {
  for (const auto& [a, b] : {std::pair(FacePoint{ft(47), ft(3)}, FacePoint{ft(43), ft(7)}),
                             std::pair(FacePoint{ft(43), ft(7)}, FacePoint{ft(47), ft(3)})}) {
    const auto drawn = drawnOpening(workshop(), A, Opening::Kind::Window, a, b);
    REQUIRE(drawn);
    CHECK(drawn.value().id == "W3");
    CHECK(drawn.value().place == Anchor{Anchor::From::Column, 3, ft(3), Anchor::To::NearJamb});
    const Job job = given(addOpening(workshop(), A, drawn.value()));
    CHECK(boxOn(job, "W3") == FaceBox{ft(43), ft(47), ft(3), ft(7)});
  }
  CHECK(drawnOpening(workshop(), A, Opening::Kind::Window, {ft(36), ft(3)}, {ft(39), ft(6)}).value().place ==
        Anchor{Anchor::From::Column, 3, -ft(4), Anchor::To::NearJamb});
}

TEST_CASE("on a wall without columns it is anchored from the left corner") {
  const auto drawn = drawnOpening(workshop(), B, Opening::Kind::Window, {ft(9), ft(3)}, {ft(12), ft(6)});
  CHECK(drawn.value().place == Anchor{Anchor::From::LeftCorner, 0, ft(9), Anchor::To::NearJamb});
}

TEST_CASE("a door stands on the concrete, wherever the drag ended below") {
  Job job = workshop();
  job.walls[A].base.steps = {{ft(10), in(8)}};
  const auto level = drawnOpening(job, A, Opening::Kind::WalkDoor, {ft(2), ft(1)}, {ft(5), ft(7)});
  CHECK(level.value().sill == Length());
  CHECK(level.value().height == ft(7));
  const auto raised = drawnOpening(job, A, Opening::Kind::OverheadDoor, {ft(8), ft(7)}, {ft(20), ft(2)});
  CHECK(raised.value().sill == in(8));
  CHECK(raised.value().height == ft(6, 4));
}

TEST_CASE("what is drawn without width or height is refused") {
  CHECK_FALSE(drawnOpening(workshop(), A, Opening::Kind::Window, {ft(2), ft(1)}, {ft(2), ft(7)}));
  CHECK_FALSE(drawnOpening(workshop(), A, Opening::Kind::Window, {ft(2), ft(1)}, {ft(4), ft(1)}));
  CHECK_FALSE(drawnOpening(workshop(), A, Opening::Kind::WalkDoor, {ft(2), -ft(1)}, {ft(4), -ft(2)}));
}

TEST_CASE("moving an opening restates its distance and nothing else of its anchor") {
  const Job job = given(openingMovedTo(workshop(), A, "W1", ft(30), ft(4)));
  CHECK(anchorOf(job, "W1") == Anchor{Anchor::From::Column, 2, ft(10), Anchor::To::NearJamb});
  CHECK(boxOn(job, "W1") == FaceBox{ft(30), ft(34), ft(4), ft(7)});
  const Job other = given(openingMovedTo(workshop(), A, "W2", ft(50), ft(3, 6)));
  CHECK(anchorOf(other, "W2") == Anchor{Anchor::From::RightCorner, 0, ft(8), Anchor::To::Centre});
  CHECK(boxOn(other, "W2").left == ft(50));
}

TEST_CASE("an opening moved to where it stands is the same, to the nanometre") {
  Job job = workshop();
  job.walls[A].openings[1].width = Length::nanometres(1'219'200'001);
  const FaceBox box = boxOn(job, "W2");
  CHECK(given(openingMovedTo(job, A, "W2", box.left, box.bottom)) == job);
  CHECK(given(openingSetTo(job, A, "W2", box)) == job);
}

TEST_CASE("an edge that is taken leaves the other edges where they are") {
  const Job wider = given(openingEdgeMovedTo(workshop(), A, "W1", {-1, 0}, {ft(27), ft(99)}));
  CHECK(boxOn(wider, "W1") == FaceBox{ft(27), ft(32), ft(3, 6), ft(6, 6)});
  const Job corner = given(openingEdgeMovedTo(workshop(), A, "W2", {1, 1}, {ft(58), ft(7)}));
  CHECK(boxOn(corner, "W2") == FaceBox{ft(53), ft(58), ft(3, 6), ft(7)});
  CHECK(anchorOf(corner, "W2").to == Anchor::To::Centre);
  CHECK(anchorOf(corner, "W2").from == Anchor::From::RightCorner);
}

TEST_CASE("an edge taken to the other one or past it is refused, not held there") {
  CHECK(refusal(openingEdgeMovedTo(workshop(), A, "W1", {-1, 0}, {ft(32), ft(4)})).find("width") != std::string::npos);
  CHECK(refusal(openingEdgeMovedTo(workshop(), A, "W1", {1, 1}, {ft(40), ft(3)})).find("height") != std::string::npos);
}

TEST_CASE("an opening whose column is not there is not moved, and the fault says what to do") {
  Job job = workshop();
  job.walls[A].openings[0].place.column = 9;
  CHECK(refusal(openingMovedTo(job, A, "W1", ft(3), ft(3))).find("column 9") != std::string::npos);
  CHECK(given(openingRemoved(job, A, "W1")).walls[A].openings.size() == 1);
}

TEST_CASE("an id that is taken, an opening that is not there and a place beyond the world are refused") {
  refusal(addOpening(workshop(), A, window("W1", {})));
  refusal(openingMovedTo(workshop(), A, "W7", ft(3), ft(3)));
  refusal(openingRemoved(workshop(), B, "W1"));
  refusal(openingMovedTo(workshop(), A, "W1", Length::millimetres(99'000'000), ft(3)));
}

TEST_CASE("a penetration is drawn about its middle, a round one as wide as the longer way") {
  const auto round = drawnPenetration(workshop(), A, Penetration::Shape::Round, {ft(21), ft(8)}, {ft(22), ft(6)});
  CHECK(round.value().width == ft(2));
  CHECK(round.value().height == ft(2));
  CHECK(round.value().place == Anchor{Anchor::From::Column, 2, ft(1, 6), Anchor::To::NearJamb});
  CHECK(round.value().centre == ft(7));
  const Job job = given(addPenetration(workshop(), A, round.value()));
  CHECK(pipeOn(job, "P1") == FaceBox{ft(20, 6), ft(22, 6), ft(6), ft(8)});
  const auto box = drawnPenetration(workshop(), A, Penetration::Shape::Rectangular, {ft(21), ft(8)}, {ft(22), ft(6)});
  CHECK(box.value().width == ft(1));
  CHECK(box.value().height == ft(2));
}

TEST_CASE("a penetration moves by its centre and keeps its corner") {
  const Job job = given(penetrationMovedTo(withPipes(), A, "P2", {ft(38), ft(8)}));
  CHECK(job.walls[A].penetrations[1].place.from == Anchor::From::RightCorner);
  CHECK(job.walls[A].penetrations[1].place.distance == ft(22));
  CHECK(job.walls[A].penetrations[1].centre == ft(8));
}

TEST_CASE("a round penetration grows about its centre by any side, a rectangular one by the side that is taken") {
  const Job round = given(penetrationEdgeMovedTo(withPipes(), A, "P1", {1, 0}, {ft(12, 6), ft(1)}));
  CHECK(pipeOn(round, "P1") == FaceBox{ft(11, 6), ft(12, 6), ft(6, 6), ft(7, 6)});
  const Job box = given(penetrationEdgeMovedTo(withPipes(), A, "P2", {0, 1}, {ft(1), ft(8)}));
  CHECK(pipeOn(box, "P2") == FaceBox{ft(39, 8), ft(40, 4), ft(6, 10), ft(8)});
  refusal(penetrationEdgeMovedTo(withPipes(), A, "P1", {1, 0}, {ft(12), ft(7)}));
  refusal(penetrationEdgeMovedTo(withPipes(), A, "P2", {-1, 0}, {ft(41), ft(7)}));
  CHECK(given(penetrationRemoved(withPipes(), A, "P1")).walls[A].penetrations.size() == 1);
}
