#include <catch2/catch.hpp>

#include "core/drawing/board_pick.h"
#include "core/drawing/board_picture.h"
#include "core/job/job_file.h"
#include "tests/core/drawing/board_middles.h"
#include "tests/core/drawing/drawn_jobs.h"

using namespace ribwright;

TEST_CASE("every sheet, opening, penetration and screw of the sample jobs is picked at its middle") {
  for (const char* name : {"gable-workshop", "metric-hall", "doe-warehouse", "l-shape", "lean-to"}) {
    const auto job = loadJob(std::string(RIBWRIGHT_ROOT "/sample-jobs/") + name + ".json");
    REQUIRE(job);
    const Plan made = plan(job.value());
    std::size_t picked = 0;
    for (std::size_t wall = 0; wall < job.value().walls.size(); ++wall) {
      INFO(name << ", wall " << wall);
      const BoardPicture picture = boardPicture(job.value(), made, wall, Words::of("en"));
      CHECK(missedAtTheirMiddles(picture, made.walls[wall]->layout) == std::vector<std::string>{});
      CHECK(missedScrews(picture) == std::vector<std::string>{});
      picked += picture.things.size();
    }
    CHECK(picked > 10);
  }
}

TEST_CASE("outside the wall nothing is picked") {
  const Job job = screwedFront();
  const BoardPicture picture = boardPicture(job, plan(job), 0, Words::of("en"));
  const Box& face = picture.face;
  for (const PaperPoint& place :
       {PaperPoint{face.left - 50, face.middle().y}, PaperPoint{face.right + 50, face.middle().y},
        PaperPoint{face.middle().x, face.top - 50}, PaperPoint{face.middle().x, face.bottom + 50}})
    CHECK(!partAt(picture, place, 10, 1));
}

TEST_CASE("a girt is picked within reach of its row, and a screw before it, but only when screws are seen") {
  const Job job = screwedFront();
  const Plan made = plan(job);
  const BoardPicture picture = boardPicture(job, made, 0, Words::of("en"));
  const Hole* onGirt = nullptr;
  for (const Hole& hole : made.walls[0]->holes.holes) {
    if (hole.kind == HoleKind::Girt && !onGirt) onGirt = &hole;
  }
  REQUIRE(onGirt);
  const PaperPoint at{onGirt->u.inMillimetres(), -onGirt->z.inMillimetres()};
  CHECK(partAt(picture, {at.x, at.y + 4}, 5, 2)->kind == Part::Kind::Screw);
  CHECK(partAt(picture, {at.x, at.y + 4}, 5, 0.001)->kind == Part::Kind::Girt);
  CHECK(partAt(picture, {at.x, at.y + 8}, 5, 0.001)->kind == Part::Kind::Piece);
}
