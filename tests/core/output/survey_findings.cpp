// Findings of what was measured: a level wall 12 ft wide, girt g1 typed by its web line at 7 ft 4 in, the chalk line
// 1-3/4 in below concrete, so that the girt stands 89-3/4 in above it by the plans.
#include <catch2/catch.hpp>

#include "core/checks/findings_of.h"
#include "core/fastening/girt_sag.h"
#include "core/layout/lay_out_wall.h"
#include "core/output/tables.h"
#include "core/plan/plan.h"
#include "tests/core/fastening/measured_walls.h"

using namespace ribwright;
using namespace ribwright::examples;

namespace {

Job unmeasured() { return levelWall({girt("g1", Length::feet(7, 4), Girt::TypedBy::WebLine)}); }

Job measured(std::vector<GirtReading> readings) {
  Job job = unmeasured();
  job.walls[0].survey.girts = {{"g1", std::move(readings)}};
  return job;
}

std::vector<Finding> found(const Job& job, const std::string& id) {
  std::vector<Finding> all = plan(job).findings;
  std::erase_if(all, [&](const Finding& finding) { return finding.id != id; });
  return all;
}

std::string said(const Finding& finding) {
  const FindingText text = findingText(finding, {});
  return text.where + ": " + text.why + " " + text.remedy;
}

}  // namespace

TEST_CASE("survey-missing: girts without a reading, once a wall") {
  const auto missing = found(unmeasured(), "survey-missing");
  REQUIRE(missing.size() == 1);
  CHECK(missing[0].grade == Grade::Note);
  CHECK(said(missing[0]).starts_with("wall A, girts g1: These girts are not measured yet"));
  CHECK(found(measured({at(in(0), in(89, 12)), at(in(144), in(89, 12))}), "survey-missing").empty());
}

TEST_CASE("survey-out-of-reach: sheets beyond a girt's last station") {
  const auto beyond = found(measured({at(in(0), in(89, 12)), at(in(100), in(89, 12))}), "survey-out-of-reach");
  REQUIRE(beyond.size() == 1);
  CHECK(said(beyond[0]).find(R"(9' 3-1/2" to 11' 3-1/2")") != std::string::npos);
  CHECK(found(measured({at(in(0), in(89, 12)), at(in(136), in(89, 12))}), "survey-out-of-reach").empty());
}

TEST_CASE("survey-girt-unknown: readings of a girt that the wall has not") {
  Job job = unmeasured();
  job.walls[0].survey.girts = {{"g7", {at(in(0), in(80))}}, {"eave", {at(in(0), in(80))}}};
  const auto unknown = found(job, "survey-girt-unknown");
  REQUIRE(unknown.size() == 1);
  CHECK(unknown[0].mark == "g7");
}

// 1/2 in off the plans is what a clip may take up, a sixteenth more is the engineer's.
TEST_CASE("girt-off-plan: a girt more than 1/2 in off its height") {
  CHECK(found(measured({at(in(0), in(89, 4)), at(in(144), in(89, 4))}), "girt-off-plan").empty());
  const auto low = found(measured({at(in(0), in(89, 4)), at(in(144), in(89, 3))}), "girt-off-plan");
  REQUIRE(low.size() == 1);
  CHECK(said(low[0]) ==
        R"(wall A, girt g1, 12' 0" from the left corner: The girt stands 9/16" below the height of the plans. )"
        R"(Ask the engineer before it is raised: it is more than 1/2", or than its clip's slot as stated.)");
}

TEST_CASE("chalk-off-sheets: a chalk line that was snapped where sheets do not end") {
  Job job = measured({at(in(0), in(89, 12)), at(in(144), in(89, 12))});
  job.walls[0].survey.chalkLine = -in(1, 12);
  CHECK(found(job, "chalk-off-sheets").empty());
  job.walls[0].survey.chalkLine = -in(2);
  const auto off = found(job, "chalk-off-sheets");
  REQUIRE(off.size() == 1);
  CHECK(off[0].grade == Grade::Stop);
  CHECK(said(off[0]).find(R"(snapped 1/4" below)") != std::string::npos);
  // The batch's own reason says it; the finding is no second one.
  CHECK(plan(job).walls[0]->batches.at(0).reasons.size() == 1);
}

// Stick checks within 5/8 in leave no room on a face 1.975 in high.
TEST_CASE("batch-row-held: a row that finds no ordinate, with what to do, cheapest first") {
  const auto held =
      found(measured({at(in(0), in(89, 12), in(0, 10)), at(in(144), in(89, 12), in(0, 10))}), "batch-row-held");
  REQUIRE(held.size() == 4);
  CHECK(held[0].mark == "A1");
  const std::string text = said(held[0]);
  CHECK(text.find("wall A, batch A/1, sheet A1") == 0);
  CHECK(text.find("Measure girt g1 again") < text.find("Or: Ask the engineer"));
  CHECK(text.find("Or: Ask the engineer") < text.find("Or: Drill the row on the girt g1 where the sheets hang."));
}

// UFGS 07413: screw lines straight within 1/2 in. A girt 1-1/8 in low at midspan of its one bay still takes four sheets
// of one stack, with one straight row; 2 in low it is drilled in three, and the middle one lies about 1 in under the
// line between the end screws.
TEST_CASE("screw-line-crooked: screws off the line between their bay's end screws") {
  const auto sagging = [](Length by) {
    return measured({at(in(0), in(89, 12)), at(in(72), in(89, 12) - by), at(in(144), in(89, 12))});
  };
  CHECK(plan(sagging(in(1, 2))).walls[0]->batches.size() == 1);
  CHECK(found(sagging(in(1, 2)), "screw-line-crooked").empty());
  CHECK(plan(sagging(in(2))).walls[0]->batches.size() == 3);
  const auto crooked = found(sagging(in(2)), "screw-line-crooked");
  REQUIRE(crooked.size() == 1);
  CHECK(crooked[0].mark == "g1");
  CHECK(crooked[0].source == "UFGS 07413");
}

// Falling 1-1/2 in over 12 ft, in two stacks or more; both sheets of each lap are drilled. Where a stack ends, the
// lap's two holes are at two ordinates.
TEST_CASE("lap-holes-apart: holes in both sheets of a lap that are drilled in two stacks") {
  Job job = measured({at(in(0), in(89, 12)), at(in(144), in(88, 4))});
  Profile& profile = job.profiles[0];
  profile.section = {{-profile.over, Length()}, {profile.cover + profile.under, Length()}};  // flat, so that laps bear
  job.patterns[0] = everywhere({in(12), Length::inches(34, 54)});
  confirm(job);
  CHECK(found(job, "lap-holes-apart").empty());  // the upper sheet alone
  job.patterns[0].lapHoles = ScrewPattern::LapHoles::BothSheets;
  confirm(job);
  const Plan made = plan(job);
  const auto& batches = made.walls[0]->batches;
  REQUIRE(batches.size() >= 2);
  const auto apart = found(job, "lap-holes-apart");
  REQUIRE(apart.size() == batches.size() - 1);
  const Length by = girtRow(batches[0]).s - girtRow(batches[1]).s;
  CHECK(by > in(0, 1));
  CHECK(said(apart[0]).find("would lie " + shownText(by, {}) + " apart") != std::string::npos);
  // Level, they are alike.
  job.walls[0].survey.girts[0].readings[1].height = in(89, 12);
  CHECK(found(job, "lap-holes-apart").empty());
}

// The wall's one girt, an 8 in zed, over two bays: 12 ft are too short to sag an eighth of an inch, 24 ft
// are not.
TEST_CASE("girt-sag: a note once a wall while no props are in place, at the bay that sags most") {
  const auto spanning = [](std::int64_t feet) {
    Job job = unmeasured();
    Wall& wall = job.walls[0];
    wall.width = Length::feet(feet + 12);
    wall.top = {{Length(), Length::feet(12)}, {*wall.width, Length::feet(12)}};
    wall.columns.bays = {Length::feet(12), Length::feet(feet)};
    return job;
  };
  CHECK(found(spanning(12), "girt-sag").empty());
  const auto sags = found(spanning(24), "girt-sag");
  REQUIRE(sags.size() == 1);
  CHECK(sags[0].grade == Grade::Note);
  CHECK(sags[0].mark == "g1");
  CHECK(sags[0].source == "three-moment equation; E of AISI S100, AISC 360; common practice");
  CHECK(said(sags[0]).find("between its holds 12' 0\" and 36' 0\" from the left corner (one of 2 continuous spans, "
                           "three-moment equation). That is with its gross section") != std::string::npos);
  CHECK(said(sags[0]).find("Set props at midspan before girts are measured and sheets are hung") != std::string::npos);
  Job propped = spanning(24);
  propped.walls[0].survey.propsInPlace = true;
  CHECK(found(propped, "girt-sag").empty());
  Job unstated = spanning(24);
  unstated.walls[0].girts[0].member.clear();
  CHECK(found(unstated, "girt-sag").empty());
}

// One girt over one bay that grows by a sixteenth of an inch at a time: the note comes with the first bay in which it
// sags more than 1/8 in, or 3 mm in a job in millimetres.
TEST_CASE("girt-sag: 1/8 in is not worth a prop, more is; 3 mm in jobs in millimetres") {
  for (const auto& [units, limit] :
       {std::pair(UnitSystem::FeetInches, in(0, 2)), std::pair(UnitSystem::Millimetres, Length::millimetres(3))}) {
    Job job = unmeasured();
    job.units = units;
    Wall& wall = job.walls[0];
    wall.width = Length::feet(20);
    wall.top = {{Length(), Length::feet(12)}, {*wall.width, Length::feet(12)}};
    const auto sagOf = [&](Length span) {
      wall.columns.bays = {span};
      const auto layout = layOutWall(job, wall).value();
      return girtSags(job, wall, layout, supportsOf(job, wall, layout)).at(0).sag;
    };
    Length span = Length::feet(20);
    while (sagOf(span) > limit) span -= Length::inches(0, 4);
    CHECK(found(job, "girt-sag").empty());
    CHECK(sagOf(span + Length::inches(0, 4)) > limit);
    CHECK(found(job, "girt-sag").size() == 1);
  }
}

// The edge falls 3 in to the right corner: past the sheets' end, 1-3/4 in below the datum, 84 in from the left one.
// Sheets of 145-3/4 in are ordered 146: the line at 4-3/4 in asks for 3 in more.
TEST_CASE("slab-edge-open: the measured edge below the sheets' end, with the line that covers it") {
  Job job = unmeasured();
  job.walls[0].survey.slab = {{in(0), in(0)}, {in(144), -in(3)}};
  const auto open = found(job, "slab-edge-open");
  REQUIRE(open.size() == 1);
  CHECK(open[0].grade == Grade::Look);
  CHECK(open[0].key() == "slab-edge-open|A||place 1");
  CHECK(said(open[0]).find(R"(wall A, 7' 0" to 12' 0" from the left corner: )") == 0);
  CHECK(said(open[0]).find(R"(by 1-1/4" at most, 12' 0" from the left corner)") != std::string::npos);
  CHECK(said(open[0]).find(R"(Snap the chalk line 3" lower, at -4-3/4" from the top of concrete)") !=
        std::string::npos);
  const auto longer = found(job, "sheets-short-of-slab");
  REQUIRE(longer.size() == 1);
  CHECK(longer[0].grade == Grade::Note);
  CHECK(said(longer[0]).find("wall A, sheets A1, A2, A3, A4: ") == 0);
  CHECK(said(longer[0]).find(R"(by 2-3/4" at most)") != std::string::npos);
  // The edge just at the sheets' end is not open, and then nobody asks for longer sheets.
  job.walls[0].survey.slab[1].z = -in(1, 12);
  CHECK(found(job, "slab-edge-open").empty());
  CHECK(found(job, "sheets-short-of-slab").empty());
}

TEST_CASE("slab-edge-open: in a notch the line that covers the edge may set sheets on the ledge") {
  Job job = unmeasured();
  job.walls[0].base.form = Base::Form::Notch;
  job.walls[0].survey.slab = {{in(0), in(0)}, {in(144), -in(3)}};
  const auto open = found(job, "slab-edge-open");
  REQUIRE(open.size() == 1);
  CHECK(said(open[0]).find("have the ledge cut lower there") != std::string::npos);
}

TEST_CASE("slab-edge-open: a drop of nothing is told once, by the plans alone") {
  Job job = unmeasured();
  job.walls[0].base.drop = Length();
  job.walls[0].survey.slab = {{in(0), in(0)}, {in(144), -in(3)}};
  const auto open = found(job, "slab-edge-open");
  REQUIRE(open.size() == 1);
  CHECK(said(open[0]) == R"(wall A: The sheets do not hang below the top of concrete (drop 0"): the slab edge stays )"
                         R"(open to weather. Let the sheets overhang the slab edge, or use a base trim or a notch.)");
}

// A wall 16 ft wide and 12 ft high: 20 ft from corner to corner. Over 12 ft it may lean 3/10 in.
TEST_CASE("wall-out-of-square and wall-width-off-plan: what the diagonals say") {
  Job job = unmeasured();
  Wall& wall = job.walls[0];
  wall.width = Length::feet(16);
  wall.top = {{Length(), Length::feet(12)}, {*wall.width, Length::feet(12)}};
  const auto measuredAs = [&](Length rising, Length falling) {
    wall.survey.diagonalRising = rising;
    wall.survey.diagonalFalling = falling;
  };
  measuredAs(Length::feet(20), Length::feet(20));
  CHECK(found(job, "wall-out-of-square").empty());
  CHECK(found(job, "wall-width-off-plan").empty());

  // Half their difference, times 20 / 16: 15/64 in each way lean 0.293 in, 1/4 in lean 0.3125 in.
  measuredAs(Length::feet(20) + Length::sixtyFourths(15), Length::feet(20) - Length::sixtyFourths(15));
  CHECK(found(job, "wall-out-of-square").empty());
  measuredAs(Length::feet(20) - in(0, 4), Length::feet(20) + in(0, 4));
  const auto leaning = found(job, "wall-out-of-square");
  REQUIRE(leaning.size() == 1);
  CHECK(leaning[0].grade == Grade::Look);
  CHECK(said(leaning[0]).find(R"(leans 5/16" to the left over its height of 12' 0")") != std::string::npos);
  CHECK(found(job, "wall-width-off-plan").empty());

  // Both longer by as much: times 20 / 16 too.
  measuredAs(Length::feet(20) + Length::sixtyFourths(25), Length::feet(20) + Length::sixtyFourths(25));
  CHECK(found(job, "wall-width-off-plan").empty());  // 0.488 in
  measuredAs(Length::feet(20) - Length::sixtyFourths(26), Length::feet(20) - Length::sixtyFourths(26));
  const auto narrow = found(job, "wall-width-off-plan");
  REQUIRE(narrow.size() == 1);
  CHECK(narrow[0].grade == Grade::Look);
  CHECK(said(narrow[0]).find(R"(is 15' 11-1/2" wide, 1/2" narrower than the 16' 0" of the plans)") !=
        std::string::npos);
  CHECK(found(job, "wall-out-of-square").empty());

  wall.survey.diagonalFalling.reset();
  CHECK(found(job, "wall-width-off-plan").empty());
}
