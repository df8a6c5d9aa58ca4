#include "tests/fuzz/random_survey.h"

#include <algorithm>

#include "core/job/pattern_numbers.h"
#include "tests/core/tape_lengths.h"
#include "tests/fuzz/random_building.h"
#include "tests/fuzz/random_screws.h"
#include "tests/fuzz/stated_seats.h"
#include "tests/fuzz/stated_wall.h"

namespace ribwright::fuzz {
namespace {

// What one person measured on one wall.
class Survey {
 public:
  Survey(const Job& job, const Wall& wall, Dice& dice)
      : wall_(wall), dice_(dice), face_(statedFace(job, wall)), width_(at(face_.width)) {}

  WallSurvey all() {
    WallSurvey survey;
    survey.propsInPlace = true;
    survey.chalkLine = chalk();
    chalk_ = survey.chalkLine;
    // How crooked the steel is, and how far the whole wall stands off.
    crooked_ = dice_.of({in(0, 1), in(0, 3), in(0, 6), in(0, 10), in(0, 16), in(3)});
    for (const Girt& girt : wall_.girts) {
      if (!dice_.oneIn(14)) survey.girts.push_back({girt.id, readings([&](Length) { return girt.height; })});
    }
    const auto steel = [&](Length u) { return at(face_.steel.heightAt(u.nanometres(), Side::Right)); };
    if (dice_.oneIn(2)) survey.girts.push_back({"eave", readings(steel)});
    if (dice_.oneIn(2)) survey.slab = slab();
    return survey;
  }

 private:
  // Where it was not said, at the sheets' bottom.
  std::optional<Length> chalk() {
    const int kind = dice_.small(0, 15);
    if (kind > 3) return std::nullopt;
    const Length bottom = at(face_.bottom.segments.front().z0);
    return kind > 0 ? bottom : bottom + dice_.length(-in(1), in(1));
  }

  Length chalkAt(Length u) const {
    if (chalk_) return *chalk_;
    const Nm place = u.nanometres();
    return at(std::min(face_.bottom.heightAt(place, Side::Left), face_.bottom.heightAt(place, Side::Right)));
  }

  std::vector<Length> stations() {
    std::vector<Length> all;
    for (int i = dice_.of({0, 0, 1, 2, 3, 5, 8}); i > 0; --i) all.push_back(dice_.length(in(0, 1), width_ - in(0, 1)));
    if (!dice_.oneIn(12)) all.push_back(Length());
    if (!dice_.oneIn(12)) all.push_back(width_);
    std::sort(all.begin(), all.end());
    all.erase(std::unique(all.begin(), all.end()), all.end());
    return all;
  }

  template <class Planned>
  std::vector<GirtReading> readings(const Planned& planned) {
    std::vector<GirtReading> all;
    const Length off = dice_.oneIn(4) ? dice_.length(-in(1), in(1)) : Length();
    const Length reach = dice_.oneIn(3) ? in(0, 1) : crooked_;
    const int checked = dice_.small(0, 4);  // 0: by stick, station by station; 1: all of them
    const Length within = dice_.length(Length(), dice_.of({in(0, 1), in(0, 4), in(0, 12)}));
    for (const Length u : stations()) {
      GirtReading reading;
      reading.u = u;
      reading.height = planned(u) - chalkAt(u) + off + dice_.length(-reach, reach);
      if (checked == 1 || (checked == 0 && dice_.oneIn(2))) reading.within = within;
      reading.by = "M";
      reading.date = "day";
      all.push_back(reading);
    }
    return all;
  }

  std::vector<SlabReading> slab() {
    std::vector<SlabReading> all;
    const Length reach = dice_.of({in(0, 1), in(0, 4), in(0, 12)});
    for (const Length u : stations())
      all.push_back({u, at(face_.concrete.heightAt(u.nanometres(), Side::Right)) + dice_.length(-reach, reach)});
    return all;
  }

  const Wall& wall_;
  Dice& dice_;
  StatedFace face_;
  Length width_, crooked_;
  std::optional<Length> chalk_;
};

void confirmPatterns(Job& job, Dice& dice) {
  for (ScrewPattern& pattern : job.patterns) {
    const int kind = dice.small(0, 24);
    if (kind == 0) continue;
    pattern.confirmation = {"S-4", "M", "day", numbersOf(pattern, job.screws)};
    if (kind == 1) pattern.confirmation->numbers = "0123456789abcdef";
    if (kind == 2) pattern.confirmation->date.clear();
  }
}

// Offsets on flats, well apart.
std::vector<Length> goodOffsets(const Profile& profile, const Screw& screw, Dice& dice) {
  const Spans seats = within(statedSeats(profile, screw.washer.nanometres()), 0, profile.cover.nanometres() - 1);
  std::vector<Length> offsets;
  for (int tries = dice.small(1, 6); tries > 0 && !seats.empty(); --tries) {
    const Span& seat = dice.of(seats);
    offsets.push_back(at(dice.oneIn(2) ? seat.from + (seat.to - seat.from) / 2 : dice.between(seat.from, seat.to)));
  }
  return offsets;
}

ScrewPattern goodPattern(const Job& job, const Profile& profile, Dice& dice) {
  ScrewPattern pattern;
  pattern.id = "for " + profile.id;
  pattern.profile = profile.id;
  const Screw& screw = dice.of(job.screws);
  const std::vector<Length> offsets = goodOffsets(profile, screw, dice);
  for (const SupportKind kind : {SupportKind::Base, SupportKind::Girt, SupportKind::Eave, SupportKind::Rake,
                                 SupportKind::Jamb, SupportKind::Head, SupportKind::Sill, SupportKind::EndLap}) {
    PatternRow row{kind, Zone::Field, dice.oneIn(4) ? goodOffsets(profile, screw, dice) : offsets, screw.id, {}};
    if (dice.oneIn(8)) row.screw = dice.of(job.screws).id;
    if (dice.oneIn(8)) row.drilledInPlace = dice.oneIn(2);
    pattern.rows.push_back(row);
    if (!dice.oneIn(6)) continue;
    row.zone = Zone::Corner;
    if (dice.oneIn(2)) row.offsets = goodOffsets(profile, screw, dice);
    pattern.rows.push_back(row);
  }
  if (dice.oneIn(2)) pattern.lapHoles = ScrewPattern::LapHoles::BothSheets;
  return pattern;
}

std::vector<FacePoint> goodTop(Length width, Dice& dice) {
  const Length eave = dice.length(Length::feet(8), Length::feet(14));
  if (!dice.oneIn(4)) return {{Length(), eave}, {width, eave}};
  const Length ridge = eave + dice.length(in(6), Length::feet(4));
  return {{Length(), eave}, {scaled(width, dice.between(2, 8), 10), ridge}, {width, eave}};
}

void addGirts(const Job& job, Wall& wall, Dice& dice) {
  using TypedBy = Girt::TypedBy;
  Length z = dice.length(Length::feet(2), Length::feet(5));
  for (int i = 1; z < wall.top.front().z; ++i) {
    Girt girt;
    girt.id = numbered('g', i);
    girt.height = z;
    girt.typedBy = dice.of({TypedBy::WebLine, TypedBy::Bottom, TypedBy::Top, TypedBy::Centre});
    girt.flange = dice.of({Girt::Flange::Up, Girt::Flange::Down});
    if (!dice.oneIn(30)) girt.member = dice.of(job.members).id;
    if (dice.oneIn(2)) girt.clipSlot = dice.length(Length(), in(1));
    wall.girts.push_back(girt);
    if (dice.oneIn(6)) {  // laps over the last one somewhere, nested in it
      Girt other = girt;
      other.id += 'b';
      other.from = scaled(*wall.width, dice.between(2, 7), 10);
      wall.girts.back().to = *other.from + dice.length(in(2), Length::feet(4));
      if (dice.oneIn(3)) other.height += dice.length(-in(1), in(1));
      wall.girts.push_back(other);
    }
    z += dice.length(Length::feet(2), Length::feet(6));
  }
}

void addBase(Wall& wall, Dice& dice) {
  using Form = Base::Form;
  Base& base = wall.base;
  base.form = dice.of({Form::Overhang, Form::Overhang, Form::Overhang, Form::Notch, Form::BaseTrim, Form::OnWall});
  if (base.form == Form::OnWall) base.shelf = dice.length(in(4), Length::feet(2));
  if (dice.oneIn(2)) base.drop = dice.length(Length(), in(6));
  if (dice.oneIn(6)) base.steps.push_back({scaled(*wall.width, dice.between(1, 9), 10), dice.length(-in(12), in(12))});
  if (dice.oneIn(6)) base.steps.insert(base.steps.begin(), {Length(), dice.length(-in(6), in(6))});
  wall.baseAngle.face = dice.length(in(2), in(4));
  wall.baseAngle.row = half(wall.baseAngle.face);
}

}  // namespace

Job withSurvey(Job job, Dice& dice) {
  confirmPatterns(job, dice);
  for (Wall& wall : job.walls) {
    for (Girt& girt : wall.girts) {
      if (girt.member.empty() && !dice.oneIn(8)) girt.member = dice.of(job.members).id;
      if (dice.oneIn(2)) girt.clipSlot = dice.length(Length(), in(1));
    }
    if (!dice.oneIn(12)) wall.survey = Survey(job, wall, dice).all();
  }
  job.settings.stackLimit = dice.of({10, 10, 10, 10, 5, 3, 2, 1});
  return job;
}

Job surveyedWall(std::uint64_t seed, int index) {
  Dice dice(seed, index);
  Job job = randomJob(seed, index);  // for its profiles, units and settings
  job.building = Building();
  job.site = Site();
  job.walls.clear();
  addSections(job, dice);
  addScrews(job, dice);
  addMembers(job, dice);
  const Profile& profile = dice.of(job.profiles);
  for (const Profile& one : job.profiles) job.patterns.push_back(goodPattern(job, one, dice));
  Wall wall;
  wall.letter = "A";
  wall.width = dice.length(profile.cover * 2, profile.cover * 7 + half(profile.cover));
  wall.hang = dice.of({Hang::LeftToRight, Hang::RightToLeft});
  wall.top = goodTop(*wall.width, dice);
  Band band;
  band.profile = profile.id;
  if (dice.oneIn(10)) band.translucent = {dice.small(1, 4)};
  wall.bands = {band};
  wall.pattern = "for " + profile.id;
  wall.columns.offset = in(6);
  wall.columns.bays = {dice.length(Length::feet(6), half(*wall.width) + Length::feet(7))};
  if (dice.oneIn(6)) wall.girtSetting = GirtSetting::Flush;
  wall.columns.flange = 2 * half(dice.length(in(4), in(12)));
  if (dice.oneIn(3)) wall.start.rule = dice.of({Start::Rule::EqualRips, Start::Rule::ModuleLine});
  wall.eavePurlin.face = dice.length(in(2), in(3));
  addBase(wall, dice);
  addGirts(job, wall, dice);
  if (dice.oneIn(3)) addOpenings(job, wall, dice);
  wall.survey = Survey(job, wall, dice).all();
  job.walls = {wall};
  job.settings.cornerZones = {CornerZones::Rule::Typed, dice.oneIn(3) ? profile.cover : Length()};
  job.settings.stackLimit = dice.of({10, 10, 10, 4, 3, 2});
  if (dice.oneIn(3)) job.settings.drift = dice.length(Length(), in(0, 4));
  confirmPatterns(job, dice);
  return job;
}

}  // namespace ribwright::fuzz
