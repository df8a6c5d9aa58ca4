// What is taken hold of on a wall, and where it comes to.
#include "core/editing/grips.h"

#include "tests/core/editing/workshop_parts.h"

using namespace ribwright;

namespace {

const Part face{Part::Kind::Face, "A", ""};

// With a bit of everything: a top of its own, a step in the base, a joint, two bands, a pipe.
Job furnished() {
  Job job = workshop();
  Wall& wall = job.walls[A];
  wall.hang = Hang::LeftToRight;
  wall.top = {{Length(), ft(14)}, {ft(60), ft(16)}};
  wall.base.steps = {{ft(10), in(8)}};
  wall.expansionJoints = {ft(30)};
  wall.bands.push_back(wall.bands[0]);
  wall.bands[1].from = ft(8);
  Penetration pipe;
  pipe.id = "P1";
  pipe.place.distance = ft(12);
  pipe.centre = ft(7);
  pipe.width = pipe.height = in(8);
  wall.penetrations = {pipe};
  return job;
}

std::vector<Grip> grips(const Job& job) { return gripsOf(job, plan(job), A, {w1, p1, g1, column2, face}); }

Grip gripOf(Grip::Kind kind, BoxEdge edge = {}) {
  for (const Grip& grip : grips(furnished())) {
    if (grip.kind == kind && grip.edge == edge) return grip;
  }
  FAIL("no such grip");
  return {};
}

Job drag(const Grip& grip, Length du, Length dz) {
  const Job job = furnished();
  return given(dragged(job, plan(job), A, grip, {grip.at.u + du, grip.at.z + dz}));
}

std::string name(const Grip& grip, Length du, Length dz, const char* language = "en") {
  return nameOfDrag(furnished(), A, grip, {grip.at.u + du, grip.at.z + dz}, Words::of(language));
}

FaceBox box(const Job& job) { return openingBox(job, job.walls[A], job.walls[A].openings[0]).value(); }

}  // namespace

TEST_CASE("every kind of grip is there once for each thing that it takes") {
  std::map<Grip::Kind, int> counts;
  for (const Grip& grip : grips(furnished())) ++counts[grip.kind];
  CHECK(counts == std::map<Grip::Kind, int>{{Grip::Kind::Opening, 1},
                                            {Grip::Kind::OpeningEdge, 8},
                                            {Grip::Kind::Penetration, 1},
                                            {Grip::Kind::PenetrationEdge, 4},
                                            {Grip::Kind::Girt, 1},
                                            {Grip::Kind::GirtEnd, 2},
                                            {Grip::Kind::Column, 1},
                                            {Grip::Kind::TopPoint, 2},
                                            {Grip::Kind::BaseStep, 1},
                                            {Grip::Kind::ModuleLine, 4},
                                            {Grip::Kind::Band, 1},
                                            {Grip::Kind::Joint, 1}});
}

TEST_CASE("a grip dragged to where it stands gives the same job") {
  Job job = furnished();
  job.walls[A].openings[0].width += Length::nanometres(1);
  job.walls[A].openings[0].place.to = Anchor::To::Centre;
  job.walls[A].girts[0].to = ft(60);
  for (const Grip& grip : grips(job)) {
    INFO(static_cast<int>(grip.kind));
    CHECK(given(dragged(job, plan(job), A, grip, grip.at)) == job);
    if (!grip.alongU) CHECK(given(dragged(job, plan(job), A, grip, {grip.at.u + ft(1), grip.at.z})) == job);
    if (!grip.alongZ) CHECK(given(dragged(job, plan(job), A, grip, {grip.at.u, grip.at.z + ft(1)})) == job);
  }
}

TEST_CASE("a grip that was dragged stands where it was dragged to") {
  const Job job = furnished();
  for (const Grip& grip : grips(job)) {
    INFO(static_cast<int>(grip.kind) << " " << grip.edge.across << " " << grip.edge.up);
    if (grip.kind == Grip::Kind::ModuleLine) continue;  // the run has a line in every cover; the first may be another
    const bool outward = grip.kind == Grip::Kind::GirtEnd;
    const Length du = outward ? in(2) * -grip.edge.across : in(2);
    const Job moved = given(dragged(job, plan(job), A, grip, {grip.at.u + du, grip.at.z + in(2)}));
    FacePoint wanted = grip.at;
    if (grip.alongU) wanted.u += du;
    if (grip.alongZ) wanted.z += in(2);
    bool stands = false;
    for (const Grip& other : grips(moved)) {
      const bool same = other.kind == grip.kind && other.id == grip.id && other.edge == grip.edge;
      // What is shown in the middle or at the foot goes along with the rest.
      stands |= same && (!grip.alongU || other.at.u == wanted.u) && (!grip.alongZ || other.at.z == wanted.z);
    }
    CHECK(stands);
  }
}

TEST_CASE("an opening is dragged whole or by an edge") {
  CHECK(box(drag(gripOf(Grip::Kind::Opening), ft(1), in(3))) == FaceBox{ft(29), ft(33), ft(3, 9), ft(6, 9)});
  CHECK(box(drag(gripOf(Grip::Kind::OpeningEdge, {-1, 0}), -ft(1), in(3))) ==
        FaceBox{ft(27), ft(32), ft(3, 6), ft(6, 6)});
  const Job job = furnished();
  const Grip edge = gripOf(Grip::Kind::OpeningEdge, {1, 1});
  CHECK_FALSE(dragged(job, plan(job), A, edge, {ft(20), edge.at.z}));
}

TEST_CASE("a girt's end dragged to the corner runs on to it") {
  Job job = furnished();
  job.walls[A].girts[0].to = ft(50);
  const std::vector<Grip> ends = gripsOf(job, plan(job), A, {g1});
  CHECK_FALSE(given(dragged(job, plan(job), A, ends[2], {ft(60), Length()})).walls[A].girts[0].to.has_value());
  CHECK(given(dragged(job, plan(job), A, ends[1], {ft(3), Length()})).walls[A].girts[0].from == ft(3));
}

TEST_CASE("a column takes its window along, or leaves it, as is asked for") {
  const Job job = furnished();
  const Grip column = gripOf(Grip::Kind::Column);
  CHECK(box(drag(column, ft(1), Length())).left == ft(29));
  CHECK(box(given(dragged(job, plan(job), A, column, {ft(21), Length()}, Anchored::Stay))).left == ft(28));
}

TEST_CASE("nothing is taken hold of that is not there, follows from others or stands on another wall") {
  const Job job = furnished();
  CHECK(gripsOf(job, plan(job), A, {{Part::Kind::Opening, "A", "W9"}}).empty());
  CHECK(gripsOf(job, plan(job), A, {{Part::Kind::Column, "A", "9"}}).empty());
  CHECK(gripsOf(job, plan(job), A, {{Part::Kind::Piece, "A", "A1"}}).empty());
  CHECK(gripsOf(job, plan(job), 1, {w1, face}).empty());
  Job nowhere = job;
  nowhere.walls[A].width = ft(9);
  nowhere.walls[A].top.clear();
  CHECK(gripsOf(nowhere, plan(nowhere), A, {w1, g1, face}).empty());
}

TEST_CASE("a drag is called by what it does, in the language of the window") {
  CHECK(name(gripOf(Grip::Kind::Opening), in(4), Length()) == "Move W1 by 4\"");
  CHECK(name(gripOf(Grip::Kind::Opening), -in(4), in(2)) == "Move W1 by 4\" and 2\"");
  CHECK(name(gripOf(Grip::Kind::OpeningEdge, {1, 0}), in(6), Length()) == "Make W1 4' 6\" × 3' 0\"");
  CHECK(name(gripOf(Grip::Kind::Girt), Length(), in(4)) == "Move girt g1 by 4\"");
  CHECK(name(gripOf(Grip::Kind::GirtEnd, {1, 0}), -ft(10), Length()) == "End girt g1 at 50' 0\"");
  CHECK(name(gripOf(Grip::Kind::GirtEnd, {1, 0}), Length(), Length()) == "Run girt g1 to the corner");
  CHECK(name(gripOf(Grip::Kind::Column), ft(1), ft(3)) == "Move column 2 by 1' 0\"");
  CHECK(name(gripOf(Grip::Kind::Band), ft(1), ft(3)) == "Move lower limit of band 2 by 3' 0\"");
  CHECK(name(gripOf(Grip::Kind::Opening), in(4), Length(), "es") == "Mover W1 4\"");
  CHECK(name(gripOf(Grip::Kind::Girt), in(4), in(1), "es") == "Mover larguero g1 1\"");
}
