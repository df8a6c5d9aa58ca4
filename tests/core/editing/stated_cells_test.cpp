// Openings, penetrations, girts and bands as tables that are typed into.
#include "core/editing/stated_cells.h"

#include <catch2/catch.hpp>

#include "core/job/by_id.h"
#include "core/job/job_file.h"
#include "tests/core/tape_lengths.h"

using namespace ribwright;

namespace {

using List = StatedList;

// Two windows, a hole, two girts; the sheets start at a jamb of W1.
Job shed() {
  Job job;
  job.name = "shed";
  job.members.resize(1);
  job.members[0].id = "Z8";
  job.members[0].depth = in(8);
  job.members[0].flange = in(3);
  job.members[0].thickness = Length::inches(0, 4);
  job.profiles = {shippedProfiles().front()};
  job.profiles[0].id = "ribbed";
  job.walls.resize(1);
  Wall& wall = job.walls[0];
  wall.letter = "A";
  wall.bands.resize(1);
  wall.width = ft(40);
  wall.columns.bays = {ft(20), ft(20)};
  wall.openings = {{"W1", Opening::Kind::Window, {Anchor::From::LeftCorner, 0, ft(4), {}}, ft(3), ft(4), ft(3), {}, {}},
                   {"W2", Opening::Kind::Window, {Anchor::From::Column, 2, ft(1), {}}, ft(3), ft(4), ft(3), {}, {}}};
  wall.penetrations = {{"P1", Penetration::Shape::Round, {}, ft(5), in(4), in(4)}};
  wall.girts.resize(2);
  wall.girts[0].id = "g1";
  wall.girts[0].height = ft(4);
  wall.girts[0].member = "Z8";
  wall.girts[1].id = "g2";
  wall.girts[1].height = ft(8);
  wall.start.rule = Start::Rule::SeamAtJamb;
  wall.start.opening = "W1";
  wall.endLaps.girts = {"g1"};
  wall.survey.girts = {{"g1", {{ft(1), ft(4), {}, "", ""}}}};
  return job;
}

std::size_t columnOf(List list, std::string_view name) {
  const auto& columns = statedColumns(list);
  for (std::size_t i = 0; i < columns.size(); ++i) {
    if (columns[i].name == name) return i;
  }
  FAIL("no such column");
  return 0;
}

using Typed = std::vector<std::tuple<std::size_t, std::string_view, std::string>>;

EnteredCells enter(const Job& job, List list, const Typed& cells) {
  std::vector<TypedCell> typed;
  for (const auto& [row, column, text] : cells) typed.push_back({row, columnOf(list, column), text});
  return enterCells(job, 0, list, typed);
}

Job made(const Job& job, List list, const Typed& cells) {
  EnteredCells entered = enter(job, list, cells);
  for (const CellFault& fault : entered.faults) FAIL_CHECK(fault.message);
  for (const Fault& fault : faultsOf(entered.job)) FAIL_CHECK(oneLine(fault));
  return entered.job;
}

// "1 width: ..." of each.
std::string faultsIn(const Job& job, List list, const Typed& cells) {
  const EnteredCells entered = enter(job, list, cells);
  CHECK(entered.job == job);
  std::string all;
  for (const CellFault& fault : entered.faults)
    all.append(std::to_string(fault.row))
        .append(" ")
        .append(statedColumns(list)[fault.column].name)
        .append(": ")
        .append(fault.message)
        .append("\n");
  return all;
}

}  // namespace

TEST_CASE("what stands in a table can be typed again and changes nothing") {
  Job job = shed();
  job.walls[0].openings[0].width = Length::nanometres(914'400'001);  // finer than any tape
  job.walls[0].girts[1].from = ft(2);
  for (const List list : {List::Openings, List::Penetrations, List::Girts, List::Bands}) {
    std::vector<TypedCell> all;
    for (std::size_t row = 0; row < statedCount(job.walls[0], list); ++row) {
      for (std::size_t column = 0; column < statedColumns(list).size(); ++column)
        all.push_back({row, column, statedText(job, 0, list, row, column)});
    }
    const EnteredCells entered = enterCells(job, 0, list, all);
    CHECK(entered.faults.empty());
    CHECK(entered.job == job);
  }
}

TEST_CASE("cells are read as lengths and choices of the job") {
  const Job job =
      made(shed(), List::Openings,
           {{0, "width", "2' + 6\""}, {0, "from", "Column 2"}, {0, "kind", "LOUVRE"}, {1, "jamb_trim", "4"}});
  const Opening& first = job.walls[0].openings[0];
  CHECK(first.width == in(30));
  CHECK(first.place.from == Anchor::From::Column);
  CHECK(first.place.column == 2);
  CHECK(first.kind == Opening::Kind::Louvre);
  CHECK(job.walls[0].openings[1].jambTrim == in(4));
  CHECK(made(job, List::Openings, {{1, "jamb_trim", " "}}).walls[0].openings[1].jambTrim == Length());
  CHECK(made(job, List::Girts, {{0, "member", ""}}).walls[0].girts[0].member.empty());
}

TEST_CASE("what cannot be read is told by row and column, and nothing is taken") {
  CHECK(faultsIn(shed(), List::Openings, {{0, "height", "5'"}, {1, "width", "4x"}}).starts_with("1 width: \"4x\""));
  CHECK(faultsIn(shed(), List::Openings, {{0, "width", "0"}}).starts_with("0 width: 0"));
  CHECK(faultsIn(shed(), List::Openings, {{0, "width", ""}}) == "0 width: is blank; it is needed\n");
  CHECK(faultsIn(shed(), List::Openings, {{0, "from", "column 4"}}) ==
        "0 from: \"column 4\" is none of: left corner, right corner, column 1, column 2, column 3\n");
  CHECK(faultsIn(shed(), List::Openings, {{1, "id", "W1"}}).starts_with("1 id: "));
  CHECK(faultsIn(shed(), List::Girts, {{0, "member", "Z9"}}) == "0 member: the job has no member \"Z9\"; it has Z8\n");
  CHECK(faultsIn(shed(), List::Bands, {{0, "profile", "flat"}}) ==
        "0 profile: the job has no profile \"flat\"; it has ribbed\n");
}

TEST_CASE("an opening that is called otherwise stays the one that the start goes by") {
  Job job = shed();
  job.walls[0].bands[0].start = job.walls[0].start;
  job.silenced = {{"cut-on-rib|A|W1|left jamb", "seen"}, {"openings-overlap|A|W1+W2", "seen"}, {"cut-on-rib|B|W1", ""}};
  job = made(job, List::Openings, {{0, "id", "W7"}});
  CHECK(job.walls[0].start.opening == "W7");
  CHECK(job.walls[0].bands[0].start->opening == "W7");
  CHECK(job.silenced[0].key == "cut-on-rib|A|W7|left jamb");
  CHECK(job.silenced[1].key == "openings-overlap|A|W7+W2");
  CHECK(job.silenced[2].key == "cut-on-rib|B|W1");
  // Two that change names with each other.
  job = made(job, List::Openings, {{0, "id", "W2"}, {1, "id", "W7"}});
  CHECK(job.walls[0].start.opening == "W2");
  CHECK(job.silenced[1].key == "openings-overlap|A|W2+W7");
}

TEST_CASE("a girt that is called otherwise keeps its readings and its end lap; names of others' readings are refused") {
  const Job job = made(shed(), List::Girts, {{0, "id", "g9"}});
  CHECK(job.walls[0].survey.girts[0].girt == "g9");
  CHECK(job.walls[0].endLaps.girts[0] == "g9");
  CHECK(faultsIn(shed(), List::Girts, {{1, "id", "eave"}}).find("another edge") != std::string::npos);
  Job orphan = shed();
  orphan.walls[0].survey.girts.push_back({"g5", {{ft(1), ft(4), {}, "", ""}}});
  CHECK(faultsIn(orphan, List::Girts, {{1, "id", "g5"}}).find("readings of a girt \"g5\" that is gone") !=
        std::string::npos);
}

TEST_CASE("a silenced finding's mark that two things share stays as it is") {
  Job job = shed();
  job.walls[0].penetrations[0].id = "W1";
  job.silenced = {{"opening-off-wall|A|W1", "seen"}};
  CHECK(made(job, List::Openings, {{0, "id", "W7"}}).silenced == job.silenced);
}

TEST_CASE("a new row needs place and size, and is numbered") {
  CHECK(faultsIn(shed(), List::Openings, {{2, "kind", "louvre"}, {2, "width", "2'"}}) ==
        "2 distance: is blank; it is needed\n2 height: is blank; it is needed\n");
  const Job job = made(shed(), List::Openings, {{2, "distance", "10'"}, {2, "width", "2'"}, {2, "height", "2'"}});
  CHECK(job.walls[0].openings.at(2).id == "W3");
  CHECK(job.walls[0].openings[2].place == Anchor{Anchor::From::LeftCorner, 0, ft(10), Anchor::To::NearJamb});
  const Job holes = made(shed(), List::Penetrations, {{1, "distance", "9'"}, {1, "centre", "2'"}, {1, "width", "6"}});
  CHECK(holes.walls[0].penetrations.at(1).id == "P2");
  CHECK(holes.walls[0].penetrations[1].height == in(6));
}

TEST_CASE("a new girt is put in by its height, as the one below it where nothing else is typed") {
  const Job job = made(shed(), List::Girts, {{2, "height", "6'"}});
  REQUIRE(job.walls[0].girts.size() == 3);
  CHECK(job.walls[0].girts[1].id == "g3");
  CHECK(job.walls[0].girts[1].height == ft(6));
  CHECK(job.walls[0].girts[1].member == "Z8");
  CHECK(made(shed(), List::Girts, {{2, "height", "6'"}, {2, "member", ""}}).walls[0].girts[1].member == "Z8");
  CHECK(made(shed(), List::Girts, {{2, "height", "6'"}, {2, "typed_by", "top"}}).walls[0].girts[1].typedBy ==
        Girt::TypedBy::Top);
}

TEST_CASE("a new band needs its height and a profile") {
  CHECK(faultsIn(shed(), List::Bands, {{1, "from", "6'"}}) == "1 profile: is blank; it is needed\n");
  Job job = made(shed(), List::Bands, {{1, "from", "6'"}, {1, "profile", "ribbed"}});
  job = made(job, List::Bands, {{2, "from", "3'"}, {2, "profile", "ribbed"}});
  REQUIRE(job.walls[0].bands.size() == 3);
  CHECK(job.walls[0].bands[1].from == ft(3));
  CHECK(job.walls[0].bands[2].from == ft(6));
}

TEST_CASE("a round hole has one diameter, a rectangular one two sides") {
  const Job job = made(shed(), List::Penetrations, {{0, "height", "6"}});
  CHECK(job.walls[0].penetrations[0].width == in(6));
  const Job square = made(shed(), List::Penetrations, {{0, "height", "6"}, {0, "shape", "rectangular"}});
  CHECK(square.walls[0].penetrations[0].width == in(4));
  CHECK(faultsIn(square, List::Penetrations, {{0, "shape", "round"}}).find("diameter of a round one") !=
        std::string::npos);
}

TEST_CASE("rows are taken out together; the last band is kept") {
  const auto none = withoutRows(shed(), 0, List::Openings, {0, 1});
  REQUIRE(none);
  CHECK(none.value().walls[0].openings.empty());
  const auto girts = withoutRows(shed(), 0, List::Girts, {0});
  REQUIRE(girts);
  CHECK(girts.value().walls[0].girts[0].id == "g2");
  CHECK(!withoutRows(shed(), 0, List::Bands, {0}).ok());
}
