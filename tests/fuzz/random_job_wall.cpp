#include <algorithm>

#include "core/job/job_tables.h"
#include "tests/fuzz/random_job.h"

namespace ribwright::fuzz {
namespace {

PlanPoint filledPoint(FieldDice& dice) { return {dice.within(anyLength), dice.within(anyLength)}; }

Anchor filledAnchor(FieldDice& dice) {
  Anchor anchor;
  anchor.from = dice.choice<Anchor::From>(2);
  anchor.column = dice.whole(anchor.from == Anchor::From::Column ? 1 : 0, 100'000);
  anchor.distance = dice.within(anyLength);
  anchor.to = dice.choice<Anchor::To>(1);
  return anchor;
}

Opening filledOpening(FieldDice& dice, const Job& job) {
  const auto clearance = [&] { return dice.maybe([&] { return dice.within(notNegative); }); };
  Opening opening;
  opening.id = dice.id();
  opening.kind = dice.choice<Opening::Kind>(5);
  opening.place = filledAnchor(dice);
  opening.width = dice.within(positive);
  opening.height = dice.within(positive);
  opening.sill = dice.within(anyLength);
  opening.clearances = {clearance(), clearance(), clearance()};
  opening.jambTrim = dice.within(notNegative);
  opening.frame = {dice.within(positive), dice.within(notNegative), dice.idOf(job.members)};
  return opening;
}

Penetration filledPenetration(FieldDice& dice) {
  Penetration penetration;
  penetration.id = dice.id();
  penetration.shape = dice.choice<Penetration::Shape>(1);
  penetration.place = filledAnchor(dice);
  penetration.centre = dice.within(anyLength);
  penetration.width = dice.within(positive);
  penetration.height = penetration.shape == Penetration::Shape::Round ? penetration.width : dice.within(positive);
  penetration.clearance = dice.within(notNegative);
  return penetration;
}

Girt filledGirt(FieldDice& dice, const Job& job) {
  Girt girt;
  girt.id = dice.id();
  girt.height = dice.within(anyLength);
  girt.typedBy = dice.choice<Girt::TypedBy>(3);
  girt.flange = dice.choice<Girt::Flange>(1);
  girt.member = dice.idOf(job.members);
  girt.from = dice.maybe([&] { return dice.within(anyLength); });
  girt.to = dice.maybe([&] { return dice.within(anyLength); });
  girt.clipSlot = dice.maybe([&] { return dice.within(notNegative); });
  return girt;
}

EdgeSupport filledEdge(FieldDice& dice, const Job& job) {
  return {dice.within(positive), dice.within(notNegative), dice.within(notNegative), dice.idOf(job.members)};
}

Start filledStart(FieldDice& dice) {
  return {dice.choice<Start::Rule>(7), dice.within(notNegative), dice.line(), dice.choice<Start::Side>(1)};
}

Band filledBand(FieldDice& dice, const Job& job) {
  Band band;
  band.from = dice.maybe([&] { return dice.within(anyLength); });
  band.gap = dice.within(notNegative);
  band.profile = dice.idOf(job.profiles);
  band.colour = dice.line();
  band.pattern = dice.idOf(job.patterns);
  band.directionalFinish = dice.flag();
  band.thickness = dice.maybe([&] { return dice.within({Length(), Length::millimetres(25), true}); });
  band.start = dice.maybe([&] { return filledStart(dice); });
  for (int module = 0, modules = dice.small(0, 3); module < modules; ++module) {
    band.translucent.push_back(dice.small(1, 300'000) + 300'000 * module);
  }
  if (dice.flag()) std::reverse(band.translucent.begin(), band.translucent.end());
  return band;
}

Base filledBase(FieldDice& dice) {
  Base base;
  base.form = dice.choice<Base::Form>(3);
  base.drop = dice.within(notNegative);
  base.depth = dice.within(notNegative);
  base.shelf = dice.within(anyLength);
  base.gap = dice.within(notNegative);
  for (const Length u : dice.rising(3)) base.steps.push_back({u, dice.within(anyLength)});
  base.grade = dice.maybe([&] { return dice.within(anyLength); });
  return base;
}

WallSurvey filledSurvey(FieldDice& dice) {
  WallSurvey survey;
  survey.propsInPlace = dice.flag();
  survey.chalkLine = dice.maybe([&] { return dice.within(anyLength); });
  survey.girts = dice.list(3, [&] {
    GirtSurvey girt{dice.id(), {}};
    for (const Length u : dice.rising(3)) {
      const auto within = dice.maybe([&] { return dice.within(notNegative); });
      girt.readings.push_back({u, dice.within(anyLength), within, dice.line(), dice.line()});
    }
    return girt;
  });
  for (const Length u : dice.rising(3)) survey.slab.push_back({u, dice.within(anyLength)});
  survey.diagonalRising = dice.maybe([&] { return dice.within(positive); });
  survey.diagonalFalling = dice.maybe([&] { return dice.within(positive); });
  return survey;
}

void place(FieldDice& dice, Wall& wall) {
  if (dice.oneIn(3)) {
    wall.line = PlanLine{filledPoint(dice), filledPoint(dice)};
    if (wall.line->from == wall.line->to) wall.line.reset();
  } else if (dice.flag()) {
    wall.width = dice.within(positive);
  }
  // A foot apart and within 100 ft of height: no slope steeper than 1000 in 1. Two points at one u are a step.
  Length u = dice.within({-farthest, Length(), false});
  for (int points = dice.small(0, 4); points > 0; --points) {
    wall.top.push_back({u, dice.length(Length(), Length::feet(100))});
    if (dice.oneIn(3)) wall.top.push_back({u, dice.length(Length(), Length::feet(100))});
    u += Length::feet(dice.small(1, 50));
  }
}

void edges(FieldDice& dice, Wall& wall) {
  wall.eaveHoldDown = dice.within(notNegative);
  wall.rakeHoldDown = dice.within(notNegative);
  wall.base = filledBase(dice);
  wall.slabOffset = dice.within(anyLength);
  wall.reachLeft = dice.within(notNegative);
  wall.reachRight = dice.within(notNegative);
}

void sheets(FieldDice& dice, const Job& job, Wall& wall) {
  wall.expansionJoints = dice.rising(3);
  wall.hang = dice.choice<Hang>(2);
  wall.start = filledStart(dice);
  wall.bands = dice.list(3, [&] { return filledBand(dice, job); });
  if (wall.bands.empty() && wall.cladding == Cladding::Sheeted) wall.bands.push_back(filledBand(dice, job));
  wall.rakeCut = dice.choice<RakeCut>(1);
  wall.endLaps = {dice.choice<EndLaps::Where>(2), dice.list(3, [&] { return dice.id(); }), dice.within(notNegative),
                  dice.within(notNegative), dice.choice<EndLaps::Order>(1)};
}

void fillSteel(FieldDice& dice, const Job& job, Wall& wall) {
  wall.girtSetting = dice.choice<GirtSetting>(1);
  wall.girts = dice.list(4, [&] { return filledGirt(dice, job); });
  wall.baseAngle = filledEdge(dice, job);
  wall.eavePurlin = filledEdge(dice, job);
  wall.rakeAngle = filledEdge(dice, job);
  wall.columns = {dice.within(anyLength), dice.list(4, [&] { return dice.within(positive); }), dice.idOf(job.members),
                  dice.within(notNegative)};
}

}  // namespace

Wall filledWall(FieldDice& dice, const Job& job, const std::string& letter) {
  Wall wall;
  wall.letter = letter;
  wall.name = dice.line();
  wall.cladding = dice.choice<Cladding>(2);
  place(dice, wall);
  edges(dice, wall);
  sheets(dice, job, wall);
  fillSteel(dice, job, wall);
  wall.openings = dice.list(4, [&] { return filledOpening(dice, job); });
  wall.penetrations = dice.list(3, [&] { return filledPenetration(dice); });
  wall.pattern = dice.idOf(job.patterns);
  wall.survey = filledSurvey(dice);
  return wall;
}

}  // namespace ribwright::fuzz
