// One wall's particulars: base, start, bands, joints, end laps.
#include <algorithm>
#include <string>

#include "tests/core/tape_lengths.h"
#include "tests/fuzz/random_building.h"
#include "tests/fuzz/stated_wall.h"

namespace ribwright::fuzz {
namespace {

Length lowestTop(const StatedFace& face) {
  Nm low = face.top.segments.front().z0;
  for (const Segment& segment : face.top.segments) low = std::min({low, segment.z0, segment.z1});
  return Length::nanometres(low);
}

Length highestTop(const StatedFace& face) {
  Nm high = face.top.segments.front().z0;
  for (const Segment& segment : face.top.segments) high = std::max({high, segment.z0, segment.z1});
  return Length::nanometres(high);
}

void addBase(Wall& wall, Length width, Dice& dice) {
  using Form = Base::Form;
  Base& base = wall.base;
  base.form = dice.of({Form::Overhang, Form::Overhang, Form::Notch, Form::BaseTrim, Form::OnWall});
  if (dice.oneIn(2)) base.drop = dice.length(Length(), in(6));
  if (dice.oneIn(2)) base.depth = dice.length(Length(), in(4));
  if (dice.oneIn(2)) base.gap = dice.length(Length(), in(1));
  if (base.form == Form::BaseTrim) base.shelf = dice.length(-in(2), in(2));
  if (base.form == Form::OnWall) base.shelf = dice.length(in(4), Length::feet(4));
  if (dice.oneIn(3)) base.grade = -dice.length(Length(), in(12));
  if (!dice.oneIn(4)) return;
  Length u = dice.oneIn(3) ? Length() : scaled(width, dice.between(1, 6), 10);
  for (int i = dice.small(1, 2); i > 0; --i) {
    base.steps.push_back({u, dice.length(-Length::feet(2), Length::feet(2))});
    u = u + scaled(width - u, dice.between(2, 8), 10);
  }
}

Start randomStart(const Wall& wall, Length cover, Length width, Dice& dice) {
  using Rule = Start::Rule;
  Start start;
  start.rule = dice.of({Rule::Flush, Rule::Flush, Rule::ModuleLine, Rule::EqualRips, Rule::SeamOnRidge,
                        Rule::SheetOnRidge, Rule::SeamAtJamb, Rule::SeamAtJamb, Rule::Typed});
  if (width < Length::feet(25) && dice.oneIn(12)) start.rule = Rule::BestOfSearch;
  if (start.rule == Rule::SeamAtJamb && wall.openings.empty()) start.rule = Rule::Typed;
  if (start.rule == Rule::SeamAtJamb) {
    start.opening = dice.of(wall.openings).id;
    start.side = dice.of({Start::Side::Left, Start::Side::Right});
  }
  if (start.rule == Rule::Typed) start.offset = dice.length(Length(), cover - in(1));
  return start;
}

Length coverOf(const Job& job, const std::string& profile) {
  const auto found =
      std::find_if(job.profiles.begin(), job.profiles.end(), [&](const Profile& p) { return p.id == profile; });
  return found->cover;
}

void addBands(const Job& job, Wall& wall, Length high, Dice& dice) {
  const std::string first = dice.of(job.profiles).id;
  Length from = wall.base.form == Base::Form::OnWall ? Length::feet(5) : Length::feet(2);
  for (int i = dice.of({1, 1, 1, 1, 2, 2, 3}); i > 0; --i) {
    Band band;
    band.profile = dice.oneIn(3) ? dice.of(job.profiles).id : first;
    band.colour = dice.of({"blue", "grey"});
    if (!wall.bands.empty()) {
      from = dice.length(from, std::max(from + in(2), high));
      band.from = from;
      if (dice.oneIn(2)) band.gap = dice.length(Length(), in(1));
      from += in(3);
    }
    if (dice.oneIn(4)) band.translucent = {dice.small(1, 4), dice.small(5, 9)};
    wall.bands.push_back(band);
  }
}

void addEndLaps(Wall& wall, Length high, Dice& dice) {
  Length z = dice.length(Length::feet(2), Length::feet(5));
  for (int i = 1; z < high; ++i) {
    wall.girts.push_back({numbered('g', i), z, Girt::TypedBy::Centre, Girt::Flange::Down, "", {}, {}, {}});
    z += dice.length(Length::feet(2), Length::feet(6));
  }
  EndLaps& laps = wall.endLaps;
  laps.where = dice.of(
      {EndLaps::Where::WhereNeeded, EndLaps::Where::WhereNeeded, EndLaps::Where::AtGirts, EndLaps::Where::None});
  if (laps.where == EndLaps::Where::AtGirts && wall.girts.empty()) laps.where = EndLaps::Where::None;
  if (laps.where == EndLaps::Where::AtGirts) {
    for (const Girt& girt : wall.girts) {
      if (laps.girts.empty() || dice.oneIn(3)) laps.girts.push_back(girt.id);
    }
  }
  if (dice.oneIn(2)) laps.lap = dice.length(in(1), in(8));
  if (dice.oneIn(3)) laps.order = EndLaps::Order::TierByTier;
}

void addJoints(Wall& wall, Length width, Dice& dice) {
  if (!dice.oneIn(5)) return;
  Length u = scaled(width, dice.between(1, 6), 10);
  for (int i = dice.small(1, 2); i > 0; --i) {
    wall.expansionJoints.push_back(u);
    u = u + scaled(width - u, dice.between(3, 7), 10);
  }
}

}  // namespace

void addParticulars(Job& job, Wall& wall, Dice& dice) {
  if (dice.oneIn(25)) wall.cladding = dice.of({Cladding::ByOthers, Cladding::Open});
  if (dice.oneIn(3)) wall.eaveHoldDown = dice.length(Length(), in(2));
  if (dice.oneIn(3)) wall.rakeHoldDown = dice.length(Length(), in(2));
  const StatedFace face = statedFace(job, wall);
  const Length width = Length::nanometres(face.width), high = highestTop(face);
  addBase(wall, width, dice);
  addBands(job, wall, dice.oneIn(2) ? high : lowestTop(face), dice);
  // At a corner of the outline only one of its two walls may reach around: the one on its right.
  const bool free = wall.width || wall.line;
  if (dice.oneIn(3)) wall.reachLeft = dice.length(Length(), in(6));
  if (free && dice.oneIn(3)) wall.reachRight = dice.length(Length(), in(6));
  addJoints(wall, width, dice);
  if (dice.oneIn(4)) wall.hang = dice.of({Hang::LeftToRight, Hang::RightToLeft});
  if (dice.oneIn(3)) wall.rakeCut = RakeCut::InPlace;
  wall.columns.offset = dice.length(-in(6), in(12));
  for (Length u; u < width; u += Length::feet(20))
    wall.columns.bays.push_back(dice.length(Length::feet(15), Length::feet(25)));
  addEndLaps(wall, high, dice);
  addOpenings(job, wall, dice);
  wall.start = randomStart(wall, coverOf(job, wall.bands.front().profile), width, dice);
  for (Band& band : wall.bands) {
    // A band may have another cover than the wall's: an offset typed for the wall may be no offset for it.
    const bool own = dice.oneIn(3) || coverOf(job, band.profile) <= wall.start.offset;
    if (own) band.start = randomStart(wall, coverOf(job, band.profile), width, dice);
  }
}

}  // namespace ribwright::fuzz
