// Several chosen parts at once: nudged, deleted, copied, repeated along bays, mirrored across, pasted.
#include "core/editing/part_edits.h"

#include "core/editing/copied_parts.h"
#include "core/editing/penetration_edits.h"
#include "core/editing/repeat_edits.h"
#include "tests/core/editing/workshop_parts.h"

using namespace ribwright;

namespace {

Job withMemberAndPipe() {
  Job job = workshop();
  job.members = {{"Z8", Member::Shape::Zed, in(8), in(2, 8), in(1), in(0, 1), in(0, 3)}};
  job.walls[A].girts[0].member = "Z8";
  job.walls[A].openings[0].frame.member = "Z8";
  Penetration pipe;
  pipe.id = "P1";
  pipe.place.distance = ft(12);
  pipe.centre = ft(7);
  pipe.width = pipe.height = in(8);
  job.walls[A].penetrations = {pipe};
  return job;
}

MadeParts made(const Outcome<MadeParts>& outcome) {
  for (const Fault& fault : outcome ? std::vector<Fault>() : outcome.faults()) UNSCOPED_INFO(oneLine(fault));
  REQUIRE(outcome);
  given(outcome.value().job);
  return outcome.value();
}

template <class T>
void refused(const Outcome<T>& outcome) {
  REQUIRE_FALSE(outcome);
  CHECK_FALSE(outcome.faults().front().place.empty());
}

}  // namespace

TEST_CASE("what is nudged goes that far, all of it or none") {
  const Job job = given(partsMoved(withMemberAndPipe(), {w1, p1, g1}, in(2), in(3)));
  CHECK(leftOn(job, "W1") == ft(28, 2));
  CHECK(job.walls[A].openings[0].sill == ft(3, 9));
  CHECK(job.walls[A].penetrations[0].centre == ft(7, 3));
  CHECK(job.walls[A].girts[0].height == ft(5, 3));
  CHECK_FALSE(job.walls[A].girts[0].from.has_value());
  CHECK(leftOn(job, "W2") == leftOn(withMemberAndPipe(), "W2"));
  CHECK(given(partsMoved(withMemberAndPipe(), {w1, w1}, in(2), Length())) ==
        given(partsMoved(withMemberAndPipe(), {w1}, in(2), {})));
  refusal(partsMoved(withMemberAndPipe(), {w1, {Part::Kind::Opening, "A", "W7"}}, in(2), Length()));
  refusal(partsMoved(withMemberAndPipe(), {{Part::Kind::Piece, "A", "A1"}}, in(2), Length()));
  refusal(partsMoved(withMemberAndPipe(), {{Part::Kind::Face, "A", "face"}}, in(2), Length()));
  refusal(partsMoved(withMemberAndPipe(), {{Part::Kind::Opening, "Z", "W1"}}, in(2), Length()));
}

TEST_CASE("a window that is chosen with its column goes that far once, one that is not goes along") {
  CHECK(leftOn(given(partsMoved(withMemberAndPipe(), {column2, w1}, ft(2), Length())), "W1") == ft(30));
  CHECK(leftOn(given(partsMoved(withMemberAndPipe(), {column2}, ft(2), Length())), "W1") == ft(30));
  const Job both = given(partsMoved(withMemberAndPipe(), {column2, column3}, ft(19), Length()));
  CHECK(both.walls[A].columns.bays == std::vector<Length>{ft(39), ft(20), ft(1)});
  refusal(partsMoved(withMemberAndPipe(), {column2, column3}, ft(20), Length()));
}

TEST_CASE("what is deleted goes, and what was measured from a column that goes stays") {
  const Job job = given(partsRemoved(withMemberAndPipe(), {w2, p1, g1, column2, column3}));
  CHECK(job.walls[A].openings.size() == 1);
  CHECK(job.walls[A].penetrations.empty());
  CHECK(job.walls[A].girts.size() == 1);
  CHECK(job.walls[A].columns.bays == std::vector<Length>{ft(60)});
  CHECK(leftOn(job, "W1") == ft(28));
  refusal(partsRemoved(withMemberAndPipe(), {{Part::Kind::Batch, "A", "A/1"}}));
  CHECK(given(partsRemoved(withMemberAndPipe(), {})) == withMemberAndPipe());
}

TEST_CASE("a copy stands beside the first one under an id of its own") {
  const MadeParts copies = made(partsCopied(withMemberAndPipe(), {w1, w2, p1}, {-ft(5), ft(1)}));
  CHECK(copies.parts == std::vector<Part>{{Part::Kind::Opening, "A", "W3"},
                                          {Part::Kind::Opening, "A", "W4"},
                                          {Part::Kind::Penetration, "A", "P2"}});
  CHECK(leftOn(copies.job, "W3") == ft(23));
  CHECK(leftOn(copies.job, "W4") == ft(48));
  CHECK(byId(copies.job.walls[A].openings, "W4")->place.from == Anchor::From::RightCorner);
  CHECK(copies.job.walls[A].openings[0] == withMemberAndPipe().walls[A].openings[0]);
  const MadeParts up = made(partsCopied(withMemberAndPipe(), {g1}, {Length(), ft(2)}));
  CHECK(byId(up.job.walls[A].girts, "g3")->height == ft(7));
  refused(partsCopied(withMemberAndPipe(), {g1}, {ft(2), Length()}));
  refused(partsCopied(withMemberAndPipe(), {column2}, {ft(2), Length()}));
}

TEST_CASE("a window is repeated as far from the column of each bay") {
  const MadeParts steps = made(onePerBay(withMemberAndPipe(), A, {w1}));
  CHECK(steps.parts.size() == 2);
  CHECK(leftOn(steps.job, "W3") == ft(8));
  CHECK(leftOn(steps.job, "W4") == ft(48));
  CHECK(byId(steps.job.walls[A].openings, "W4")->place == Anchor{Anchor::From::Column, 3, ft(8), Anchor::To::NearJamb});
  const MadeParts one = made(steppedAlongBays(withMemberAndPipe(), A, {w1}, 3, 1));
  CHECK(one.parts.size() == 1);
  CHECK(leftOn(one.job, "W3") == ft(48));
  CHECK(made(steppedAlongBays(withMemberAndPipe(), A, {w1}, 2, 1)).parts.empty());
}

TEST_CASE("what is anchored otherwise is repeated from columns all the same") {
  const MadeParts centred = made(steppedAlongBays(withMemberAndPipe(), A, {w2, p1}, 2, 1));
  CHECK(leftOn(centred.job, "W3") == ft(33));
  CHECK(byId(centred.job.walls[A].openings, "W3")->place.to == Anchor::To::Centre);
  CHECK(centred.job.walls[A].penetrations[1].place == Anchor{Anchor::From::Column, 2, ft(12), Anchor::To::NearJamb});
}

TEST_CASE("bays that are not there, a place before them and a girt are refused") {
  refused(steppedAlongBays(withMemberAndPipe(), A, {w1}, 0, 1));
  refused(steppedAlongBays(withMemberAndPipe(), A, {w1}, 2, 3));
  refused(steppedAlongBays(withMemberAndPipe(), A, {w1}, 1, 2'000'000'000));
  refused(steppedAlongBays(withMemberAndPipe(), A, {g1}, 1, 1));
  refused(onePerBay(withMemberAndPipe(), B, {w1}));
  refused(onePerBay(withMemberAndPipe(), A, {}));
  Job job = withMemberAndPipe();
  job.walls[A].columns.offset = ft(1);
  job.walls[A].openings[0].place = {Anchor::From::LeftCorner, 0, in(3), Anchor::To::NearJamb};
  refused(onePerBay(job, A, {w1}));
}

TEST_CASE("across the building a window stands opposite the first one") {
  Job job = withMemberAndPipe();
  job.walls[C].columns.bays = {ft(21), ft(39)};
  const MadeParts across = made(mirroredToOpposite(job, A, {w1, w2, p1}));
  CHECK(across.parts[0] == Part{Part::Kind::Opening, "C", "W3"});
  // 28 ft to 32 ft from A's left corner are 28 ft to 32 ft from C's right one; column 2 of A is at 40 ft there.
  CHECK(leftOn(across.job, "W3", C) == ft(28));
  CHECK(byId(across.job.walls[C].openings, "W3")->place ==
        Anchor{Anchor::From::Column, 2, ft(7), Anchor::To::NearJamb});
  CHECK(leftOn(across.job, "W4", C) == ft(3));
  CHECK(byId(across.job.walls[C].openings, "W4")->place ==
        Anchor{Anchor::From::LeftCorner, 0, ft(5), Anchor::To::Centre});
  CHECK(across.job.walls[C].penetrations[0].place ==
        Anchor{Anchor::From::RightCorner, 0, ft(12), Anchor::To::NearJamb});
  const MadeParts back = made(mirroredToOpposite(across.job, C, across.parts));
  CHECK(leftOn(back.job, "W5") == leftOn(job, "W1"));
  CHECK(leftOn(back.job, "W6") == leftOn(job, "W2"));
}

TEST_CASE("a girt across runs from the other end, and without columns there the corner is measured from") {
  Job job = withMemberAndPipe();
  job.walls[A].girts[0].to = ft(40);
  const MadeParts across = made(mirroredToOpposite(job, A, {g1, w1}));
  CHECK(byId(across.job.walls[C].girts, "g3")->from == ft(20));
  CHECK_FALSE(byId(across.job.walls[C].girts, "g3")->to.has_value());
  CHECK(byId(across.job.walls[C].openings, "W3")->place ==
        Anchor{Anchor::From::LeftCorner, 0, ft(28), Anchor::To::NearJamb});
}

TEST_CASE("only a rectangular building has walls across") {
  Job job = withMemberAndPipe();
  CHECK(oppositeWall(job, B) == 3);
  job.building.outline[2].x += in(1);
  refused(mirroredToOpposite(job, A, {w1}));
  job = withMemberAndPipe();
  job.building.outline[3].x += ft(10);
  refused(mirroredToOpposite(job, A, {w1}));
  job = withMemberAndPipe();
  job.walls.erase(job.walls.begin() + C);
  refused(mirroredToOpposite(job, A, {w1}));
  job = withMemberAndPipe();
  job.walls[A].line = PlanLine{{}, {ft(60), {}}};
  refused(mirroredToOpposite(job, A, {w1}));
}

TEST_CASE("what is copied as text is pasted in another job with the members that it names") {
  const CopiedParts copied = copiedParts(withMemberAndPipe(), A, {w1, w2, p1, g1}).value();
  CHECK(copied.members.size() == 1);
  const auto read = parseCopied(copiedText(copied));
  REQUIRE(read);
  CHECK(read.value() == copied);
  Job other = workshop();
  const MadeParts there = made(pasted(other, B, read.value()));
  CHECK(there.job.members == withMemberAndPipe().members);
  CHECK(there.parts.size() == 4);
  // B has no columns: the window is measured from the corner, to where it stood.
  CHECK(byId(there.job.walls[B].openings, "W3")->place ==
        Anchor{Anchor::From::LeftCorner, 0, ft(28), Anchor::To::NearJamb});
  CHECK(byId(there.job.walls[B].openings, "W4")->place.from == Anchor::From::RightCorner);
  CHECK(byId(there.job.walls[B].girts, "g3")->member == "Z8");
  other.walls[B].columns.bays = {ft(15), ft(25)};
  const MadeParts stated = made(pasted(other, B, read.value(), {ft(1), ft(2)}));
  CHECK(leftOn(stated.job, "W3", B) == ft(24));
  CHECK(byId(stated.job.walls[B].openings, "W3")->sill == ft(5, 6));
}

TEST_CASE("a member of one name and another cross-section is not pasted over") {
  Job other = withMemberAndPipe();
  other.members[0].depth += in(1);
  refused(pasted(other, A, copiedParts(withMemberAndPipe(), A, {g1}).value()));
  CHECK(made(pasted(other, A, copiedParts(withMemberAndPipe(), A, {p1}).value())).job.members == other.members);
}

TEST_CASE("text from elsewhere is no copied part") {
  for (const char* text : {"", "W1", "{}", "[1]", "{\"copied_from\": \"A\", \"width\": \"0\"}",
                           "{\"copied_from\": \"A\", \"width\": \"1' 0\\\"\", \"walls\": []}"}) {
    INFO(text);
    CHECK_FALSE(parseCopied(text));
  }
  refused(copiedParts(withMemberAndPipe(), A, {{Part::Kind::Opening, "B", "W1"}}));
}
