// Ribs of a sheet with 36 in cover and crowns about 0, 12 and 24 in.
#include "core/drawing/rib_ends.h"

#include <catch2/catch.hpp>

#include "core/layout/wall_layout.h"
#include "core/plan/plan.h"
#include "tests/core/drawing/drawn_jobs.h"
#include "tests/core/drawing/page_reading.h"

using namespace ribwright;

namespace {

struct RibView {
  Job job = withScrews(narrowWall(), "rib-36-1.25-at-12", {});
  Plan made = plan(job);
  WallView view;
  explicit RibView(std::int64_t scale) {
    view.wall = &job.walls.front();
    view.layout = &made.walls.front()->layout;
    view.profiles = &job.profiles;
    view.words = &Words::of("en");
    view.scale.below = scale;
    view.to = view.layout->face.width;
  }
  const Piece& piece() const { return view.layout->pieces.front(); }
};

}  // namespace

// Hung from the right corner of a wall 36 in wide, its lip of 1-1/2 in flush with the corner: the module line and its
// rib stand 34-1/2 in from the left corner, the next ribs 12 in and 24 in on.
TEST_CASE("ribs are seen at the middles of the profile's crowns, each once") {
  const RibView drawn(24);
  const std::vector<Length> expected{Length::inches(10, 32), Length::inches(22, 32), Length::inches(34, 32)};
  CHECK(ribsSeen(drawn.view, drawn.piece()) == expected);
}

TEST_CASE("the ticks stand at the ribs, under the foot of the sheets") {
  const RibView drawn(24);
  Sketch sketch;
  CHECK(drawRibEnds(sketch, drawn.view));
  const Page page{PaperSize::Letter, "A", "", sketch.drawing};
  const auto fills = fillsOf(page);
  REQUIRE(fills.size() == 1);
  const auto ribs = ribsSeen(drawn.view, drawn.piece());
  REQUIRE(fills[0].rings.size() == ribs.size());
  for (std::size_t i = 0; i < ribs.size(); ++i) {
    const auto& ring = fills[0].rings[i];
    CHECK((ring[0].x + ring[1].x) / 2 == Approx(drawn.view.x(ribs[i])));
    CHECK(ring[0].y > drawn.view.y(drawn.piece().bottom));
  }
}

// 12 in at 1:300 are 1 mm on paper.
TEST_CASE("ribs too close to be told apart on paper are not drawn") {
  const RibView drawn(300);
  Sketch sketch;
  CHECK_FALSE(drawRibEnds(sketch, drawn.view));
  CHECK(sketch.drawing.items.empty());
}

TEST_CASE("a sheet whose profile is not told has no ribs") {
  RibView drawn(24);
  drawn.view.profiles = nullptr;
  CHECK(ribsSeen(drawn.view, drawn.piece()).empty());
}
