// Columns moved, added and deleted under openings that are measured from them.
#include "core/editing/column_edits.h"

#include "core/layout/wall_face.h"
#include "tests/core/editing/edited_walls.h"

using namespace ribwright;

namespace {

std::vector<Length> columns(const Job& job) { return columnsOf(job.walls[A].columns); }
const Anchor& anchor(const Job& job) { return job.walls[A].openings[0].place; }
Length left(const Job& job) { return leftJamb(job.walls[A], ft(60), job.walls[A].openings[0]).value(); }

Job withPipe() {
  Job job = workshop();
  Penetration pipe;
  pipe.id = "P1";
  pipe.place = {Anchor::From::Column, 3, -ft(2), Anchor::To::NearJamb};
  pipe.width = pipe.height = in(8);
  job.walls[A].penetrations = {pipe};
  return job;
}

}  // namespace

TEST_CASE("a column that moves changes its two bays and no others") {
  const Job job = given(columnMovedTo(workshop(), A, 2, ft(22), Anchored::Follow));
  CHECK(columns(job) == std::vector<Length>{ft(0), ft(22), ft(40), ft(60)});
  CHECK(job.walls[A].columns.bays == std::vector<Length>{ft(22), ft(18), ft(20)});
  CHECK(columns(given(columnMovedTo(workshop(), A, 1, ft(1), Anchored::Follow))) ==
        std::vector<Length>{ft(1), ft(20), ft(40), ft(60)});
  CHECK(columns(given(columnMovedTo(workshop(), A, 4, ft(59), Anchored::Follow))) ==
        std::vector<Length>{ft(0), ft(20), ft(40), ft(59)});
}

TEST_CASE("a window goes with its column, or stays where it is, as is asked for") {
  const Job follow = given(columnMovedTo(workshop(), A, 2, ft(22), Anchored::Follow));
  CHECK(anchor(follow) == anchor(workshop()));
  CHECK(left(follow) == ft(30));
  const Job stay = given(columnMovedTo(workshop(), A, 2, ft(22), Anchored::Stay));
  CHECK(anchor(stay) == Anchor{Anchor::From::Column, 2, ft(6), Anchor::To::NearJamb});
  CHECK(left(stay) == ft(28));
}

TEST_CASE("a column does not come to another one or past it") {
  refusal(columnMovedTo(workshop(), A, 2, ft(40), Anchored::Follow));
  CHECK(refusal(columnMovedTo(workshop(), A, 2, -ft(1), Anchored::Follow)).find("right of column 1") !=
        std::string::npos);
  refusal(columnMovedTo(workshop(), A, 5, ft(70), Anchored::Follow));
  refusal(columnMovedTo(workshop(), A, 0, ft(70), Anchored::Follow));
}

TEST_CASE("a column that is added moves nothing, and windows keep theirs by its new number") {
  const Job before = given(columnAdded(workshop(), A, ft(10)));
  CHECK(columns(before) == std::vector<Length>{ft(0), ft(10), ft(20), ft(40), ft(60)});
  CHECK(anchor(before) == Anchor{Anchor::From::Column, 3, ft(8), Anchor::To::NearJamb});
  CHECK(left(before) == ft(28));
  const Job behind = given(columnAdded(workshop(), A, ft(30)));
  CHECK(anchor(behind) == anchor(workshop()));
  CHECK(columns(given(columnAdded(workshop(), A, -ft(2)))).front() == -ft(2));
  CHECK(columns(given(columnAdded(workshop(), A, ft(64)))).back() == ft(64));
  refusal(columnAdded(workshop(), A, ft(40)));
}

TEST_CASE("the first column that is added to a wall without bays makes the first bay") {
  Job job = workshop();
  job.walls[A].columns = {};
  job.walls[A].openings[0].place = {Anchor::From::Column, 1, ft(8), Anchor::To::NearJamb};
  CHECK(columns(given(columnAdded(job, A, ft(20)))) == std::vector<Length>{ft(0), ft(20)});
  const Job left1 = given(columnAdded(job, A, -ft(1)));
  CHECK(columns(left1) == std::vector<Length>{-ft(1), ft(0)});
  CHECK(left(left1) == ft(8));
  refusal(columnAdded(job, A, Length()));
}

TEST_CASE("when a column goes, what was measured from it stays, or is as far from the nearest") {
  const Job stay = given(columnRemoved(withPipe(), A, 2, Anchored::Stay));
  CHECK(columns(stay) == std::vector<Length>{ft(0), ft(40), ft(60)});
  CHECK(anchor(stay) == Anchor{Anchor::From::Column, 1, ft(28), Anchor::To::NearJamb});
  CHECK(left(stay) == ft(28));
  CHECK(stay.walls[A].penetrations[0].place == Anchor{Anchor::From::Column, 2, -ft(2), Anchor::To::NearJamb});
  const Job follow = given(columnRemoved(withPipe(), A, 2, Anchored::Follow));
  CHECK(anchor(follow) == Anchor{Anchor::From::Column, 1, ft(8), Anchor::To::NearJamb});
  CHECK(columns(given(columnRemoved(workshop(), A, 1, Anchored::Stay))).front() == ft(20));
  CHECK(anchor(given(columnRemoved(workshop(), A, 1, Anchored::Stay))).column == 1);
  CHECK(columns(given(columnRemoved(workshop(), A, 4, Anchored::Stay))).back() == ft(40));
}

TEST_CASE("of the last two columns one leaves a place to measure from") {
  Job job = given(columnRemoved(workshop(), A, 4, Anchored::Stay));
  job = given(columnRemoved(job, A, 3, Anchored::Stay));
  job = given(columnRemoved(job, A, 2, Anchored::Stay));
  CHECK(columns(job).empty());
  CHECK(left(job) == ft(28));
  refusal(columnRemoved(job, A, 1, Anchored::Stay));
}

TEST_CASE("bays are typed as the plans write them") {
  const Job job = given(baysFromText(workshop(), A, "15', 2@22' 6", Anchored::Follow));
  CHECK(columns(job) == std::vector<Length>{ft(0), ft(15), ft(37, 6), ft(60)});
  CHECK(left(job) == ft(23));
  CHECK(left(given(baysFromText(workshop(), A, "15', 2@22' 6", Anchored::Stay))) == ft(28));
  refusal(baysFromText(workshop(), A, "15', 4x", Anchored::Follow));
  refusal(baysFromText(workshop(), A, "15', 0", Anchored::Follow));
}

TEST_CASE("a window from a column that the new bays have not is measured from the last, where it stands") {
  Job job = workshop();
  job.walls[A].openings[0].place = {Anchor::From::Column, 4, -ft(6), Anchor::To::NearJamb};
  for (const Anchored anchored : {Anchored::Follow, Anchored::Stay}) {
    const Job fewer = given(baysFromText(job, A, "30'", anchored));
    CHECK(anchor(fewer) == Anchor{Anchor::From::Column, 2, ft(24), Anchor::To::NearJamb});
    CHECK(left(fewer) == ft(54));
  }
}

TEST_CASE("a window whose column was missing keeps its statement") {
  Job job = workshop();
  job.walls[A].openings[0].place.column = 9;
  CHECK(anchor(given(columnMovedTo(job, A, 2, ft(22), Anchored::Stay))) == anchor(job));
  CHECK(anchor(given(columnAdded(job, A, ft(10)))).column == 10);
  CHECK(anchor(given(columnRemoved(job, A, 2, Anchored::Stay))).column == 8);
}
