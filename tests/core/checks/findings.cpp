// Each finding once as it comes about, and once as it does not.
#include <catch2/catch.hpp>
#include <functional>

#include "screwed_walls.h"

using namespace ribwright;

namespace {

Opening door(Length left) {
  Opening made;
  made.id = "D1";
  made.kind = Opening::Kind::OverheadDoor;
  made.place.distance = left;
  made.width = Length::feet(10);
  made.height = Length::feet(10);
  return made;
}

// A wall of which nothing is to be found: girts within reach, sheets over the slab edge, wide rips, screws that hold.
Job quiet() { return examples::quietWall(); }

std::vector<std::string> ids(const Job& job) {
  std::vector<std::string> found;
  for (const Finding& finding : plan(job).findings) found.push_back(finding.id);
  return found;
}

bool has(const Job& job, const std::string& id) {
  const auto all = ids(job);
  return std::find(all.begin(), all.end(), id) != all.end();
}

struct Case {
  const char* id;
  Grade grade;
  std::function<void(Job&, Wall&)> bringAbout;
};

const std::vector<Case>& cases() {
  static const std::vector<Case> all = {
      {"no-sheets-stated", Grade::Look, [](Job&, Wall& wall) { wall.bands.clear(); }},
      {"no-sheets-stated", Grade::Look, [](Job&, Wall& wall) { wall.bands[0].profile.clear(); }},
      {"band-limits", Grade::Stop, [](Job&, Wall& wall) { wall.bands.push_back(wall.bands[0]); }},
      {"translucent-missing", Grade::Look,
       [](Job&, Wall& wall) {
         wall.bands[0].translucent = {3, 40};
       }},
      {"start-not-followed", Grade::Look, [](Job&, Wall& wall) { wall.start.rule = Start::Rule::SheetOnRidge; }},
      {"reach-too-short", Grade::Look, [](Job&, Wall& wall) { wall.start.rule = Start::Rule::ModuleLine; }},
      {"joint-off-wall", Grade::Look, [](Job&, Wall& wall) { wall.expansionJoints = {Length::feet(41)}; }},
      {"face-left-open", Grade::Stop,
       [](Job& job, Wall&) {
         job.facts.hung = {{"A1", Length::inches(38), "", ""}, {"A2", Length::inches(90), "", ""}};
       }},
      {"hung-sheet-unknown", Grade::Stop,
       [](Job& job, Wall&) {
         job.facts.hung = {{"A99", Length::feet(3), "", ""}};
       }},
      {"opening-column-missing", Grade::Stop,
       [](Job&, Wall& wall) {
         wall.openings = {door(Length())};
         wall.openings[0].place = {Anchor::From::Column, 7, Length(), Anchor::To::NearJamb};
       }},
      {"opening-off-wall", Grade::Stop, [](Job&, Wall& wall) { wall.openings = {door(Length::feet(30, 1))}; }},
      {"opening-above-top", Grade::Look,
       [](Job&, Wall& wall) {
         wall.openings = {door(Length::feet(5))};
         wall.openings[0].height = Length::feet(12, 1);
       }},
      {"openings-overlap", Grade::Stop,
       [](Job&, Wall& wall) {
         wall.openings = {door(Length::feet(5)), door(Length::feet(14))};
         wall.openings[1].id = "D2";
       }},
      // Flush, lip 1-1/2 in: module lines stand at 1-1/2 + 36 k. A jamb's cut 2 in past the line at 109-1/2 in.
      {"seam-near-jamb", Grade::Look,
       [](Job&, Wall& wall) { wall.openings = {door(Length::inches(111, 32) + Length::inches(0, 16))}; }},
      // Ribs at 12 in from the module line: 109-1/2 + 24 = 133-1/2 in.
      {"cut-on-rib", Grade::Look,
       [](Job&, Wall& wall) { wall.openings = {door(Length::inches(133, 32) + Length::inches(0, 16))}; }},
      // The cut stands 2 in before sheet 3's leading metal edge (110-1/4 in): its leg of 2 in reaches past sheet 4's
      // lip at 108.
      {"uncovered-leg", Grade::Look,
       [](Job&, Wall& wall) {
         wall.openings = {door(Length::inches(107, 48) - Length::inches(0, 16) - Length::feet(10))};
       }},
      {"narrow-rip", Grade::Look,
       [](Job& job, Wall& wall) {
         job.settings.cornerTrimLeg = Length::inches(3);
         wall.width = Length::inches(36 * 13 + 4);
       }},
      {"piece-too-long", Grade::Stop,
       [](Job& job, Wall& wall) {
         job.profiles[0].lengths.longest = Length::feet(12);
         wall.endLaps.where = EndLaps::Where::None;
       }},
      {"piece-short", Grade::Note, [](Job& job, Wall&) { job.profiles[0].lengths.shortest = Length::feet(13); }},
      {"piece-heavy", Grade::Look, [](Job& job, Wall&) { job.settings.heaviestPieceKilograms = 5; }},
      {"piece-fragile", Grade::Look,
       [](Job&, Wall& wall) {
         wall.openings = {door(Length::inches(109, 32) - Length::inches(1) - Length::feet(10) - Length::inches(4))};
       }},
      {"no-girts", Grade::Look, [](Job&, Wall& wall) { wall.girts.clear(); }},
      {"span-too-long", Grade::Look, [](Job& job, Wall&) { job.profiles[0].longestSpan = Length::feet(3, 11); }},
      {"sheet-end-unsupported", Grade::Look,
       [](Job&, Wall& wall) {
         wall.bands.push_back(wall.bands[0]);
         wall.bands[1].from = Length::feet(6);
       }},
      {"end-lap-off-girt", Grade::Stop,
       [](Job&, Wall& wall) {
         wall.endLaps.where = EndLaps::Where::AtGirts;
         wall.endLaps.girts = {"g5"};
       }},
      {"sheet-end-near-grade", Grade::Look, [](Job&, Wall& wall) { wall.base.grade = -Length::inches(5); }},
      {"slab-edge-open", Grade::Look, [](Job&, Wall& wall) { wall.base.drop = Length(); }},
      {"wall-not-laid-out", Grade::Stop, [](Job&, Wall& wall) { wall.width.reset(); }},
  };
  return all;
}

}  // namespace

TEST_CASE("of a sound wall nothing is found") {
  const auto found = ids(quiet());
  CHECK(found == std::vector<std::string>{});
}

TEST_CASE("each finding comes about by its own cause, with words for place, reason and remedy") {
  for (const Case& one : cases()) {
    Job job = quiet();
    one.bringAbout(job, job.walls[0]);
    INFO(one.id);
    bool found = false;
    for (const Finding& finding : plan(job).findings) {
      const Words& words = Words::of("en");
      for (const char* part : {".where", ".why", ".do"}) {
        const std::string id = "finding." + finding.id + part;
        REQUIRE(words.knows(id));
        CHECK(words.say(id, finding.said(), {}).find('{') == std::string::npos);
      }
      if (finding.id != one.id) continue;
      found = true;
      CHECK(finding.grade == one.grade);
    }
    CHECK(found);
  }
}

TEST_CASE("a rib under the corner trim is noted") {
  Job job = quiet();
  job.settings.cornerTrimLeg = Length::inches(3);
  CHECK(has(job, "rib-under-corner-trim"));  // the lip's half rib stands on the corner
}

TEST_CASE("a rip along a rib is noted") {
  Job job = quiet();
  job.walls[0].width = Length::inches(1, 32) + Length::inches(36 * 12 + 12);  // on the rib 12 in from the module line
  CHECK(has(job, "rip-on-rib"));
}

TEST_CASE("a hand against the sight point is found") {
  Job job = quiet();
  job.walls[0].width.reset();
  job.walls[0].line = PlanLine{{Length(), Length()}, {Length::feet(40), Length()}};
  job.site.sightPoints = {{"road", {-Length::feet(50), -Length::feet(30)}, 1}};
  job.walls[0].hang = Hang::LeftToRight;
  CHECK(has(job, "hang-against-rule"));
  job.walls[0].hang = Hang::RightToLeft;
  CHECK_FALSE(has(job, "hang-against-rule"));
}

TEST_CASE("of two walls at a corner only one may reach around it") {
  Job job = quiet();
  job.walls[0].width.reset();
  job.building.outline = {{Length(), Length()},
                          {Length::feet(40), Length()},
                          {Length::feet(40), Length::feet(40)},
                          {Length(), Length::feet(40)}};
  job.walls.push_back(job.walls[0]);
  job.walls[1].letter = "B";
  job.walls[0].reachRight = Length::inches(2);
  CHECK_FALSE(has(job, "corner-reached-twice"));
  CHECK(has(job, "wall-not-stated"));  // of four, only A and B are stated
  job.walls[1].reachLeft = Length::inches(2);
  CHECK(has(job, "corner-reached-twice"));
  job.site.sightPoints = {{"yard", {Length::feet(20), Length::feet(20)}, 1}};
  CHECK(has(job, "sight-point-inside"));
}

TEST_CASE("a job without walls says so") { CHECK(has(Job{}, "no-walls")); }

TEST_CASE("a silenced finding is left out by its key, the others stay") {
  Job job = quiet();
  job.walls[0].girts.clear();
  job.walls[0].base.drop = Length();
  job.silenced = {{"no-girts|A|", "drawn on the revised plan"}};
  CHECK_FALSE(has(job, "no-girts"));
  CHECK(has(job, "slab-edge-open"));
}

TEST_CASE("findings of one kind at the two jambs of one opening are silenced one by one") {
  Job job = quiet();
  job.walls[0].openings = {door(Length::inches(111, 32) + Length::inches(0, 16))};
  job.walls[0].openings[0].width = Length::inches(36 * 3 - 5, 32);  // both cut lines a little way inside a seam
  std::vector<std::string> keys;
  for (const Finding& finding : plan(job).findings) {
    if (finding.id == "seam-near-jamb") keys.push_back(finding.key());
  }
  REQUIRE(keys.size() == 2);
  CHECK(keys[0] != keys[1]);
  job.silenced = {{keys[0], "looked at on site"}};
  int left = 0;
  for (const Finding& finding : plan(job).findings) left += finding.id == "seam-near-jamb";
  CHECK(left == 1);
}

TEST_CASE("stops come first") {
  Job job = quiet();
  job.walls[0].girts.clear();
  job.walls[0].openings = {door(Length::feet(35))};
  const Plan made = plan(job);
  CHECK(made.hasStop());
  for (std::size_t i = 1; i < made.findings.size(); ++i) CHECK(made.findings[i - 1].grade <= made.findings[i].grade);
}
