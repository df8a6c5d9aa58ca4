// How a made-up job is ordered, trimmed and paid for.
#include "core/job/job_tables.h"
#include "tests/fuzz/random_job.h"

namespace ribwright::fuzz {
namespace {

Trim filledTrim(FieldDice& dice) {
  Trim trim;
  trim.id = dice.id();
  trim.name = dice.line();
  trim.girth = dice.within(notNegative);
  trim.section = dice.list(4, [&] { return SectionPoint{dice.within(anyLength), dice.within(anyLength)}; });
  trim.thickness = dice.within(kSteelThickness);
  trim.colour = dice.line();
  trim.stocked = dice.list(3, [&] { return dice.within(positive); });
  trim.spliceLap = dice.within(notNegative);
  trim.endTrim = dice.within(notNegative);
  return trim;
}

TrimRule filledRule(FieldDice& dice, const Job& job) {
  TrimRule rule;
  rule.id = dice.id();
  rule.where = dice.choice<TrimRule::Where>(static_cast<int>(TrimRule::Where::Transition));
  rule.of = dice.choice<TrimRule::Of>(static_cast<int>(TrimRule::Of::Framed));
  rule.trim = dice.idOf(job.trims);
  rule.colour = dice.line();
  rule.times = dice.whole(1, 1000);
  rule.parts = dice.whole(1, 1000);
  rule.allowance = dice.within(anyLength);
  rule.lip = dice.within(notNegative);
  rule.laps = dice.choice<TrimRule::Laps>(static_cast<int>(TrimRule::Laps::Butts));
  return rule;
}

Price filledPrice(FieldDice& dice) {
  Price price;
  price.what = dice.choice<Price::What>(static_cast<int>(Price::What::Charge));
  price.item = dice.line();
  price.colour = dice.line();
  price.thickness = dice.maybe([&] { return dice.within(kSteelThickness); });
  price.per = dice.choice<Price::Per>(static_cast<int>(Price::Per::Kilogram));
  price.cents = dice.whole(0, 2'000'000'000);
  return price;
}

}  // namespace

void fillOrdering(FieldDice& dice, Job& job) {
  Settings& settings = job.settings;
  settings.leastDrop = dice.within(notNegative);
  settings.sharing = {dice.choice<Sharing::Reach>(static_cast<int>(Sharing::Reach::PerWall)), dice.flag(), dice.flag(),
                      dice.flag(), dice.flag()};
  settings.spares = {dice.whole(0, 100), dice.whole(0, 10'000)};
  settings.bundles = {dice.whole(1, 100'000), dice.whole(1, 10'000), dice.within(notNegative)};
  for (Profile& profile : job.profiles) profile.lengths.stocked = dice.list(3, [&] { return dice.within(positive); });
  for (Wall& wall : job.walls) wall.shares = dice.flag();
  for (PlacedOrder& order : job.facts.orders) {
    for (SheetLot& lot : order.placed) lot.translucent = dice.flag();
  }
  job.trims = dice.list(3, [&] { return filledTrim(dice); });
  job.trimRules = dice.list(3, [&] { return filledRule(dice, job); });
  job.prices = {dice.line(), dice.line(), dice.line(), dice.list(3, [&] { return filledPrice(dice); })};
}

}  // namespace ribwright::fuzz
