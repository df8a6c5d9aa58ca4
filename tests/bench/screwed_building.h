// The large building of the benchmarks with all that screws need.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "tests/bench/large_building.h"

namespace ribwright::bench {

inline Profile ribbedWithLeg() {
  Profile profile = ribbed();
  const auto in = [](int eighths) { return Length::inches(0, 8) * eighths; };
  profile.over = in(12);
  profile.under = in(16);
  profile.section.clear();
  profile.section.push_back({-profile.over, Length()});
  for (int rib = 0; rib <= 3; ++rib) {
    const Length middle = Length::inches(12) * rib;
    for (const auto& [x, y] : {std::pair(-9, 0), std::pair(-4, 10), std::pair(4, 10), std::pair(9, 0)})
      profile.section.push_back({middle + in(x), in(y)});
  }
  profile.section.push_back({profile.cover + profile.under, Length()});
  return profile;
}

inline ScrewPattern pattern() {
  const auto in = [](int whole, int eighths) { return Length::inches(whole, 8 * eighths); };
  const std::vector<Length> dense = {in(1, 5), in(10, 0), in(14, 0), in(22, 0), in(26, 0), in(33, 0)};
  const std::vector<Length> field = {in(1, 5), in(14, 0), in(26, 0)};
  ScrewPattern made;
  made.id = "ribs-at-12";
  made.profile = ribbed().id;
  for (const SupportKind kind : {SupportKind::Base, SupportKind::Eave, SupportKind::Rake, SupportKind::Girt,
                                 SupportKind::EndLap, SupportKind::Head, SupportKind::Sill, SupportKind::Jamb}) {
    const bool sparse = kind == SupportKind::Girt || kind == SupportKind::Head || kind == SupportKind::Sill;
    made.rows.push_back({kind, Zone::Field, sparse ? field : dense, "12", {}});
    made.rows.push_back({kind, Zone::Corner, dense, "12", {}});
  }
  made.stitchSpacing = Length::inches(18);
  made.stitchScrew = "14";
  made.limits = ScrewPattern::Limits::Ufgs07413;
  return made;
}

// As building(), with ribs, girts and a pattern.
inline Job screwed(Length length, int openings) {
  Job job = building(length, openings);
  job.profiles = {ribbedWithLeg()};
  job.members = {{"Z8", Member::Shape::Zed, Length::inches(8), Length::inches(2, 32), Length::inches(0, 56),
                  Length::nanometres(1'905'000), Length::inches(0, 12)}};
  job.screws = {{"12", Length::nanometres(5'486'400), Length::inches(0, 32), Length::inches(1, 16), Length()},
                {"14", Length::inches(0, 16), Length::inches(0, 36), Length::inches(0, 56), Length()}};
  job.patterns = {pattern()};
  job.settings.cornerZones.rule = CornerZones::Rule::Asce7;
  for (Wall& wall : job.walls) {
    wall.pattern = "ribs-at-12";
    for (int i = 1; i <= 4; ++i) {
      Girt girt;
      girt.id = std::string("g").append(std::to_string(i));
      girt.height = Length::feet(5) * i - Length::inches(6);
      girt.member = "Z8";
      wall.girts.push_back(girt);
    }
  }
  return job;
}

}  // namespace ribwright::bench
