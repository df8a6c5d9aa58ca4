#include "tests/fuzz/random_job.h"

#include "core/job/job_tables.h"

namespace ribwright::fuzz {
namespace {

Profile filledProfile(FieldDice& dice) {
  Profile profile;
  profile.id = dice.id();
  profile.name = dice.line();
  profile.cover = dice.within({Length::inches(1), Length::feet(10), false});
  profile.over = dice.within({Length(), profile.cover - Length::nanometres(1), false});
  profile.under = dice.within({Length(), profile.cover - profile.over - Length::nanometres(1), false});
  profile.section.push_back({-profile.over, dice.within(anyLength)});
  const Length last = profile.cover + profile.under;
  for (int points = dice.small(0, 8); points > 0; --points) {
    const Length x = dice.within({profile.section.back().x, last, false});
    profile.section.push_back({x, dice.within(anyLength)});
  }
  profile.section.push_back({last, dice.within(anyLength)});
  profile.thickness = dice.within(kSteelThickness);
  profile.coatingGramsPerSquareMetre = dice.whole(0, 10'000);
  profile.lengths.shortest = dice.within({Length(), Length::feet(90), true});
  profile.lengths.longest = dice.within({profile.lengths.shortest, farthest, false});
  profile.lengths.increment = dice.within(positive);
  profile.longestSpan = dice.maybe([&] { return dice.within(positive); });
  return profile;
}

Member filledMember(FieldDice& dice) {
  Member member;
  member.id = dice.id();
  member.shape = dice.choice<Member::Shape>(4);
  member.depth = dice.within(positive);
  member.flange = dice.within(positive);
  member.lip = dice.within(notNegative);
  member.thickness = dice.within({Length(), Length::millimetres(100), true});
  member.bendRadius = dice.within(notNegative);
  return member;
}

Screw filledScrew(FieldDice& dice) {
  return {dice.id(), dice.within(positive), dice.within(notNegative), dice.within(positive), dice.within(notNegative)};
}

ScrewPattern filledPattern(FieldDice& dice, const Job& job) {
  ScrewPattern pattern;
  pattern.id = dice.id();
  pattern.profile = dice.idOf(job.profiles);
  pattern.example = dice.flag();
  pattern.rows = dice.list(4, [&] {
    return PatternRow{dice.choice<SupportKind>(7), dice.choice<Zone>(1),
                      dice.list(5, [&] { return dice.within(notNegative); }), dice.idOf(job.screws), dice.flag()};
  });
  pattern.stitchSpacing = dice.maybe([&] { return dice.within(positive); });
  pattern.stitchScrew = dice.idOf(job.screws);
  pattern.lapHoles = dice.choice<ScrewPattern::LapHoles>(1);
  pattern.limits = dice.choice<ScrewPattern::Limits>(3);
  pattern.spacingLimit = dice.within(notNegative);
  pattern.spacingApproval = dice.line();
  pattern.jambSpacingLimit = dice.within(positive);
  pattern.confirmation = dice.maybe([&] { return Confirmation{dice.line(), dice.line(), dice.line(), dice.line()}; });
  return pattern;
}

Settings filledSettings(FieldDice& dice) {
  Settings settings;
  for (Length Settings::*length :
       {&Settings::jambClearance, &Settings::headClearance, &Settings::sillClearance, &Settings::narrowLeg,
        &Settings::seamFromJamb, &Settings::cornerTrimLeg, &Settings::gradeClearance, &Settings::rakeAllowance,
        &Settings::fragileLegWidth, &Settings::fragileLegLength, &Settings::drift, &Settings::straightness,
        &Settings::kerf}) {
    if (dice.flag()) settings.*length = dice.within(notNegative);
  }
  settings.heaviestPieceKilograms = dice.whole(1, 10'000);
  settings.stackLimit = dice.whole(1, 1000);
  settings.mostOrderLengths = dice.whole(0, 10'000);
  settings.byteOrderMark = dice.flag();
  settings.cornerZones = {dice.choice<CornerZones::Rule>(3), dice.within(notNegative)};
  return settings;
}

Site filledSite(FieldDice& dice) {
  Site site;
  site.trueNorth = dice.degrees(-360, 360);
  site.windFrom = dice.maybe([&] { return dice.degrees(-360, 360); });
  site.sightPoints = dice.list(3, [&] {
    return SightPoint{dice.line(), {dice.within(anyLength), dice.within(anyLength)}, dice.whole(1, 100)};
  });
  return site;
}

Roof filledRoof(FieldDice& dice) {
  Roof roof;
  roof.kind = dice.choice<Roof::Kind>(3);
  roof.ends = dice.choice<Roof::Ends>(1);
  roof.eave = dice.within(notNegative);
  roof.ridgeAt = dice.maybe([&] { return dice.within({Length::feet(1), farthest, false}); });
  if (dice.flag()) {
    roof.ridgeHeight = dice.within({roof.eave, roof.eave + Length::feet(40), false});
    if (*roof.ridgeHeight > farthest) roof.ridgeHeight = roof.eave;
  } else {
    roof.slope = dice.maybe([&] { return dice.slope(); });
  }
  if (dice.flag()) {
    roof.farEave = dice.within(notNegative);
  } else {
    roof.farSlope = dice.maybe([&] { return dice.slope(); });
  }
  return roof;
}

Building filledBuilding(FieldDice& dice) {
  Building building;
  building.name = dice.line();
  building.roof = filledRoof(dice);
  if (dice.oneIn(4)) return building;
  const Length x = dice.within(anyLength), y = dice.within(anyLength);
  const Length right = x + dice.within({Length(), Length::feet(90), true});
  const Length back = y + dice.within({Length(), Length::feet(90), true});
  building.outline = {{x, y}, {right, y}, {right, back}, {x, back}};
  if (dice.flag()) building.outline.pop_back();  // three corners carry walls too
  for (PlanPoint& corner : building.outline) {
    if (corner.x > farthest || corner.y > farthest) return filledBuilding(dice);
  }
  return building;
}

SheetLot filledLot(FieldDice& dice) {
  return {dice.id(),
          dice.line(),
          dice.within(kSteelThickness),
          dice.within(positive),
          dice.whole(0, 1'000'000),
          dice.list(4, [&] { return dice.id(); })};
}

SiteFacts filledFacts(FieldDice& dice) {
  SiteFacts facts;
  facts.hung = dice.list(4, [&] { return HungSheet{dice.id(), dice.within(anyLength), dice.line(), dice.line()}; });
  facts.orders = dice.list(3, [&] {
    const auto lots = [&] { return dice.list(2, [&] { return filledLot(dice); }); };
    return PlacedOrder{dice.id(), dice.line(), lots(), lots(), lots()};
  });
  return facts;
}

}  // namespace

Job filledJob(std::uint64_t seed, int index) {
  FieldDice dice(seed, index);
  Job job;
  for (std::string Job::*text : {&Job::name, &Job::number, &Job::revision, &Job::date}) job.*text = dice.line();
  job.note = dice.note();
  job.units = dice.choice<UnitSystem>(1);
  job.decimalSign = dice.of({'.', ','});
  job.site = filledSite(dice);
  job.building = filledBuilding(dice);
  job.settings = filledSettings(dice);
  job.profiles = dice.list(3, [&] { return filledProfile(dice); });
  job.members = dice.list(3, [&] { return filledMember(dice); });
  job.screws = dice.list(3, [&] { return filledScrew(dice); });
  job.patterns = dice.list(2, [&] { return filledPattern(dice, job); });
  for (int wall = 0, walls = dice.small(0, 4); wall < walls; ++wall) {
    std::string letter(1, static_cast<char>('A' + wall));
    if (dice.oneIn(5)) letter += "XY";
    job.walls.push_back(filledWall(dice, job, letter));
  }
  job.facts = filledFacts(dice);
  fillOrdering(dice, job);
  job.silenced = dice.list(3, [&] { return SilencedFinding{dice.id(), dice.note()}; });
  return job;
}

}  // namespace ribwright::fuzz
