// A building made longer, wider or higher, and what has no place on its walls afterwards.
#include <catch2/catch.hpp>

#include "core/editing/building_edits.h"
#include "core/editing/new_job_file.h"
#include "core/job/by_id.h"
#include "core/job/job_file.h"
#include "core/layout/wall_face.h"
#include "core/plan/plan.h"

using namespace ribwright;

namespace {

Job sample(const std::string& name) {
  auto job = loadJob(std::string(RIBWRIGHT_ROOT) + "/sample-jobs/" + name + ".json");
  REQUIRE(job.ok());
  return std::move(job).value();
}

Job resized(const Job& job, Length length, Length width) {
  const auto made = buildingResized(job, {length, width});
  for (const Fault& fault : made ? std::vector<Fault>{} : made.faults()) FAIL(oneLine(fault));
  return made.value();
}

const Finding* findingOf(const Plan& plan, const std::string& id, const std::string& mark) {
  for (const Finding& finding : plan.findings) {
    if (finding.id == id && finding.mark == mark) return &finding;
  }
  return nullptr;
}

using Why = Displaced::Why;

}  // namespace

TEST_CASE("a longer building keeps its walls, bays and openings as they were stated") {
  const Job job = sample("gable-workshop");
  CHECK(buildingSize(job).value() == BuildingSize{Length::feet(60), Length::feet(40)});
  const Job longer = resized(job, Length::feet(80), Length::feet(40));
  CHECK(longer.walls == job.walls);
  CHECK(wallFace(longer, longer.walls[0]).value().width == Length::feet(80));
  CHECK(displaced(longer).empty());
  CHECK(resized(longer, Length::feet(60), Length::feet(40)) == job);
}

TEST_CASE("an opening that lies on its wall no more is found and kept, and the rest of the wall is laid out") {
  const Job job = sample("gable-workshop");
  const Job shorter = resized(job, Length::feet(50), Length::feet(40));  // W1 stands from 48 to 52 ft
  const auto off = displaced(shorter);
  REQUIRE(off.size() == 2);  // W6 on the back too
  CHECK(off[0] == Displaced{0, "W1", Why::OffWall, {}});
  CHECK(shorter.walls[0].openings == job.walls[0].openings);
  CHECK(readJob(writeJob(shorter), "job.json").value() == shorter);
  const Plan after = plan(shorter);
  const Finding* finding = findingOf(after, "opening-off-wall", "W1");
  REQUIRE(finding);
  CHECK(finding->grade == Grade::Stop);
  CHECK_FALSE(after.walls[0]->layout.pieces.empty());
  CHECK(findingOf(after, "wall-not-laid-out", "") == nullptr);
}

TEST_CASE("an opening wholly beyond the wall, or without its column, leaves the rest of the wall laid out") {
  Job job = resized(sample("gable-workshop"), Length::feet(44), Length::feet(40));
  CHECK_FALSE(plan(job).walls[0]->layout.pieces.empty());
  job.walls[0].columns.bays.pop_back();
  job.walls[0].columns.bays.pop_back();  // columns 1 and 2 are left; W1 is measured from 3
  const auto off = displaced(job);
  REQUIRE_FALSE(off.empty());
  CHECK(off[0] == Displaced{0, "W1", Why::ColumnGone, {}});
  const Plan after = plan(job);
  REQUIRE(findingOf(after, "opening-column-missing", "W1"));
  CHECK(findingOf(after, "opening-column-missing", "W1")->grade == Grade::Stop);
  CHECK_FALSE(after.walls[0]->layout.pieces.empty());
}

TEST_CASE("put where it fits: the nearest place on the wall, beside what is there, anchored as stated") {
  const Job shorter = resized(sample("gable-workshop"), Length::feet(50), Length::feet(40));
  const auto put = openingPutWhereItFits(shorter, 0, "W1");
  REQUIRE(put.ok());
  const Opening& moved = *byId(put.value().walls[0].openings, std::string("W1"));
  CHECK(moved.place.from == Anchor::From::Column);
  CHECK(moved.place.column == 3);
  CHECK(moved.place.distance == Length::feet(6));  // 40 + 6 + 4 is the corner at 50 ft
  CHECK(displaced(put.value()).size() == 1);       // W6
  CHECK(findingOf(plan(put.value()), "opening-off-wall", "W1") == nullptr);
}

TEST_CASE("of two that overlap the later one is displaced, and goes beside the other") {
  Job job = sample("gable-workshop");
  Opening again = job.walls[0].openings[2];  // W1: 48 to 52 ft
  again.id = "W9";
  again.place.distance += Length::feet(1);
  job.walls[0].openings.push_back(again);
  REQUIRE(displaced(job) == std::vector<Displaced>{{0, "W9", Why::Overlaps, "W1"}});
  const auto put = openingPutWhereItFits(job, 0, "W9");
  REQUIRE(put.ok());
  CHECK(displaced(put.value()).empty());
  // Its left jamb a quarter and a quarter of an inch right of 52 ft.
  CHECK(put.value().walls[0].openings.back().place.distance == Length::feet(12, 0, 32));
}

TEST_CASE("one whose column is gone is measured from the nearest there is") {
  Job job = sample("gable-workshop");
  job.walls[0].columns.bays.resize(1);
  const auto put = openingPutWhereItFits(job, 0, "W1");
  REQUIRE(put.ok());
  const Opening& moved = put.value().walls[0].openings[2];
  CHECK(moved.place.column <= 2);
  CHECK(findingOf(plan(put.value()), "opening-column-missing", "W1") == nullptr);
}

TEST_CASE("no room is a fault") {
  Job job = sample("gable-workshop");
  job.walls[1].openings[0].width = Length::feet(50);
  CHECK_FALSE(openingPutWhereItFits(job, 1, "W2").ok());
  CHECK_FALSE(openingPutWhereItFits(job, 1, "W99").ok());
}

TEST_CASE("an outline with more corners keeps its edges; a side that would pass another is a fault") {
  const Job job = sample("l-shape");
  const BuildingSize size = buildingSize(job).value();
  const auto longer = buildingResized(job, {size.length + Length::feet(10), size.width + Length::feet(5)});
  REQUIRE(longer.ok());
  CHECK(longer.value().building.outline.size() == job.building.outline.size());
  CHECK(buildingSize(longer.value()).value() ==
        BuildingSize{size.length + Length::feet(10), size.width + Length::feet(5)});
  const auto tooShort = buildingResized(job, {Length::feet(1), Length::feet(1)});
  REQUIRE_FALSE(tooShort.ok());
  CHECK(tooShort.faults().size() == 2);
}

TEST_CASE("a ridge outside the building is a fault, and nothing changes") {
  const Job job = sample("metric-hall");  // the ridge stands 9 m from the first side
  const BuildingSize size = buildingSize(job).value();
  CHECK_FALSE(buildingResized(job, {size.length, Length::millimetres(8000)}).ok());
  Roof roof = job.building.roof;
  roof.ridgeAt = size.width;
  CHECK_FALSE(roofSetTo(job, roof).ok());
  roof.ridgeAt = std::nullopt;
  roof.eave = Length::millimetres(5000);
  CHECK(roofSetTo(job, roof).value().building.roof == roof);
}

TEST_CASE("the top of a free wall goes along with its corners, its heights stay") {
  NewJob stated = shippedNewJob(UnitSystem::FeetInches);
  stated.shape = NewJob::Shape::FreeWall;
  const Job job = jobOf(stated, Words::of("en")).value();
  const Job wider = freeWallResized(job, 0, Length::feet(70)).value();
  CHECK(wider.walls[0].top[1] == FacePoint{Length::feet(35), Length::feet(22)});
  CHECK(wider.walls[0].top[2] == FacePoint{Length::feet(70), Length::feet(12)});
  CHECK(wallFace(wider, wider.walls[0]).value().width == Length::feet(70));
  CHECK_FALSE(freeWallResized(job, 0, Length()).ok());
  CHECK_FALSE(freeWallResized(sample("gable-workshop"), 0, Length::feet(70)).ok());
}
