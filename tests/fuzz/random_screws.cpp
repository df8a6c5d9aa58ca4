// Screws and patterns: offsets mostly on flats, some on bends, in the lap, through it, too near each other, beyond the
// cover.
#include "tests/fuzz/random_screws.h"

#include <algorithm>

#include "tests/core/tape_lengths.h"
#include "tests/fuzz/random_building.h"
#include "tests/fuzz/stated_seats.h"

namespace ribwright::fuzz {
namespace {

Length tenthsMm(std::int64_t count) { return Length::nanometres(100'000 * count); }

Length onAFlat(const Profile& profile, const Screw& screw, Dice& dice) {
  const Spans seats = within(statedSeats(profile, screw.washer.nanometres()), 0, profile.cover.nanometres() - 1);
  if (seats.empty()) return dice.length(Length(), profile.cover - in(1));
  const Span& seat = dice.of(seats);
  if (dice.oneIn(3)) return Length::nanometres(seat.from + (seat.to - seat.from) / 2);
  if (dice.oneIn(6)) return Length::nanometres(dice.of({seat.from, seat.to}));
  return Length::nanometres(dice.between(seat.from, seat.to));
}

Length inTheLap(const Profile& profile, const Screw& screw, Dice& dice) {
  const Length r = scaled(screw.diameter, 3, 2);
  switch (dice.between(0, 4)) {
    case 0:
      return std::max(Length(), profile.under - r);  // just through the lap
    case 1:
      return profile.cover - profile.over + r;
    case 2:
      return dice.length(Length(), profile.under + r);
    default:
      return profile.cover - dice.length(Length::nanometres(1), profile.over + r);
  }
}

std::vector<Length> offsetsFor(const Profile& profile, const Screw& screw, Dice& dice) {
  std::vector<Length> offsets;
  for (int left = dice.small(1, 6); left > 0; --left) {
    Length x = onAFlat(profile, screw, dice);
    const int kind = dice.small(0, 24);
    if (kind == 0) x = dice.length(Length(), profile.cover - in(0, 1));
    if (kind >= 1 && kind <= 4) x = inTheLap(profile, screw, dice);
    if (kind == 5 && !offsets.empty()) x = offsets.back() + dice.length(in(0, 1), in(1));
    if (kind == 6) x = profile.cover + dice.length(Length(), in(3));
    if (kind == 7) x = Length();
    offsets.push_back(std::max(x, Length()));
  }
  return offsets;
}

ScrewPattern patternFor(const Job& job, const Profile& profile, Dice& dice) {
  ScrewPattern pattern;
  pattern.id = "for " + profile.id;
  pattern.profile = profile.id;
  for (const SupportKind kind : {SupportKind::Base, SupportKind::Girt, SupportKind::Eave, SupportKind::Rake,
                                 SupportKind::Jamb, SupportKind::Head, SupportKind::Sill, SupportKind::EndLap}) {
    for (const Zone zone : {Zone::Field, Zone::Corner}) {
      if (zone == Zone::Field ? dice.oneIn(16) : !dice.oneIn(3)) continue;
      const Screw& screw = dice.of(job.screws);
      PatternRow row{kind, zone, offsetsFor(profile, screw, dice), screw.id, {}};
      if (dice.oneIn(40)) row.screw.clear();
      if (dice.oneIn(6)) row.drilledInPlace = dice.oneIn(2);
      pattern.rows.push_back(row);
      if (dice.oneIn(30)) pattern.rows.push_back({kind, zone, {in(5)}, dice.of(job.screws).id, {}});
    }
  }
  return pattern;
}

void addSpacing(ScrewPattern& pattern, const Job& job, Dice& dice) {
  using Limits = ScrewPattern::Limits;
  if (!dice.oneIn(4)) pattern.stitchSpacing = dice.length(in(6), in(36));
  if (dice.oneIn(60)) pattern.stitchSpacing = dice.length(in(0, 8), in(1, 8));
  if (!dice.oneIn(12)) pattern.stitchScrew = dice.of(job.screws).id;
  pattern.limits = dice.of({Limits::PlansOwn, Limits::Ufgs07413, Limits::NzCode, Limits::Branz146});
  if (dice.oneIn(3)) pattern.spacingLimit = dice.length(in(4), in(24));
  if (dice.oneIn(8)) pattern.spacingApproval = "engineer, sheet S3";
  if (dice.oneIn(2)) pattern.jambSpacingLimit = dice.length(in(3), in(24));
  if (dice.oneIn(2)) pattern.lapHoles = ScrewPattern::LapHoles::BothSheets;
}

}  // namespace

void addScrews(Job& job, Dice& dice) {
  const std::vector<Length> diameters{tenthsMm(48), tenthsMm(55), tenthsMm(63), in(0, 4),
                                      Length::nanometres(5'486'401)};
  const std::vector<Length> washers{Length(), tenthsMm(110), tenthsMm(140), in(0, 10), Length::nanometres(15'875'001)};
  for (int i = 1; i <= 4; ++i) {
    job.screws.push_back({numbered('s', i), dice.of(diameters), dice.of(washers), in(1), Length()});
  }
}

void addPatterns(Job& job, Dice& dice) {
  for (const Profile& profile : job.profiles) {
    job.patterns.push_back(patternFor(job, profile, dice));
    addSpacing(job.patterns.back(), job, dice);
  }
  job.patterns.push_back(job.patterns.front());
  job.patterns.back().id = "for any";
  job.patterns.back().profile.clear();
  for (Wall& wall : job.walls) {
    if (wall.bands.empty()) continue;
    wall.pattern = "for " + wall.bands.front().profile;
    if (dice.oneIn(30)) wall.pattern = dice.of(job.patterns).id;
    if (dice.oneIn(40)) wall.pattern.clear();
    for (Band& band : wall.bands) {
      if (band.profile != wall.bands.front().profile && !dice.oneIn(4)) band.pattern = "for " + band.profile;
      if (dice.oneIn(30)) band.pattern = dice.of(job.patterns).id;
    }
  }
}

Job withScrews(Job job, Dice& dice) {
  addSections(job, dice);
  addScrews(job, dice);
  addPatterns(job, dice);
  addMembers(job, dice);
  for (Wall& wall : job.walls) addSteel(job, wall, dice);
  using Rule = CornerZones::Rule;
  job.settings.cornerZones.rule = dice.of({Rule::None, Rule::Typed, Rule::Typed, Rule::Asce7, Rule::En1991});
  job.settings.cornerZones.width = dice.length(Length(), Length::feet(12));
  if (dice.oneIn(2)) job.settings.drift = dice.length(Length(), in(0, 4));
  return job;
}

}  // namespace ribwright::fuzz
