// A grip that snaps on its way.
#include "core/editing/drag_snaps.h"

#include "tests/core/editing/edited_walls.h"
#include "tests/core/editing/length_styles.h"

using namespace ribwright;

namespace {

Job bandedWorkshop() {
  Job job = workshop();
  Wall& wall = job.walls[A];
  wall.hang = Hang::LeftToRight;
  wall.top = {{Length(), ft(14)}, {ft(60), ft(14)}};
  wall.expansionJoints = {ft(30)};
  wall.bands.push_back(wall.bands[0]);
  wall.bands[1].from = ft(8);
  return job;
}

Grip bandedGrip(Grip::Kind kind, BoxEdge edge = {}) {
  const Job job = bandedWorkshop();
  const std::vector<Part> all = {{Part::Kind::Opening, "A", "W1"},
                                 {Part::Kind::Girt, "A", "g1"},
                                 {Part::Kind::Column, "A", "2"},
                                 {Part::Kind::Face, "A", ""}};
  for (const Grip& grip : gripsOf(job, plan(job), A, all)) {
    if (grip.kind == kind && grip.edge == edge) return grip;
  }
  FAIL("no such grip");
  return {};
}

std::vector<std::string> names(const Grip& grip, const std::vector<std::string>& also = {}) {
  std::vector<std::string> said;
  for (const SnapCandidate& one : snapCandidatesFor(bandedWorkshop(), plan(bandedWorkshop()), A, grip, also))
    said.push_back(Words::of("en").say(one.name, feetInches));
  return said;
}

bool holds(const std::vector<std::string>& all, const char* one) {
  return std::find(all.begin(), all.end(), one) != all.end();
}

SnappedDrag snapped(const Grip& grip, Length du, Length dz, Length reach = in(2), Length unit = {}) {
  return snappedDrag(bandedWorkshop(), A, grip, {grip.at.u + du, grip.at.z + dz},
                     snapCandidatesFor(bandedWorkshop(), plan(bandedWorkshop()), A, grip), reach, unit, feetInches);
}

}  // namespace

TEST_CASE("a grip does not snap to itself or to what goes along with it") {
  CHECK_FALSE(holds(names(bandedGrip(Grip::Kind::Opening)), "left jamb of W1"));
  CHECK(holds(names(bandedGrip(Grip::Kind::Opening)), "left jamb of W2"));
  CHECK_FALSE(holds(names(bandedGrip(Grip::Kind::Opening), {"W2"}), "left jamb of W2"));
  CHECK_FALSE(holds(names(bandedGrip(Grip::Kind::Joint)), "expansion joint 1"));
  CHECK(holds(names(bandedGrip(Grip::Kind::Band)), "expansion joint 1"));
  CHECK_FALSE(holds(names(bandedGrip(Grip::Kind::Band)), "lower limit of band 2"));
  CHECK_FALSE(holds(names(bandedGrip(Grip::Kind::ModuleLine)), "module line 2"));
  CHECK(holds(names(bandedGrip(Grip::Kind::Joint)), "module line 2"));
  CHECK_FALSE(holds(names(bandedGrip(Grip::Kind::TopPoint)), "steel line"));
  CHECK(holds(names(bandedGrip(Grip::Kind::TopPoint)), "top of concrete"));
}

TEST_CASE("a column takes its bays and its windows along") {
  const std::vector<std::string> all = names(bandedGrip(Grip::Kind::Column));
  for (const char* gone : {"column 2", "middle of bay 1", "middle of bay 2", "left jamb of W1"})
    CHECK_FALSE(holds(all, gone));
  for (const char* there : {"column 1", "column 3", "middle of bay 3", "left jamb of W2"}) CHECK(holds(all, there));
}

// W1 is 4 ft wide and stands from 28 ft on.
TEST_CASE("a window taken whole snaps by either jamb or by its middle") {
  const Grip w1 = bandedGrip(Grip::Kind::Opening);
  const SnappedDrag right = snapped(w1, ft(8, 1), Length());
  CHECK(right.across->to.name == Phrase{"name.column", {{"number", std::int64_t{3}}}});
  CHECK(right.to.u == w1.at.u + ft(8));
  CHECK(right.up->by == Length());
  const SnappedDrag middle = snapped(w1, -in(1), ft(2));
  CHECK(middle.across->to.name == Phrase{"name.joint", {{"number", std::int64_t{1}}}});
  CHECK(middle.to.u == ft(30));
  const SnappedDrag unheld = snapped(w1, ft(3, 5), ft(1, 3), in(0, 8));
  CHECK_FALSE(unheld.across);
  CHECK(unheld.to.u == w1.at.u + ft(3, 5));
}

TEST_CASE("to whole units a window goes by its left jamb, a girt by its typed height") {
  Grip w1 = bandedGrip(Grip::Kind::Opening);
  const SnappedDrag whole = snapped(w1, ft(5, 5) + in(0, 2), Length(), in(0, 4), in(1));
  CHECK(whole.to.u == w1.at.u + ft(5, 5));
  Job job = bandedWorkshop();
  job.walls[A].girts[0].typedBy = Girt::TypedBy::Bottom;
  job.walls[A].girts[0].member = "Z8";
  job.members = {{"Z8", Member::Shape::Zed, in(8), in(2, 8), in(1), in(0, 1), in(0, 3)}};
  const Grip g1 = gripsOf(job, plan(job), A, {{Part::Kind::Girt, "A", "g1"}}).front();
  REQUIRE(g1.at.z != ft(5));
  const FacePoint to{g1.at.u, g1.at.z + ft(1, 1) + in(0, 2)};
  const SnappedDrag up = snappedDrag(job, A, g1, to, {}, in(0, 4), in(1), feetInches);
  CHECK(given(dragged(job, plan(job), A, g1, up.to)).walls[A].girts[0].height == ft(6, 1));
}

TEST_CASE("a way that the grip cannot go does not snap") {
  CHECK_FALSE(snapped(bandedGrip(Grip::Kind::Girt), in(1), in(1)).across);
  CHECK(snapped(bandedGrip(Grip::Kind::Column), ft(20), in(1)).across);
  CHECK_FALSE(snapped(bandedGrip(Grip::Kind::Column), ft(20), in(1)).up);
}
