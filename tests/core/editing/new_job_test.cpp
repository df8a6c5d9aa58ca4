// A job begun from a plain statement.
#include <catch2/catch.hpp>

#include "core/editing/new_job.h"
#include "core/editing/new_job_fields.h"
#include "core/editing/new_job_file.h"
#include "core/job/job_file.h"
#include "core/job/pattern_file.h"
#include "core/job/trim_file.h"
#include "core/plan/plan.h"
#include "tests/fuzz/dice.h"

using namespace ribwright;

namespace {

const Words& english() { return Words::of("en"); }
NewJob statedWorkshop() { return shippedNewJob(UnitSystem::FeetInches); }
Job made(const NewJob& stated) {
  const auto job = jobOf(stated, english());
  for (const Fault& fault : job ? std::vector<Fault>{} : job.faults()) FAIL(oneLine(fault));
  return job.value();
}
std::vector<std::string> placesOf(const NewJob& stated) {
  std::vector<std::string> places;
  const auto job = jobOf(stated, english());
  if (!job) {
    for (const Fault& fault : job.faults()) places.push_back(fault.place);
  }
  return places;
}
std::vector<Length> heightsOf(const Wall& wall) {
  std::vector<Length> heights;
  for (const Girt& girt : wall.girts) heights.push_back(girt.height);
  return heights;
}
void checkWhole(const Job& job) {
  CHECK(faultsOf(job).empty());
  const Plan all = plan(job);
  for (const Finding& finding : all.findings) {
    INFO(finding.key());
    CHECK(finding.grade != Grade::Stop);
  }
  for (const auto& wall : all.walls) CHECK_FALSE(wall->layout.pieces.empty());
}

using Places = std::vector<std::string>;

}  // namespace

TEST_CASE("a workshop of 60 by 40 ft is four walls with their steel") {
  const Job job = made(statedWorkshop());
  REQUIRE(job.walls.size() == 4);
  CHECK(job.walls[0].name == "front");
  CHECK(job.walls[1].name == "right end");
  CHECK(job.building.outline[2] == PlanPoint{Length::feet(60), Length::feet(40)});
  CHECK(job.building.roof.eave == Length::feet(12));
  CHECK(job.building.roof.slope == Slope::per12(4));
  CHECK(job.walls[0].columns.bays == std::vector<Length>(3, Length::feet(20)));
  CHECK(job.walls[3].columns.bays == std::vector<Length>(2, Length::feet(20)));
  CHECK(heightsOf(job.walls[2]) == std::vector<Length>{Length::feet(3, 6), Length::feet(7, 4)});
  CHECK(job.walls[0].base.drop == Length::inches(1, 48));
  CHECK(job.site.sightPoints.front().at == PlanPoint{Length::feet(30), -Length::feet(100)});
  CHECK(job.members.front().id == "Z8x2.5x0.075");
  checkWhole(job);
}

TEST_CASE("a new job comes with the trim of its units, in the colour of its sheets") {
  for (const UnitSystem units : {UnitSystem::FeetInches, UnitSystem::Millimetres}) {
    NewJob stated = shippedNewJob(units);
    stated.colour = "sand";
    const Job job = made(stated);
    CHECK(job.trimRules == shippedTrim(units).rules);
    CHECK(job.trims.size() == shippedTrim(units).trims.size());
    for (const Trim& trim : job.trims) CHECK(trim.colour == "sand");
  }
}

TEST_CASE("girts of a gable go on upward at their last spacing, to a foot under the ridge") {
  // The ridge stands 12 ft + 20 ft * 4/12 = 18 ft 8 in up; 3' 10" apart: 3' 6", 7' 4", 11' 2", 15' 0"; 18' 10" is too
  // high.
  CHECK(heightsOf(made(statedWorkshop()).walls[1]) ==
        std::vector<Length>{Length::feet(3, 6), Length::feet(7, 4), Length::feet(11, 2), Length::feet(15)});
  NewJob stated = statedWorkshop();
  stated.sideGirts = "3', 6'";  // one at 18 ft would stand 8 in under the ridge
  CHECK(heightsOf(made(stated).walls[1]).back() == Length::feet(15));
  stated.endGirts = "4', 8'";
  CHECK(heightsOf(made(stated).walls[1]) == std::vector<Length>{Length::feet(4), Length::feet(8)});
  stated.endGirts = "4', 18' 8\"";
  CHECK(placesOf(stated) == Places{"end_girts"});
  stated.endGirts = "4', 18' 7\"";
  CHECK(placesOf(stated).empty());
}

TEST_CASE("the ridge may be typed as a slope or as a height") {
  NewJob stated = statedWorkshop();
  stated.slope = "18' 8\"";
  CHECK(made(stated).building.roof.ridgeHeight == Length::feet(18, 8));
  stated.slope = "12'";
  CHECK(placesOf(stated) == Places{"slope"});
  stated.slope = "18.4349 deg";
  CHECK(made(stated).building.roof.slope->as == Slope::As::Angle);
  stated.roof = Roof::Kind::SingleSlope;
  stated.slope = "1:12";
  CHECK(made(stated).building.roof.kind == Roof::Kind::SingleSlope);
}

TEST_CASE("the higher side of a single slope has the girts that its lower side has no room for") {
  NewJob stated = statedWorkshop();
  stated.roof = Roof::Kind::SingleSlope;
  stated.slope = "2:12";  // the far side stands 18' 8" high
  stated.sideGirts = "4', 8', 12', 16'";
  const Job job = made(stated);
  CHECK(heightsOf(job.walls[0]).size() == 2);
  CHECK(heightsOf(job.walls[2]).size() == 4);
  stated.sideGirts = "4', 18' 8\"";
  CHECK(placesOf(stated).front() == "side_girts");
}

TEST_CASE("bays that do not fill a wall stand in its middle, longer ones are a fault") {
  NewJob stated = statedWorkshop();
  stated.endBays = "2@19'";
  CHECK(made(stated).walls[1].columns.offset == Length::feet(1));
  stated.endBays = "2@20', 1/16";
  CHECK(placesOf(stated) == Places{"end_bays"});
  stated.endBays = "";
  CHECK(made(stated).walls[1].columns.bays.empty());
}

TEST_CASE("every fault stands at its field, all at once") {
  NewJob stated = statedWorkshop();
  stated.length = "6x";
  stated.width = "0";
  stated.sideBays = "20', y";
  stated.sideGirts = "7' 4\", 3' 6\"";
  stated.slope = "4:";
  stated.profile = "none such";
  CHECK(placesOf(stated) == Places{"length", "width", "slope", "side_bays", "side_girts", "profile", "pattern"});
}

TEST_CASE("what cannot be built is a fault, not a wall that is not laid out") {
  NewJob stated = statedWorkshop();
  stated.base = Base::Form::OnWall;
  stated.baseHeight = "12'";
  stated.sideGirts = "";
  CHECK(placesOf(stated).front() == "base_height");
  stated.baseHeight = "3'";
  checkWhole(made(stated));
  stated.sideGirts = "3', 7'";
  CHECK(placesOf(stated).front() == "side_girts");
}

TEST_CASE("slips of the pen are faults, not buildings that nobody waits for") {
  NewJob stated = statedWorkshop();
  stated.length = "60000'";
  stated.slope = "50:1";
  stated.eave = "600'";
  CHECK(placesOf(stated) == Places{"length"});
  stated.length = "60'";
  CHECK(placesOf(stated) == Places{"eave"});
  stated.eave = "12'";
  CHECK(placesOf(stated) == Places{"slope"});
  CHECK(sheetsAbout(made(statedWorkshop())) == 2 * 21 + 2 * 14);
}

TEST_CASE("one free wall has its own top") {
  NewJob stated = statedWorkshop();
  stated.shape = NewJob::Shape::FreeWall;
  stated.sideGirts = "3' 6\", 7' 4\", 14'";
  const Job job = made(stated);
  REQUIRE(job.walls.size() == 1);
  CHECK(job.walls[0].top.size() == 3);
  CHECK(job.walls[0].top[1] == FacePoint{Length::feet(30), Length::feet(22)});
  CHECK(job.building.outline.empty());
  checkWhole(job);
}

TEST_CASE("other units say the same lengths") {
  const NewJob metric = inUnits(statedWorkshop(), UnitSystem::Millimetres);
  CHECK(metric.length == "18288 mm");
  CHECK(metric.slope == "4:12");
  Job there = made(metric), here = made(statedWorkshop());
  there.units = here.units;
  CHECK(there.building.outline == here.building.outline);
  CHECK(there.walls[0].columns == here.walls[0].columns);
  NewJob broken = statedWorkshop();
  broken.eave = "1x";
  CHECK(inUnits(broken, UnitSystem::Millimetres).eave == "1x");
}

TEST_CASE("a statement is read from its file as it was written, and a broken file is told") {
  for (const UnitSystem units : {UnitSystem::FeetInches, UnitSystem::Millimetres}) {
    NewJob stated = shippedNewJob(units);
    stated.wind = NewJob::Wind::West;
    stated.base = Base::Form::Notch;
    const auto read = readNewJob(writeNewJob(stated), "defaults.json");
    REQUIRE(read.ok());
    CHECK(read.value() == stated);
    checkWhole(made(shippedNewJob(units)));
  }
  CHECK_FALSE(readNewJob("{", "defaults.json").ok());
  const auto unknown = readNewJob(R"({"units": "millimetres", "lenght": "18000"})", "defaults.json");
  REQUIRE_FALSE(unknown.ok());
  CHECK(unknown.faults().front().place == "defaults.json: lenght");
}

TEST_CASE("equal bays fill a wall") {
  const LengthStyle feet{UnitSystem::FeetInches, '.'}, metric{UnitSystem::Millimetres, '.'};
  const auto bays = [](std::string_view width, const LengthStyle& style) {
    return parseLengthString(equalBaysText(width, style), style).value();
  };
  CHECK(bays("60'", feet) == std::vector<Length>(3, Length::feet(20)));
  CHECK(bays("50'", feet) == std::vector<Length>(2, Length::feet(25)));
  CHECK(bays("50' 1\"", feet).size() == 3);
  Length sum;
  for (const Length bay : bays("50' 1\"", feet)) sum += bay;
  CHECK(sum == Length::feet(50, 1));
  CHECK(bays("22500", metric) == std::vector<Length>(3, Length::millimetres(7500)));
  CHECK(equalBaysText("6x", feet).empty());
}

namespace {

std::string heightsText(fuzz::Dice& dice, Length from, Length top, const LengthStyle& style) {
  std::vector<Length> heights;
  for (Length at = from; at < top; at += dice.length(Length::feet(3), Length::feet(6))) {
    heights.push_back(roundTo(at, tapeMark(style.units)));
    if (heights.size() > 8) break;
  }
  return lengthStringText(heights, style);
}

// Buildings as people put them up.
NewJob sensible(fuzz::Dice& dice) {
  NewJob stated = shippedNewJob(dice.of({UnitSystem::FeetInches, UnitSystem::Millimetres}));
  const LengthStyle style{stated.units, '.'};
  const Length mark = tapeMark(stated.units);
  const auto typed = [&](Length low, Length high) { return fineText(roundTo(dice.length(low, high), mark), style); };
  const auto bays = [&](const std::string& wall) {
    const int count = dice.small(1, 6);
    const Length bay = mark * wholeTimes(parseLength(wall, style).value(), mark * count);
    return lengthStringText(std::vector<Length>(static_cast<std::size_t>(count), bay), style);
  };
  stated.length = typed(Length::feet(16), Length::feet(160));
  stated.width = typed(Length::feet(16), Length::feet(80));
  stated.roof = dice.of({Roof::Kind::Level, Roof::Kind::SingleSlope, Roof::Kind::Gable});
  stated.ends = dice.of({Roof::Ends::AC, Roof::Ends::BD});
  stated.shape = dice.oneIn(6) ? NewJob::Shape::FreeWall : NewJob::Shape::Rectangle;
  stated.eave = typed(Length::feet(8), Length::feet(20));
  stated.slope = stated.roof == Roof::Kind::Gable ? dice.of<std::string>({"1:12", "3:12", "4:12", "9.5 deg"}) : "1:12";
  const bool endsAC = stated.ends == Roof::Ends::AC && stated.shape == NewJob::Shape::Rectangle;
  stated.sideBays = bays(endsAC ? stated.width : stated.length);
  stated.endBays = bays(endsAC ? stated.length : stated.width);
  stated.sideGirts =
      heightsText(dice, Length::feet(3), parseLength(stated.eave, style).value() - Length::feet(2), style);
  stated.typedBy = dice.of({Girt::TypedBy::WebLine, Girt::TypedBy::Bottom, Girt::TypedBy::Top, Girt::TypedBy::Centre});
  stated.girtSetting = dice.of({GirtSetting::Bypass, GirtSetting::Flush});
  stated.base = dice.of({Base::Form::Overhang, Base::Form::Notch, Base::Form::BaseTrim});
  std::vector<std::string> profiles;
  for (const PatternExample& example : shippedPatterns()) profiles.push_back(example.pattern.id);
  for (const PatternExample& example : shippedPatterns()) {
    if (example.pattern.id != dice.of(profiles)) continue;
    stated.pattern = example.pattern.id;
    stated.profile = example.pattern.profile;
  }
  stated.seenFrom = static_cast<NewJob::Side>(dice.small(0, 4));
  stated.wind = static_cast<NewJob::Wind>(dice.small(0, 8));
  return stated;
}

}  // namespace

TEST_CASE("thousands of sensible statements are jobs that plan without a stop") {
  int stopped = 0;
  for (int i = 0; i < 2000; ++i) {
    fuzz::Dice dice(20261, i);
    const NewJob stated = sensible(dice);
    INFO(writeNewJob(stated));
    const Job job = made(stated);
    REQUIRE(readJob(writeJob(job), "job.json").value() == job);
    for (const Finding& finding : plan(job).findings) {
      INFO(finding.key());
      if (finding.grade == Grade::Stop) ++stopped;
      CHECK(finding.grade != Grade::Stop);
    }
    if (stopped > 3) break;
  }
}

TEST_CASE("other units chosen in the midst leave what was typed, and make the rest what is usual in them") {
  NewJob stated = shippedNewJob(UnitSystem::Millimetres);
  stated.length = "24000";
  const NewJob feet = inOtherUnits(stated, UnitSystem::FeetInches, false);
  const NewJob shipped = shippedNewJob(UnitSystem::FeetInches);
  CHECK(feet.width == shipped.width);
  CHECK(feet.sideGirts == shipped.sideGirts);
  CHECK(feet.profile == shipped.profile);
  CHECK(feet.member == shipped.member);
  // As a tape in feet and inches says it.
  const Length typed = parseLength(feet.length, {UnitSystem::FeetInches, '.'}).value();
  CHECK(absolute(typed - Length::millimetres(24000)) <= Length::sixtyFourths(1));
  const NewJob back = inOtherUnits(feet, UnitSystem::Millimetres, false);
  CHECK(back.sideGirts == shippedNewJob(UnitSystem::Millimetres).sideGirts);
}

TEST_CASE("with a decimal comma lists stand with semicolons, and with a point they come back") {
  const NewJob metric = shippedNewJob(UnitSystem::Millimetres);
  const NewJob comma = inOtherUnits(metric, UnitSystem::Millimetres, true);
  const LengthStyle style{UnitSystem::Millimetres, ','};
  CHECK(parseLengthString(comma.sideGirts, style).value() ==
        parseLengthString(metric.sideGirts, {UnitSystem::Millimetres, '.'}).value());
  CHECK(jobOf(comma, Words::of("en")));
  NewJob typed = comma;
  typed.sideGirts = "1200,5; 2500";
  const NewJob point = inOtherUnits(typed, UnitSystem::Millimetres, false);
  CHECK(parseLengthString(point.sideGirts, {UnitSystem::Millimetres, '.'}).value() ==
        std::vector{Length::nanometres(1'200'500'000), Length::millimetres(2500)});
}
