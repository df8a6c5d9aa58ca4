// Rules applied: which hold where, what length comes of them, in which order pieces are set.
#include <catch2/catch.hpp>

#include <set>

#include "core/takeoff/trim_rules.h"
#include "trimmed_by_hand.h"

namespace ribwright {
namespace {

using Ids = std::vector<std::string>;
using Laps = TrimRule::Laps;
using Of = TrimRule::Of;

Job withOpening(Kind kind = Kind::Window) {
  Job job = workshop();
  job.walls[0].openings = {openingOf("W1", kind, feet(10), feet(4), feet(3), feet(3, 6))};
  return job;
}

TrimRule rule(const std::string& id, Where where, Of of, const std::string& trim) {
  TrimRule made;
  made.id = id;
  made.where = where;
  made.of = of;
  made.trim = trim;
  return made;
}

// Common practice
TEST_CASE("A window head is 2 in longer than a flush window is wide, a lip of 1 in at each end") {
  const Trimmed trimmed(withOpening());
  CHECK(trimmed.length("W1 head") == feet(4, 2));
  CHECK(trimmed.piece("W1 head").lip == inch(1));
  CHECK(trimmed.length("W1 sill") == feet(4));
  CHECK(trimmed.length("W1 jamb left") == feet(3));
}

// Common practice: jambs lap over the sill, the head over the jambs
TEST_CASE("Sill, jambs and head are set in this order, so that water runs out") {
  CHECK(Trimmed(withOpening()).ids("W1") == Ids{"W1 sill", "W1 jamb left", "W1 jamb right", "W1 head"});
}

TEST_CASE("Covers are set before the trim that laps them") {
  Job job = workshop();
  job.walls[0].openings = {openingOf("D1", Kind::OverheadDoor, feet(20), feet(10), feet(9), Length())};
  CHECK(Trimmed(job).ids("D1") == Ids{"D1 jamb cover left", "D1 jamb cover right", "D1 header cover", "D1 jamb left",
                                      "D1 jamb right", "D1 head"});
}

TEST_CASE("A head that is stated to lie under is set before the jambs that butt or lap it") {
  for (const Laps jambs : {Laps::Butts, Laps::Over}) {
    Job job = withOpening();
    for (TrimRule& one : job.trimRules) {
      if (one.where == Where::Head) one.laps = Laps::Under;
      if (one.where == Where::Jamb) one.laps = jambs;
    }
    const Ids ids = Trimmed(job).ids("W1");
    CHECK(ids.back() == "W1 jamb right");
  }
}

TEST_CASE("Where two rules contradict each other the upper lies over the lower") {
  Job job = withOpening();
  for (TrimRule& one : job.trimRules) one.laps = Laps::Under;
  CHECK(Trimmed(job).ids("W1") == Ids{"W1 sill", "W1 jamb left", "W1 jamb right", "W1 head"});
}

TEST_CASE("The narrowest rule holds: windows before all but doors before any opening") {
  Job job = withOpening();
  job.trimRules = {rule("any", Where::Head, Of::AnyOpening, "head-3x1.5x1")};
  CHECK(Trimmed(job).piece("W1 head").rule == "any");
  job.trimRules.push_back(rule("not doors", Where::Head, Of::NotDoors, "head-3x1.5x1"));
  CHECK(Trimmed(job).piece("W1 head").rule == "not doors");
  job.trimRules.insert(job.trimRules.begin(), rule("windows", Where::Head, Of::Windows, "head-3x1.5x1"));
  job.trimRules.push_back(rule("louvres", Where::Head, Of::Louvres, "head-3x1.5x1"));
  const Trimmed trimmed(job);
  CHECK(trimmed.piece("W1 head").rule == "windows");
  CHECK(trimmed.ids("W1") == Ids{"W1 head"});
}

TEST_CASE("Rules speak of the kinds they name") {
  const std::vector<std::pair<Of, std::string>> table = {
      {Of::AnyOpening, "111111"}, {Of::Doors, "111000"},         {Of::NotDoors, "000111"},
      {Of::WalkDoors, "100000"},  {Of::OverheadDoors, "010000"}, {Of::SlidingDoors, "001000"},
      {Of::Windows, "000100"},    {Of::Louvres, "000010"},       {Of::Framed, "000001"}};
  for (const auto& [of, kinds] : table) {
    std::string spoken;
    for (int kind = 0; kind < 6; ++kind) spoken += speaksOf(of, static_cast<Kind>(kind)) ? '1' : '0';
    CHECK(spoken == kinds);
  }
}

TEST_CASE("Two equally narrow rules both hold, each a piece of its own name") {
  Job job = withOpening();
  job.trimRules = {rule("drip", Where::Head, Of::Windows, "head-3x1.5x1"),
                   rule("cap", Where::Head, Of::Windows, "cover-8x1")};
  const Trimmed trimmed(job);
  CHECK(trimmed.ids("W1") == Ids{"W1 head", "W1 head (2)"});
  CHECK(trimmed.piece("W1 head (2)").trim == "cover-8x1");
}

TEST_CASE("Length = size x times / parts + allowance, half to even to the nanometre") {
  Job job = withOpening();
  TrimRule third = rule("third", Where::Sill, Of::AnyOpening, "sill-3x1.5x1");
  third.times = 2;
  third.parts = 3;
  third.allowance = -inch(1);
  job.trimRules = {third};
  CHECK(Trimmed(job).length("W1 sill") == feet(2, 7));
  job.walls[0].openings[0].width = feet(4) + Length::nanometres(1);  // 2/3 nm rounds up
  CHECK(Trimmed(job).length("W1 sill") == feet(2, 7) + Length::nanometres(1));
  job.trimRules[0].times = 1;
  job.trimRules[0].parts = 2;  // 1/2 nm: to the even one
  CHECK(Trimmed(job).length("W1 sill").nanometres() % 2 == 0);
}

TEST_CASE("A rule that leaves nothing beyond the lips, or names no trim, gives a miss and no piece") {
  Job job = withOpening();
  TrimRule tiny = rule("tiny", Where::Sill, Of::AnyOpening, "sill-3x1.5x1");
  tiny.allowance = -feet(3, 10);
  tiny.lip = inch(1);
  job.trimRules = {tiny, rule("open", Where::Head, Of::AnyOpening, "")};
  const TrimTakeoff takeoff = Trimmed(job).takeoff();
  CHECK(takeoff.pieces.empty());
  std::set<TrimMiss::Why> why;
  for (const TrimMiss& miss : takeoff.misses) {
    if (miss.place.opening == "W1") why.insert(miss.why);
    if (miss.rule == "tiny") CHECK(miss.length == inch(2));
  }
  CHECK(why == std::set<TrimMiss::Why>{TrimMiss::Why::NoRule, TrimMiss::Why::NoTrim, TrimMiss::Why::NoLength});
}

TEST_CASE("A place that no rule speaks of is missed; covers at overhead doors alone; without any rule nothing is") {
  Job job = withOpening();
  CHECK(Trimmed(job).takeoff().misses.empty());
  std::erase_if(job.trimRules,
                [](const TrimRule& one) { return one.where == Where::Head || one.where == Where::HeaderCover; });
  REQUIRE(Trimmed(job).takeoff().misses.size() == 1);
  CHECK(Trimmed(job).takeoff().misses[0].place.where == Where::Head);
  job.walls[0].openings[0].kind = Kind::OverheadDoor;
  CHECK(Trimmed(job).takeoff().misses.size() == 2);
  job.trimRules.clear();
  const TrimTakeoff bare = Trimmed(job).takeoff();
  CHECK(bare.pieces.empty());
  CHECK(bare.misses.empty());
}

TEST_CASE("A piece has its rule's colour, or its trim's") {
  Job job = withOpening();
  for (TrimRule& one : job.trimRules) {
    if (one.where == Where::Head) one.colour = "red";
  }
  const Trimmed trimmed(job);
  CHECK(trimmed.piece("W1 head").colour == "red");
  CHECK(trimmed.piece("W1 sill").colour == "white");
}

TEST_CASE("Openings of one name on two walls are told apart by their walls") {
  Job job = withOpening();
  job.walls[2].openings = job.walls[0].openings;
  const Trimmed trimmed(job);
  CHECK(trimmed.ids("W1").empty());
  CHECK(trimmed.piece("A W1 head").place.wall == "A");
  CHECK(trimmed.piece("C W1 head").place.wall == "C");
}

TEST_CASE("Whatever openings are called, no two pieces are called alike") {
  Job job = withOpening();
  job.walls[2].openings = job.walls[0].openings;
  job.walls[2].openings.push_back(openingOf("A W1", Kind::Window, feet(20), feet(4), feet(3), feet(3)));
  std::set<std::string> ids;
  const Trimmed trimmed(job);
  for (const TrimPiece& piece : trimmed.takeoff().pieces) CHECK(ids.insert(piece.id).second);
}

TEST_CASE("A wall is trimmed from its base up, openings as its sheets hang, corners of the building last") {
  Job job = withOpening();
  job.walls[0].openings.push_back(openingOf("D1", Kind::WalkDoor, feet(30), feet(3), feet(7), Length()));
  job.walls[0].base.form = Base::Form::BaseTrim;
  job.walls[0].bands.push_back(band("red"));
  job.walls[0].bands[1].from = feet(8);
  Ids onward;
  for (const Hand hand : {Hand::LeftToRight, Hand::RightToLeft}) {
    job.walls[0].hang = hand == Hand::LeftToRight ? Hang::LeftToRight : Hang::RightToLeft;
    const Trimmed trimmed(job);
    const bool right = hand == Hand::LeftToRight;
    Ids expected{right ? "A base 1" : "A base 2", right ? "A base 2" : "A base 1"};
    const Ids window{"W1 sill", "W1 jamb left", "W1 jamb right", "W1 head"},
        door{"D1 jamb left", "D1 jamb right", "D1 head"};
    for (const Ids* one : right ? std::vector{&window, &door} : std::vector{&door, &window})
      expected.insert(expected.end(), one->begin(), one->end());
    expected.insert(expected.end(), {"A transition", "A eave", "B rake 1", "B rake 2", "C eave", "D rake 1", "D rake 2",
                                     "AB corner", "BC corner", "CD corner", "DA corner"});
    CHECK(trimmed.ids("") == expected);
  }
}

}  // namespace
}  // namespace ribwright
