// The opening schedule as a table, out and in.
#include "core/output/opening_table.h"

#include <catch2/catch.hpp>
#include <filesystem>

#include "core/job/job_file.h"
#include "tests/core/fastening/measured_walls.h"

using namespace ribwright;
using namespace ribwright::examples;

namespace {

Length inch(std::int64_t inches, std::int64_t sixteenths = 0) { return Length::inches(inches, 4 * sixteenths); }

Opening window(const std::string& id, const Anchor& place) {
  Opening opening;
  opening.id = id;
  opening.place = place;
  opening.width = inch(36);
  opening.height = inch(48);
  opening.sill = inch(36);
  return opening;
}

Job wallWithOpenings() {
  Job job = levelWall({girt("g1", inch(44)), girt("g2", inch(88))});
  Wall& of = job.walls[0];
  of.columns.bays = {inch(72), inch(72)};
  of.openings = {window("W1", {Anchor::From::Column, 2, -inch(10), Anchor::To::Centre}),
                 window("Tür, \"groß\"", {Anchor::From::RightCorner, 0, inch(4), Anchor::To::NearJamb})};
  Opening& first = of.openings[0];
  first.kind = Opening::Kind::WalkDoor;
  first.clearances = {inch(0, 8), {}, inch(1)};
  first.jambTrim = inch(4);
  first.frame = {inch(3), inch(0, 3), ""};
  return job;
}

Job withoutOpenings(Job job) {
  for (Wall& each : job.walls) each.openings.clear();
  return job;
}

std::string faultsOfTable(const Job& job, const std::string& csv) {
  const auto read = withOpeningsOf(job, csv);
  if (read) return "none";
  std::string all;
  for (const Fault& fault : read.faults()) all += oneLine(fault) + "\n";
  return all;
}

using Names = std::vector<std::string>;

}  // namespace

TEST_CASE("a schedule written as a table reads back the same, in inches and in millimetres") {
  for (const UnitSystem units : {UnitSystem::FeetInches, UnitSystem::Millimetres}) {
    const std::string csv = csvText(openingTable(wallWithOpenings(), units), units == UnitSystem::Millimetres);
    const auto read = withOpeningsOf(withoutOpenings(wallWithOpenings()), csv);
    REQUIRE(read);
    CHECK(read.value().job == wallWithOpenings());
    CHECK(read.value().added == Names{"A/W1", "A/Tür, \"groß\""});
    const auto again = withOpeningsOf(wallWithOpenings(), csv);
    REQUIRE(again);
    CHECK(again.value().job == wallWithOpenings());
    CHECK(again.value().alike == 2);
    CHECK(again.value().changed.empty());
  }
  CHECK(openingTable(wallWithOpenings(), UnitSystem::FeetInches).rows[0] ==
        Names{"A", "W1", "walk door", "column", "2", "-10", "centre", "36", "48", "36", "4", "0.5", "", "1", "3",
              "0.1875", ""});
}

TEST_CASE("the schedule of every sample reads back the same") {
  int openings = 0;
  for (const auto& file : std::filesystem::directory_iterator(RIBWRIGHT_ROOT "/sample-jobs")) {
    if (file.path().extension() != ".json") continue;
    const auto job = loadJob(file.path().string());
    REQUIRE(job);
    const Table table = openingTable(job.value(), job.value().units);
    const auto read = withOpeningsOf(withoutOpenings(job.value()), csvText(table, false));
    REQUIRE(read);
    CHECK(read.value().job == job.value());
    openings += static_cast<int>(table.rows.size());
  }
  CHECK(openings > 5);
}

TEST_CASE("openings that the table names are changed, others are added, none is taken away") {
  const auto read =
      withOpeningsOf(wallWithOpenings(), "wall,id,width_in,height_in,distance_in\nA,W1,40,48,-10\nA,W9,24,24,8\n");
  REQUIRE(read);
  const auto& openings = read.value().job.walls[0].openings;
  REQUIRE(openings.size() == 3);
  CHECK(openings[0].width == inch(40));
  CHECK(openings[0].jambTrim == inch(4));  // no column, as it was
  CHECK(openings[1] == wallWithOpenings().walls[0].openings[1]);
  CHECK(openings[2].id == "W9");
  CHECK(openings[2].place.distance == inch(8));
  CHECK(read.value().changed == Names{"A/W1"});
  CHECK(read.value().added == Names{"A/W9"});
}

TEST_CASE("what is blank in its column is not stated") {
  const auto read = withOpeningsOf(wallWithOpenings(), "wall,id,jamb_trim_in,jamb_clearance_in,sill_in\nA,W1,,,\n");
  REQUIRE(read);
  const Opening& first = read.value().job.walls[0].openings[0];
  CHECK(first.jambTrim == Length());
  CHECK(!first.clearances.jamb);
  CHECK(first.clearances.sill);
  CHECK(first.sill == Length());
}

TEST_CASE(
    "a schedule as spreadsheets write it: byte-order mark, semicolons and commas, CRLF, lengths as the tape reads") {
  const auto read = withOpeningsOf(withoutOpenings(wallWithOpenings()),
                                   "\xEF\xBB\xBFnote;height_mm;width_mm;distance_mm;id;wall;From;from;column\r\n"
                                   "\"said \"\"twice\"\"\";1219,2;\"36-1/2\"\"\";-254; W1 ;A;x;Column;2\r\n\r\n"
                                   ";1000;900;100;W2;A;;Right Corner;\r\n");
  REQUIRE(read);
  const auto& openings = read.value().job.walls[0].openings;
  REQUIRE(openings.size() == 2);
  CHECK(openings[0].id == "W1");
  CHECK(openings[0].height == inch(48));
  CHECK(openings[0].width == inch(36, 8));
  CHECK(openings[0].place == Anchor{Anchor::From::Column, 2, -inch(10), Anchor::To::NearJamb});
  CHECK(openings[1].place.from == Anchor::From::RightCorner);
}

TEST_CASE("what is wrong with a schedule is named by line and column, and nothing is taken") {
  const std::string head = "wall,id,kind,from,column,distance_in,width_in,height_in,frame_member\n";
  const Job job = wallWithOpenings();
  CHECK(faultsOfTable(job, "") == "line 1: no columns are named; the first line names them\n");
  CHECK(faultsOfTable(job, "wall,width_in\n") == "line 1: no column is called id\n");
  CHECK(faultsOfTable(job, "wall,id,width_in\nA,W7,36\n") ==
        "line 2, id: is a new opening, which needs a column distance\n"
        "line 2, id: is a new opening, which needs a column height\n");
  CHECK(faultsOfTable(job, head + "B,W1,window,left corner,,0,36,48,\n") ==
        "line 2, wall: the job has no wall \"B\"\n");
  CHECK(faultsOfTable(job, head + "A,,window,left corner,,0,36,48,\n").starts_with("line 2, id: is blank"));
  CHECK(faultsOfTable(job, head + "A,W1,hatch,left corner,,0,36,48,\n")
            .starts_with("line 2, kind: \"hatch\" is none of: walk door,"));
  CHECK(faultsOfTable(job, head + "A,W1,window,column,9,0,36,48,\n").starts_with("line 2, from: \"column 9\""));
  CHECK(faultsOfTable(job, head + "A,W1,window,column,,0,36,48,\n").starts_with("line 2, from: "));
  CHECK(faultsOfTable(job, head + "A,W1,window,left corner,,0,3x6,48,\n").starts_with("line 2, width_in: \"3x6\""));
  CHECK(faultsOfTable(job, head + "A,W1,window,left corner,,0,-36,48,\n").starts_with("line 2, width_in: "));
  CHECK(faultsOfTable(job, head + "A,W1,window,left corner,,0,36,,\n") ==
        "line 2, height_in: is blank; it is needed\n");
  CHECK(faultsOfTable(job, head + "A,W5,window,left corner,,0,36,48,Z9\n")
            .starts_with("line 2, frame_member: the job has no member \"Z9\""));
  CHECK(faultsOfTable(job, head + "A,W1,window,left corner,,0,36,48,\n\nA,W1,window,left corner,,0,36,48,\n") ==
        "line 4, id: opening \"W1\" of wall A stands in the table twice\n");
  CHECK(faultsOfTable(job, head + "A,W5,window,left corner,,0,0,48,\n").starts_with("line 2, width_in: 0"));
}

TEST_CASE("hostile text comes back as it went out, or is refused") {
  Job job = wallWithOpenings();
  for (const char* id : {"=1+1", "a;b", "\"", "x\ty", "W1\"\"", "'"}) {
    job.walls[0].openings[1].id = id;
    const auto read = withOpeningsOf(withoutOpenings(job), csvText(openingTable(job, job.units), true));
    if (faultsOf(job).empty()) {
      REQUIRE(read);
      CHECK(read.value().job == job);
    } else {
      CHECK(!read.ok());
    }
  }
  CHECK(!withOpeningsOf(wallWithOpenings(), std::string("wall,id\nA,\xff\xfe\n")).ok());
  CHECK(!withOpeningsOf(wallWithOpenings(), std::string("wall,id,distance_in,width_in,height_in\nA,\xff\xfe,1,1,1\n"))
             .ok());
}
