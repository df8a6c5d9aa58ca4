// Sharing by hand: on the frozen gable end, and on small walls.
#include "core/cutting/share_blanks.h"

#include <catch2/catch.hpp>

#include "core/cutting/blank_cuts.h"
#include "core/plan/plan.h"
#include "tests/core/layout/example_walls.h"

using namespace ribwright;
using Way = Blank::Way;

namespace {

Length in(std::int64_t whole, std::int64_t sixtyFourths = 0) { return Length::inches(whole, sixtyFourths); }

// Laps the same way when it is turned.
void makeTurnable(Job& job) {
  Profile& profile = job.profiles.front();
  profile.section = {{-profile.over, Length()}, {profile.cover + profile.under, Length()}};
}

Job sharing(Job job) {
  job.settings.sharing.reach = Sharing::Reach::On;
  return job;
}

// "A1+A2 rake 316.5" ...: marks with < where turned, the way, what must be bought in whole and half inches.
std::vector<std::string> told(const Job& job) {
  const Plan planned = plan(job);
  std::vector<std::string> all;
  for (const Blank& blank : shareBlanks(job, planned.layouts())) {
    std::string line;
    for (const BlankPart& part : blank.parts) {
      if (!line.empty()) line += "+";
      line += planned.walls[std::size_t(part.piece.wall)]->layout.pieces[std::size_t(part.piece.piece)].mark;
      if (part.turned) line += "<";
    }
    static const char* const ways[] = {" alone ", " rake ", " rip ", " drop ", " gang "};
    line += ways[int(blank.way)];
    const auto halves = wholeTimes(roundUp(blank.length, in(0, 32)), in(0, 32));
    all.push_back(line + std::to_string(halves / 2) + (halves % 2 ? ".5" : ""));
  }
  return all;
}

// The frozen gable and a second one beside it, hung the other way, with the same statements.
Job twoGables() {
  Job job = sharing(examples::gable40());
  Wall other = job.walls.front();
  other.letter = "B";
  other.hang = Hang::RightToLeft;
  job.walls.push_back(other);
  return job;
}

}  // namespace

// The gable end of 40 ft, eave 12 ft, 4:12, sheets of 36 in with lip 1-1/2 and leg 3/4, drop 1-3/4, increment 1/2 in.
// Metal of sheet k: u from 36 (k - 1) in, 38-1/4 in wide; its top rises 38-1/4 / 3 = 12-3/4 in.
//   Sheets 1 ... 6 rise:  lower side 144 + 12 (k - 1) + 1-3/4 = 145-3/4 + 12 (k - 1), higher side 158-1/2 + 12 (k - 1).
//   Sheet 7 has the ridge (216 < 240 < 254-1/4) and shares with none.
//   Sheets 8 ... 13 fall: higher side of sheet 8: 144 + (480 - 252) / 3 + 1-3/4 = 221-3/4, lower side 209.
//   Sheet 14: 12 in of metal: 149-3/4 and 145-3/4.
// Two that rise, the second turned: a(x) + b(w - x) is the same for all x,
//   for 1 and 2: 145-3/4 + x/3 + 170-1/2 - x/3 = 316-1/4;
// kerf 1/8 in, upright 1/8 x sqrt(1 + 1/9) = 0.13176 in. So the blank must be 316.38176 in, is bought at 316-1/2, and
// alone the two are 158-1/2 + 170-1/2 = 329: 12-1/2 in are saved, by any two that rise.
// Of those that fall: 8 and 9: 221-3/4 + 197 + 0.13176 -> 419; alone 222 + 210 = 432: 13 in are saved.
TEST_CASE("rising sheets of the frozen gable pair with each other, falling ones too, the ridge with none") {
  Job job = sharing(examples::gable40());
  makeTurnable(job);
  CHECK(told(job) == std::vector<std::string>{"A2+A1< rake 316.5", "A4+A3< rake 364.5", "A6+A5< rake 412.5",
                                              "A7 alone 226", "A8+A9< rake 419", "A10+A11< rake 371",
                                              "A12+A13< rake 323", "A14 alone 150"});
}

TEST_CASE("a sheet that does not lap turned pairs with none of its own wall") {
  for (const std::string& line : told(sharing(examples::gable40()))) CHECK(line.find("alone") != std::string::npos);
}

TEST_CASE("a finish with a direction is not turned") {
  Job job = sharing(examples::gable40());
  makeTurnable(job);
  job.walls.front().bands.front().directionalFinish = true;
  for (const std::string& line : told(job)) CHECK(line.find("alone") != std::string::npos);
}

// Wall B hangs from the right: as its sheets lie in a blank their lower ends are up, so that none need be turned.
TEST_CASE("walls hung in opposite directions pair without turning") {
  const std::vector<std::string> lines = told(twoGables());
  int pairs = 0;
  for (const std::string& line : lines) {
    if (line.find("rake") == std::string::npos) continue;
    ++pairs;
    CHECK(line.find('<') == std::string::npos);
    CHECK(line.find('A') != std::string::npos);
    CHECK(line.find('B') != std::string::npos);
  }
  CHECK(pairs == 12);  // 6 rise and 7 fall on A; on B, laid out from the right, 7 rise and 6 fall
}

TEST_CASE("a rake that is cut in place pairs with none") {
  Job job = sharing(examples::gable40());
  makeTurnable(job);
  job.walls.front().rakeCut = RakeCut::InPlace;
  for (const std::string& line : told(job)) CHECK(line.find("rake") == std::string::npos);
}

TEST_CASE("each kind can be off") {
  Job job = sharing(examples::gable40());
  makeTurnable(job);
  job.settings.sharing.rakePairs = false;
  for (const std::string& line : told(job)) CHECK(line.find("rake") == std::string::npos);
}

TEST_CASE("walls that do not share are left out where that goes wall by wall") {
  Job job = twoGables();
  job.settings.sharing.reach = Sharing::Reach::PerWall;
  job.walls[0].shares = true;
  for (const std::string& line : told(job)) CHECK(line.find("alone") != std::string::npos);
  job.walls[1].shares = true;
  CHECK(told(job) == told(twoGables()));
}

TEST_CASE("sheets of other colours share no blank") {
  Job job = twoGables();
  job.walls[1].bands.front().colour = "red";
  for (const std::string& line : told(job)) CHECK(line.find("alone") != std::string::npos);
}

// 30 ft 3/4 in wide, hung from the left, the module line 18 in from the corner: a start rip of 18-3/4 in with its leg,
// an end rip of 16-3/4 - 1/2 ... with its lip, 145-3/4 in high, side by side in 38-1/4 in.
TEST_CASE("a start rip and an end rip come out of one blank, with the kerf between") {
  Job job = sharing(examples::freeWall(Length::feet(12)));
  Start& start = job.walls.front().start;
  start.rule = Start::Rule::Typed;
  start.offset =
      in(18);  // sheet 1: u 0 ... 18-3/4; sheet 5: u 126 - 1-1/2 ... 144: 19-1/2 in; 18-3/4 + 19-1/2 = 38-1/4
  CHECK(told(job).size() == 5);
  job.settings.kerf = Length();
  CHECK(told(job) == std::vector<std::string>{"A1+A5 rip 146", "A2 alone 146", "A3 alone 146", "A4 alone 146"});
  job.settings.kerf = Length::nanometres(1);
  CHECK(told(job).size() == 5);
  job.settings.kerf = in(0, 8);
  start.offset = in(18) - in(0, 8);  // the first an eighth narrower, but the last an eighth wider
  CHECK(told(job).size() == 5);
  job.walls.front().width = Length::feet(12) - in(0, 8);
  start.offset = in(18);
  CHECK(told(job).size() == 4);
}

TEST_CASE("two start rips share where the sheet may be turned") {
  Job job = sharing(examples::freeWall(Length::feet(12)));
  job.walls.front().start.rule = Start::Rule::Typed;
  job.walls.front().start.offset = in(12);
  job.walls.front().width = Length::feet(10);  // 12 in and three covers
  Wall other = job.walls.front();
  other.letter = "B";
  job.walls.push_back(other);
  CHECK(told(job).size() == 8);
  makeTurnable(job);
  CHECK(told(job).front() == "A1+B1< rip 146");
}

namespace {

// Six sheets; a door from 3 ft to 15 ft leaves of sheets 2 ... 5 only what is above its head (the leg of sheet 5
// beside it lies wholly under sheet 6).
Job wideDoor(Length head) {
  Job job = sharing(examples::freeWall(Length::feet(18)));
  Opening door;
  door.id = "D1";
  door.place.distance = Length::feet(3);
  door.width = Length::feet(12);
  door.height = head;
  door.clearances = {Length(), Length(), Length()};
  job.walls.front().openings = {door};
  return job;
}

}  // namespace

// 14 in is left, nothing shorter than 24 in is made. Beyond a whole sheet: 145-3/4 + 1/8 + 14 -> 160, alone 146 + 24:
// 10 in saved, by each of the two whole sheets; two short ones together: 28-1/8 -> 28-1/2, alone 48: 19-1/2 saved.
TEST_CASE("a piece shorter than the shortest length made comes out of a longer one's blank") {
  Job job = wideDoor(in(130));
  CHECK(told(job) == std::vector<std::string>{"A1+A2 drop 160", "A3+A4 drop 28.5", "A6+A5 drop 160"});
  job.settings.sharing.drops = false;
  CHECK(told(job).size() == 6);
}

TEST_CASE("short pieces left over come out of one sheet of the shortest length made") {
  Job job = wideDoor(in(134));
  job.settings.sharing.drops = false;
  CHECK(told(job) == std::vector<std::string>{"A1 alone 146", "A2+A3 gang 20.5", "A4+A5 gang 20.5", "A6 alone 146"});
  job = wideDoor(in(137));
  job.settings.sharing.drops = false;
  CHECK(told(job)[1] == "A2+A3+A4 gang 21.5");  // 3 x 7 + 2 x 1/8
}

TEST_CASE("off the shelf nothing is ganged or dropped: the cutting of the stock does it") {
  Job job = wideDoor(in(134));
  job.profiles.front().lengths.stocked = {Length::feet(20)};
  CHECK(told(job).size() == 6);
}

TEST_CASE("a pair longer than the longest length made is none") {
  Job job = sharing(examples::gable40());
  makeTurnable(job);
  job.profiles.front().lengths.longest = in(412, 32);
  CHECK(told(job)[2] == "A6+A5< rake 412.5");
  job.profiles.front().lengths.longest = in(412);
  for (const std::string& line : told(job)) CHECK(line.find("rake 412.5") == std::string::npos);
  job.profiles.front().lengths.longest = in(316);
  CHECK(told(job).front() == "A1 alone 158.5");
}

TEST_CASE("hung sheets share no blank") {
  Job job = twoGables();
  const Plan planned = plan(job);
  for (const WallLayout* layout : planned.layouts()) {
    for (const Piece& piece : layout->pieces) {
      const SheetRun& run = layout->runs.front();
      const Module& module = run.modules[std::size_t(piece.module)];
      const bool left = layout->direction.hand == Hand::LeftToRight;
      HungSheet hung;
      hung.mark = piece.mark;
      hung.leadingEdge = left ? module.metalRight : module.metalLeft;
      if (layout->letter == "A") job.facts.hung.push_back(hung);
    }
  }
  for (const std::string& line : told(job)) CHECK(line.find("alone") != std::string::npos);
}

// A2 lies cut on the ground: it is neither bought again nor cut from with another.
TEST_CASE("a pair that was ordered stays one when one of it hangs") {
  Job job = sharing(examples::gable40());
  makeTurnable(job);
  const Plan planned = plan(job);
  const WallLayout& layout = *planned.layouts().front();
  job.facts.hung = {{"A1", layout.runs.front().modules.front().metalRight, {}, {}}};
  CHECK(told(job).front() == "A1 alone 158.5");
  SheetLot lot;
  lot.length = in(316, 32);
  lot.marks = {"A1+A2"};
  job.facts.orders = {{"1", {}, {lot}, {}, {}}};
  CHECK(told(job) == std::vector<std::string>{"A2+A1< rake 316.5", "A4+A3< rake 364.5", "A6+A5< rake 412.5",
                                              "A7 alone 226", "A8+A9< rake 419", "A10+A11< rake 371",
                                              "A12+A13< rake 323", "A14 alone 150"});
  job.settings.sharing.reach = Sharing::Reach::Off;
  CHECK(told(job).front() == "A2+A1< rake 316.5");
  CHECK(told(job).size() == 13);
}

// With sheet 8 translucent 13 and 14 pair; 14 has 12 in of metal, and beyond its lower side lies 13.
TEST_CASE("the side of a rip in a rake pair is cut only as far as the rip goes") {
  Job job = sharing(examples::gable40());
  makeTurnable(job);
  job.walls.front().bands.front().translucent = {8};
  const Plan planned = plan(job);
  int sides = 0;
  for (const Blank& blank : shareBlanks(job, planned.layouts())) {
    if (blank.way != Way::RakePair) continue;
    const BlankCuts cuts = blankCuts(job, planned.layouts(), blank, roundUp(blank.length, in(0, 32)));
    for (const BlankCut& cut : cuts.cuts) {
      if (cut.along != BlankCut::Along::Lengthwise) continue;
      ++sides;
      Length low = in(10'000), high;
      for (const BlankPoint& corner : cuts.parts[std::size_t(cut.part)].rings.front()) {
        if (corner.x != cut.from.x) continue;
        low = std::min(low, corner.y);
        high = std::max(high, corner.y);
      }
      CHECK(cut.from.y == low);
      CHECK(cut.to.y == high);
    }
  }
  CHECK(sides == 1);
}

// Sheets 1 and 2 of the frozen gable: 2 stands, 1 hangs turned from the blank's upper end.
TEST_CASE("the cut of a rake pair is where the tape reads it") {
  Job job = sharing(examples::gable40());
  makeTurnable(job);
  const Plan planned = plan(job);
  const std::vector<Blank> blanks = shareBlanks(job, planned.layouts());
  const Length bought = in(316, 32);
  const BlankCuts cuts = blankCuts(job, planned.layouts(), blanks[0], bought);
  REQUIRE(cuts.parts.size() == 2);
  CHECK(cuts.left == -in(1, 32));
  CHECK(cuts.right == in(36, 48));
  // Sheet 2 from 157-3/4 at the lip to 170-1/2 at the leg.
  REQUIRE(cuts.cuts.size() == 2);
  CHECK(cuts.cuts[0] == BlankCut{BlankCut::Along::Slope, 0, {-in(1, 32), in(157, 48)}, {in(36, 48), in(170, 32)}});
  // Sheet 1 hangs from 316-1/2: down to 316-1/2 - 158-1/2 = 158 at the lip, 316-1/2 - 145-3/4 = 170-3/4 at the leg.
  CHECK(cuts.cuts[1] == BlankCut{BlankCut::Along::Slope, 1, {-in(1, 32), in(158)}, {in(36, 48), in(170, 48)}});
  CHECK(cuts.parts[1].part.to == bought);
}

// (316-1/2 - 316-1/4) in of gap, kerf and what the increment adds, over the whole width.
TEST_CASE("a shared blank is its pieces and what is left, exactly") {
  Job job = sharing(examples::gable40());
  makeTurnable(job);
  const Plan planned = plan(job);
  const Blank blank = shareBlanks(job, planned.layouts()).front();
  const BlankCuts cuts = blankCuts(job, planned.layouts(), blank, in(316, 32));
  Area pieces;
  for (const PlacedPart& placed : cuts.parts) {
    Int128 twice = 0;
    const auto& ring = placed.rings.front();
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const BlankPoint &a = ring[i], &b = ring[(i + 1) % ring.size()];
      twice += Int128(b.x.nanometres()) * a.y.nanometres() - Int128(a.x.nanometres()) * b.y.nanometres();
    }
    pieces += Area::halfSquareNanometres(twice);
  }
  const auto& ofWall = planned.walls.front()->layout.pieces;
  CHECK(pieces == ofWall[0].area + ofWall[1].area);
  CHECK(in(316, 32) * in(38, 16) == pieces + in(0, 16) * in(38, 16));
  CHECK(blank.saved == in(12, 32));
}
