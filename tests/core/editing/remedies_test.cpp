// What is offered about a finding: each mends what it is offered for, and stops nothing.
#include "core/editing/remedies.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <set>

#include "core/job/job_file.h"
#include "tests/core/checks/screwed_walls.h"
#include "tests/core/tape_lengths.h"

using namespace ribwright;
using namespace ribwright::examples;

namespace {

// 40 ft by 40 ft.
std::vector<PlanPoint> square() {
  const Length side = Length::feet(40);
  return {{Length(), Length()}, {side, Length()}, {side, side}, {Length(), side}};
}

Opening door(Length left) {
  Opening made;
  made.id = "DX";
  made.kind = Opening::Kind::OverheadDoor;
  made.place.distance = left;
  made.width = made.height = Length::feet(10);
  return made;
}

struct Case {
  const char* finding;
  std::vector<std::string> offered;  // ids of their names, those at least
  std::function<void(Job&, Wall&)> bringAbout;
};

void addWall(Job& job, const std::string& letter) {
  job.walls.push_back(job.walls[0]);
  job.walls.back().letter = letter;
}

const std::vector<Case>& casesOfRemedies() {
  static const std::vector<Case> all = {
      {"no-sheets-stated",
       {"offer.profile", "offer.by-others", "offer.open"},
       [](Job&, Wall& wall) { wall.bands[0].profile.clear(); }},
      {"band-limits",
       {"offer.band-order"},
       [](Job&, Wall& wall) {
         wall.bands.resize(3, wall.bands[0]);
         wall.bands[1].from = Length::feet(8);
         wall.bands[2].from = Length::feet(4);
       }},
      {"band-limits", {"offer.no-band"}, [](Job&, Wall& wall) { wall.bands.push_back(wall.bands[0]); }},
      {"translucent-missing",
       {"offer.not-translucent"},
       [](Job&, Wall& wall) {
         wall.bands[0].translucent = {3, 40};
       }},
      {"start-not-followed", {"offer.flush"}, [](Job&, Wall& wall) { wall.start.rule = Start::Rule::SheetOnRidge; }},
      {"reach-too-short",
       {"offer.reach", "offer.flush"},
       [](Job&, Wall& wall) { wall.start.rule = Start::Rule::ModuleLine; }},
      {"joint-off-wall", {"offer.no-joint"}, [](Job&, Wall& wall) { wall.expansionJoints = {Length::feet(41)}; }},
      {"hung-sheet-unknown",
       {"offer.not-hung"},
       [](Job& job, Wall&) {
         job.facts.hung = {{"A99", Length::feet(3), "", ""}};
       }},
      {"opening-column-missing",
       {"offer.column"},
       [](Job&, Wall& wall) {
         wall.columns.bays = {Length::feet(20), Length::feet(20)};
         wall.openings = {door(Length())};
         wall.openings[0].place = {Anchor::From::Column, 7, Length(), Anchor::To::NearJamb};
       }},
      {"opening-off-wall",
       {"offer.opening-left"},
       [](Job&, Wall& wall) { wall.openings = {door(Length::feet(30, 1))}; }},
      {"opening-off-wall",
       {"offer.opening-right"},
       [](Job&, Wall& wall) {
         wall.penetrations = {{"P1", Penetration::Shape::Round, {}, Length::feet(5), in(4), in(4)}};
         wall.penetrations[0].place.distance = -in(3);
       }},
      {"openings-overlap",
       {"offer.opening-right", "offer.opening-left"},
       [](Job&, Wall& wall) {
         wall.openings = {door(Length::feet(5)), door(Length::feet(14))};
         wall.openings[1].id = "DY";
       }},
      {"opening-id-like-mark",
       {"offer.rename"},
       [](Job&, Wall& wall) {
         wall.openings = {door(Length::feet(5)), door(Length::feet(20))};
         wall.openings[0].id = "A3";
         wall.openings[1].id = "A4.1";
       }},
      {"seam-near-jamb",
       {"offer.start-left", "offer.seam-left-jamb"},
       [](Job&, Wall& wall) { wall.openings = {door(in(112))}; }},
      {"cut-on-rib", {"offer.start-right"}, [](Job&, Wall& wall) { wall.openings = {door(in(133, 12))}; }},
      {"uncovered-leg",
       {"offer.start-right", "offer.seam-right-jamb"},
       [](Job&, Wall& wall) { wall.openings = {door(in(107, 8) - Length::feet(10))}; }},
      {"narrow-rip",
       {"offer.equal-rips"},
       [](Job& job, Wall& wall) {
         job.settings.cornerTrimLeg = in(3);
         wall.width = in(36 * 13 + 4);
       }},
      {"piece-too-long",
       {"offer.lap-where-needed", "offer.lap-at-girt"},
       [](Job& job, Wall& wall) {
         job.profiles[0].lengths.longest = Length::feet(12);
         wall.endLaps.where = EndLaps::Where::None;
       }},
      {"piece-heavy", {"offer.lap-at-girt"}, [](Job& job, Wall&) { job.settings.heaviestPieceKilograms = 14; }},
      {"no-girts",
       {"offer.girts-of-wall"},
       [](Job& job, Wall&) {
         addWall(job, "E");
         job.walls[0].girts.clear();
       }},
      {"span-too-long", {"offer.girt"}, [](Job& job, Wall&) { job.profiles[0].longestSpan = Length::feet(3, 11); }},
      {"rows-too-far-apart",
       {"offer.girts"},
       [](Job& job, Wall& wall) {
         job.patterns[0].limits = ScrewPattern::Limits::Branz146;
         wall.girts.erase(wall.girts.begin());
       }},
      {"no-row-between",
       {"offer.girt"},
       [](Job& job, Wall& wall) {
         job.patterns[0].limits = ScrewPattern::Limits::Branz146;
         wall.top[0].z = wall.top[1].z = Length::millimetres(1100);
         wall.girts.clear();
         wall.survey = {};
       }},
      {"sheet-end-unsupported",
       {"offer.limit", "offer.girt"},
       [](Job&, Wall& wall) {
         wall.bands.push_back(wall.bands[0]);
         wall.bands[1].from = Length::feet(6);
       }},
      {"end-lap-off-girt",
       {"offer.no-lap-at-girt"},
       [](Job&, Wall& wall) {
         wall.endLaps.where = EndLaps::Where::AtGirts;
         wall.endLaps.girts = {"g5"};
       }},
      {"girt-face-unknown", {"offer.member"}, [](Job&, Wall& wall) { wall.girts[0].member.clear(); }},
      {"sheet-end-near-grade", {"offer.drop"}, [](Job&, Wall& wall) { wall.base.grade = -in(5); }},
      {"slab-edge-open", {"offer.drop"}, [](Job&, Wall& wall) { wall.base.drop = Length(); }},
      {"slab-edge-open",
       {"offer.drop"},
       [](Job&, Wall& wall) {
         wall.survey.slab = {{Length(), Length()}, {Length::feet(40), -in(3)}};
       }},
      {"chalk-off-sheets", {"offer.drop", "offer.no-chalk"}, [](Job&, Wall& wall) { wall.survey.chalkLine = -in(2); }},
      {"survey-girt-unknown",
       {"offer.no-readings"},
       [](Job&, Wall& wall) {
         wall.survey.girts.push_back({"g99", wall.survey.girts[0].readings});
       }},
      {"no-pattern", {"offer.pattern"}, [](Job&, Wall& wall) { wall.pattern.clear(); }},
      {"pattern-of-other-profile",
       {"offer.pattern"},
       [](Job& job, Wall& wall) {
         job.patterns.push_back(job.patterns[0]);
         job.patterns[1].id = "other";
         job.profiles.push_back(job.profiles[0]);
         job.profiles[1].id = "flat-9";
         job.patterns[1].profile = "flat-9";
         wall.pattern = "other";
       }},
      {"corner-reached-twice",
       {"offer.no-reach"},
       [](Job& job, Wall& wall) {
         wall.width.reset();
         wall.reachRight = in(2);
         job.building.outline = square();
         addWall(job, "B");
         job.walls[1].reachLeft = in(2);
         job.walls[1].reachRight = Length();
       }},
      {"wall-not-stated",
       {"offer.by-others", "offer.open"},
       [](Job& job, Wall& wall) {
         job.building.roof.kind = Roof::Kind::Level;
         job.building.roof.eave = Length::feet(12);
         wall.width.reset();
         job.building.outline = square();
       }},
      {"sight-point-inside",
       {"offer.no-sight"},
       [](Job& job, Wall& wall) {
         wall.width.reset();
         job.building.outline = square();
         job.site.sightPoints = {{"road", {Length::feet(20), Length::feet(20)}, 1}};
       }},
      {"hang-against-rule",
       {"offer.by-rule"},
       [](Job& job, Wall& wall) {
         wall.width.reset();
         job.building.outline = square();
         job.site.sightPoints = {{"road", {-Length::feet(60), -Length::feet(60)}, 1}};
         wall.hang = Hang::LeftToRight;
       }},
  };
  return all;
}

Job made(const Case& each) {
  Job job = quietWall();
  each.bringAbout(job, job.walls[0]);
  confirm(job);
  return job;
}

std::set<std::string> keysOf(const Plan& plan, bool stopsAlone) {
  std::set<std::string> keys;
  for (const Finding& finding : plan.findings) {
    if (!stopsAlone || finding.grade == Grade::Stop) keys.insert(finding.key());
  }
  return keys;
}

int missing(const std::set<std::string>& those, const std::set<std::string>& from) {
  return int(std::count_if(those.begin(), those.end(), [&](const std::string& key) { return !from.contains(key); }));
}

}  // namespace

TEST_CASE("what is offered mends its finding and stops nothing, and the job can be saved with it") {
  for (const Case& each : casesOfRemedies()) {
    INFO(each.finding);
    const Job job = made(each);
    const Plan before = plan(job);
    std::set<std::string> names;
    int found = 0;
    for (const Finding& finding : before.findings) {
      if (finding.id != each.finding) continue;
      ++found;
      for (const OfferedRemedy& offered : remediesFor(job, before, finding)) {
        INFO(finding.key() << ": " << offered.name.id);
        CHECK(Words::of("en").knows(offered.name.id));
        CHECK(Words::of("en").say(offered.name, {}).find('{') == std::string::npos);
        names.insert(offered.name.id);
        const auto edited = offered.edit(job);
        REQUIRE(edited);
        for (const Fault& fault : faultsOf(edited.value())) FAIL_CHECK(oneLine(fault));
        const Plan after = plan(edited.value());
        const auto was = keysOf(before, false), is = keysOf(after, false);
        CHECK(offered.othersGone == missing(was, is) - 1);
        CHECK(offered.othersCome == missing(is, was));
        CHECK(!keysOf(after, false).contains(finding.key()));
        for (const std::string& stop : keysOf(after, true)) CHECK(keysOf(before, true).contains(stop));
      }
    }
    std::string all;
    for (const std::string& name : names) all.append(" ").append(name);
    INFO("offered:" << all);
    CHECK(found > 0);
    for (const std::string& name : each.offered) {
      INFO(name);
      CHECK(names.contains(name));
    }
  }
}

TEST_CASE("what only the plans, the engineer or the site can know is not offered") {
  const auto none = [](const char* id, const std::function<void(Job&, Wall&)>& bringAbout) {
    const Job job = made({id, {}, bringAbout});
    const Plan before = plan(job);
    bool found = false;
    for (const Finding& finding : before.findings) {
      if (finding.id != id) continue;
      found = true;
      CHECK(remediesFor(job, before, finding).empty());
    }
    INFO(id);
    CHECK(found);
  };
  none("opening-above-top", [](Job&, Wall& wall) {
    wall.openings = {door(Length::feet(5))};
    wall.openings[0].height = Length::feet(12, 1);
  });
  none("survey-missing", [](Job&, Wall& wall) { wall.survey.girts.clear(); });
  none("no-girts", [](Job&, Wall& wall) { wall.girts.clear(); });  // no other wall has any either
  none("piece-short", [](Job& job, Wall&) { job.profiles[0].lengths.shortest = Length::feet(13); });
}

TEST_CASE("a start is moved no farther than it has to be") {
  const Job job = made({"", {}, [](Job&, Wall& wall) { wall.openings = {door(in(112))}; }});
  const Plan before = plan(job);
  for (const Finding& finding : before.findings) {
    if (finding.id != "seam-near-jamb") continue;
    const auto offered = remediesFor(job, before, finding);
    const auto least = std::find_if(offered.begin(), offered.end(),
                                    [](const OfferedRemedy& each) { return each.name.id == "offer.start-left"; });
    REQUIRE(least != offered.end());
    const Length gap = std::get<Length>(finding.values[0].second), limit = std::get<Length>(finding.values[2].second);
    CHECK(std::get<Length>(least->name.values[0].second) == limit - gap);
  }
}

TEST_CASE("the remedy that leaves the fewest other findings is offered first") {
  const Job job = made({"", {}, [](Job&, Wall& wall) { wall.openings = {door(in(112))}; }});
  const Plan before = plan(job);
  int several = 0;
  for (const Finding& finding : before.findings) {
    const auto offered = remediesFor(job, before, finding);
    several += offered.size() > 1;
    CHECK(std::is_sorted(offered.begin(), offered.end(), [](const OfferedRemedy& a, const OfferedRemedy& b) {
      return a.othersCome - a.othersGone < b.othersCome - b.othersGone;
    }));
  }
  CHECK(several > 0);
}

TEST_CASE("what was offered can be done to a newer job too") {
  const Job job = made({"", {}, [](Job&, Wall& wall) { wall.openings = {door(in(112))}; }});
  const Plan before = plan(job);
  Job newer = job;
  newer.name = "renamed meanwhile";
  newer.walls[0].name = "front";
  for (const Finding& finding : before.findings) {
    for (const OfferedRemedy& offered : remediesFor(job, before, finding)) {
      const auto edited = offered.edit(newer);
      REQUIRE(edited);
      CHECK(edited.value().name == "renamed meanwhile");
      CHECK(edited.value().walls[0].name == "front");
    }
  }
}
