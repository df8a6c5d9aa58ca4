// Offsets that meet no flat, a metal edge in the lap, or one another.
#include <catch2/catch.hpp>

#include "core/checks/findings_of.h"
#include "core/checks/good_places.h"
#include "core/layout/lay_out_wall.h"
#include "screwed_walls.h"

using namespace ribwright;
using namespace ribwright::examples;

namespace {

// The girts' rows with one offset more, nothing else screwed.
Job withGirtOffset(Length x, Length width = Length::feet(40)) {
  Job job = screwed(freeWall(width));
  std::erase_if(job.patterns[0].rows, [](const PatternRow& row) { return row.support != SupportKind::Girt; });
  rowOf(job, SupportKind::Girt).offsets.push_back(x);
  return job;
}

std::string said(const Finding& finding, const char* part) {
  return Words::of("en").say(std::string("finding.").append(finding.id).append(part), finding.said(), {});
}

}  // namespace

// A washer of 1/2 in, 1/16 in beside it: 5/16 in from the bend at 11 in, so up to 10-11/16.
TEST_CASE("a screw whose washer comes too near a bend stops, and the nearest good place is told") {
  CHECK(foundOf(withGirtOffset(inches(10, 44)), "screw-off-flat").empty());
  const auto found = foundOf(withGirtOffset(inches(10, 45)), "screw-off-flat");
  REQUIRE(found.size() == 1);
  CHECK(found[0].grade == Grade::Stop);
  CHECK(lengthOf(found[0], "nearest") == inches(10, 44));
  CHECK(lengthOf(found[0], "gap") == inches(0, 1));
  CHECK(countOf(found[0]) == 2 * 13);  // two girts, thirteen sheets wide enough
  CHECK(said(found[0], ".where") == "wall A, girt rows, 10-45/64\" from the module line, first on sheet A1");
  CHECK(saysAll(found[0]));
}

TEST_CASE("a good place is told on a whole sixteenth, in metric jobs on a whole millimetre") {
  // 12 in stands on the middle of a rib: 10-11/16 and 13-5/16 are equally near, the smaller is told.
  CHECK(lengthOf(foundOf(withGirtOffset(inches(12)), "screw-off-flat").at(0), "nearest") == inches(10, 44));
  Job metric = withGirtOffset(inches(12));
  metric.units = UnitSystem::Millimetres;
  // The flat ends 271.4625 mm from the module line.
  CHECK(lengthOf(foundOf(metric, "screw-off-flat").at(0), "nearest") == Length::millimetres(271));
}

TEST_CASE("one offset on a bend is one finding, on a wall of 334 sheets as well") {
  const Job job = withGirtOffset(inches(12), inches(334 * 36));
  CHECK(plan(job).walls[0]->layout.runs[0].modules.size() == 334);
  const auto found = foundOf(job, "screw-off-flat");
  REQUIRE(found.size() == 1);
  CHECK(countOf(found[0]) >= 2 * 333);
  CHECK(idsOf(job).size() < 10);
}

TEST_CASE("each offset of each kind of row is its own finding") {
  Job job = withGirtOffset(inches(12));
  job.patterns[0].rows.push_back(rowOf(job, SupportKind::Girt));
  job.patterns[0].rows.back().support = SupportKind::Eave;
  job.patterns[0].rows.back().offsets.push_back(inches(24));
  std::vector<std::string> keys;
  for (const Finding& finding : foundOf(job, "screw-off-flat")) keys.push_back(finding.key());
  CHECK(keys == std::vector<std::string>{"screw-off-flat|A|thirds|eave 1' 0\"", "screw-off-flat|A|thirds|eave 2' 0\"",
                                         "screw-off-flat|A|thirds|girt 1' 0\""});
}

TEST_CASE("a washer wider than every flat finds none") {
  Job job = withGirtOffset(inches(8));
  job.screws[0].washer = inches(9, 56);  // 4-15/16 + 1/16 = 5 in from both bends of a pan of 10 in
  CHECK(foundOf(job, "screw-no-flat").empty());
  job.screws[0].washer += Length::nanometres(2);
  const auto found = foundOf(job, "screw-no-flat");
  REQUIRE(found.size() == 4);  // one for each offset
  CHECK(found[0].grade == Grade::Stop);
  CHECK(saysAll(found[0]));
}

// AISI S100-16: 1.5 d. The next sheet's lip begins 1-1/2 in before the cover's end, at 34-1/2 in.
TEST_CASE("a screw too near the metal edge of the sheet beside stops, once for its offset") {
  CHECK(idsOf(withGirtOffset(inches(34, 8))) == idsOf(withGirtOffset(inches(20))));
  const auto found = foundOf(withGirtOffset(inches(34, 16)), "screw-on-lap-edge");
  REQUIRE(found.size() == 1);
  CHECK(found[0].grade == Grade::Stop);
  CHECK(lengthOf(found[0], "edge") == inches(34, 32));
  CHECK(lengthOf(found[0], "gap") == inches(0, 16));
  CHECK(lengthOf(found[0], "limit") == inches(0, 24));
  CHECK(lengthOf(found[0], "nearest") == inches(34, 8));
  CHECK(found[0].source == "AISI S100-16");
  CHECK(saysAll(found[0]));
}

TEST_CASE("what a lap's edge bites is told once, though the run's last sheet has no lap there") {
  // 40-1/2 in past the last whole sheet: on the last but one the offset lies in the lap, on the last on a bend alone.
  Job job = withGirtOffset(inches(34, 46), inches(36 * 13 + 38));
  const auto ids = idsOf(job);
  CHECK(std::count(ids.begin(), ids.end(), "screw-on-lap-edge") == 1);
  CHECK(std::count(ids.begin(), ids.end(), "screw-off-flat") == 0);
}

TEST_CASE("good places keep 1.5 d from both edges of a lap, and lie on flats of both its sheets") {
  const Job job = quietWall();
  Profile profile = job.profiles[0];
  const std::vector<Flat> places = goodPlaces(profile, job.screws[0]);
  CHECK(places == std::vector<Flat>{{inches(1, 20), inches(10, 44)},
                                    {inches(13, 20), inches(22, 44)},
                                    {inches(25, 20), inches(34, 8)}});
  // A leg of 1-7/8 in that ends flat on the pan, as the next sheet's pan from 1 in on: through both at 1-5/16 to 1-1/2.
  profile.under = inches(1, 56);
  profile.section.back().x = inches(36, 32);
  profile.section.push_back({inches(37), Length()});
  profile.section.push_back({profile.cover + profile.under, Length()});
  const std::vector<Flat> nested = goodPlaces(profile, job.screws[0]);
  REQUIRE(nested.size() == 4);
  CHECK(nested[0] == Flat{inches(1, 20), inches(1, 32)});
  CHECK(nested[1] == Flat{inches(2, 16), inches(10, 44)});
}

// 3 d = 3/4 in is less than 1 in.
TEST_CASE("two screws of one row nearer than 1 in stop, and both offsets are named") {
  CHECK(foundOf(withGirtOffset(inches(7)), "screws-too-near").empty());
  const auto found = foundOf(withGirtOffset(inches(6, 63)), "screws-too-near");
  REQUIRE(found.size() == 1);
  CHECK(found[0].grade == Grade::Stop);
  CHECK(lengthOf(found[0], "x") == inches(6, 63));
  CHECK(lengthOf(found[0], "other") == inches(6));
  CHECK(lengthOf(found[0], "gap") == inches(0, 63));
  CHECK(lengthOf(found[0], "limit") == inches(1));
  CHECK(saysAll(found[0]));
}

TEST_CASE("no crown flat through both sheets: stitch screws have no place, told once a run") {
  Job job = quietWall();
  job.patterns[0].stitchSpacing = inches(18);
  job.patterns[0].stitchScrew = "1/4x1";
  CHECK(foundOf(job, "no-crown-at-lap").empty());
  // The leg comes down to the pan before the next sheet's crown begins, 1/2 in before the module line.
  auto& section = job.profiles[0].section;
  section[section.size() - 3].x = section[section.size() - 2].x = inches(35, 31);
  section[section.size() - 2].y = section.back().y = Length();
  job.walls[0].expansionJoints = {Length::feet(20)};
  const auto found = foundOf(job, "no-crown-at-lap");
  REQUIRE(found.size() == 2);
  CHECK(found[0].grade == Grade::Look);
  CHECK(found[0].key() != found[1].key());
  CHECK(saysAll(found[0]));
}

TEST_CASE("stitch screws spaced nearer than 1 in stop, once a wall") {
  Job job = quietWall();
  job.patterns[0].stitchScrew = "1/4x1";
  job.patterns[0].stitchSpacing = inches(1, 32);
  CHECK(foundOf(job, "screws-spaced-too-near").empty());
  job.patterns[0].stitchSpacing = inches(0, 48);
  const auto found = foundOf(job, "screws-spaced-too-near");
  REQUIRE(found.size() == 1);
  CHECK(saysAll(found[0]));
}

TEST_CASE("a jamb wholly under a rib is told for each jamb") {
  Job job = quietWall();
  Opening window;
  window.id = "W1";
  window.width = Length::feet(4);
  window.height = Length::feet(3);
  window.sill = Length::feet(4, 6);
  // Module lines at 1-1/2 + 36 k: the jamb's flange of 2-1/2 in stands on a pan of sheet 3 ...
  window.place.distance = inches(73, 32) + inches(8);
  job.walls[0].openings = {window};
  CHECK(foundOf(job, "jamb-under-rib").empty());
  // ... or a flange of 1-1/2 in on the rib 12 in from its module line.
  job.walls[0].openings[0].place.distance = inches(73, 32) + inches(12, 48);
  job.walls[0].openings[0].frame.face = inches(1, 32);
  const auto found = foundOf(job, "jamb-under-rib");
  REQUIRE(found.size() >= 1);
  CHECK(found[0].grade == Grade::Look);
  CHECK(found[0].key() == "jamb-under-rib|A|W1|left jamb");
  CHECK(saysAll(found[0]));
}

TEST_CASE("places under more than four sheets are told once, and a lap hung off its cover is no fault of the pattern") {
  const Job job = quietWall();
  const WallLayout layout = layOutWall(job, job.walls[0]).value();
  WallHoles holes = holesOf(job, job.walls[0], layout);
  const std::size_t before = findingsOf(job, job.walls[0], layout, holes).size();
  Refusal refusal;
  refusal.why = Refusal::Why::TooManySheets;
  refusal.row = 1;
  refusal.stretch = 0;
  holes.refusals = {refusal, refusal, refusal};
  const auto stacked = findingsOf(job, job.walls[0], layout, holes);
  REQUIRE(stacked.size() == before + 1);
  CHECK(stacked.back().id == "too-many-sheets");
  CHECK(countOf(stacked.back()) == 3);
  CHECK(saysAll(stacked.back()));
  refusal.why = Refusal::Why::OffFlat;
  refusal.piece = 2;
  refusal.x = inches(6);  // a flat, where sheets lap at their own cover
  holes.refusals = {refusal};
  const auto shifted = findingsOf(job, job.walls[0], layout, holes);
  REQUIRE(shifted.size() == before + 1);
  CHECK(shifted.back().id == "screw-off-shifted-lap");
  CHECK(shifted.back().grade == Grade::Look);
  CHECK(saysAll(shifted.back()));
}
