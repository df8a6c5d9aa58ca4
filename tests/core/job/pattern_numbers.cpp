// When a confirmation of a hole pattern holds, and what makes it fall.
#include "core/job/pattern_numbers.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <functional>
#include <set>

#include "core/job/digest.h"

using namespace ribwright;

namespace {

struct Stated {
  ScrewPattern pattern;
  std::vector<Screw> screws;
};

Screw screw(const std::string& id, Length diameter) {
  return {id, diameter, Length::inches(0, 32), Length::inches(1, 16), Length::inches(0, 11)};
}

PatternRow row(SupportKind support, Zone zone, std::vector<Length> offsets) {
  return {support, zone, std::move(offsets), "12-14x1.25", std::nullopt};
}

Stated stated() {
  Stated all;
  all.screws = {screw("12-14x1.25", Length::inches(0, 14)), screw("14-14x0.875", Length::inches(0, 16))};
  all.pattern.id = "ribs at 12";
  all.pattern.profile = "rib-36";
  all.pattern.rows = {row(SupportKind::Girt, Zone::Field, {Length::inches(2), Length::inches(14), Length::inches(26)}),
                      row(SupportKind::Girt, Zone::Corner, {Length::inches(2), Length::inches(10), Length::inches(14)}),
                      row(SupportKind::Base, Zone::Field, {Length::inches(2), Length::inches(10)})};
  all.pattern.stitchSpacing = Length::inches(18);
  all.pattern.stitchScrew = "14-14x0.875";
  return all;
}

std::string numbers(const Stated& all) { return numbersOf(all.pattern, all.screws); }

std::string numbersAfter(const std::function<void(Stated&)>& change) {
  Stated all = stated();
  change(all);
  return numbers(all);
}

}  // namespace

// The authors' own test vectors.
TEST_CASE("the digest is 64-bit FNV-1a") {
  CHECK(fnv1a64("") == "cbf29ce484222325");
  CHECK(fnv1a64("a") == "af63dc4c8601ec8c");
  CHECK(fnv1a64("foobar") == "85944171f73967e8");
}

TEST_CASE("a confirmation falls with every number that decides where screws go") {
  const std::vector<std::function<void(Stated&)>> changes = {
      [](Stated& s) { s.pattern.rows[0].offsets[1] += Length::nanometres(1); },
      [](Stated& s) { s.pattern.rows[0].offsets.pop_back(); },
      [](Stated& s) { s.pattern.rows[2].offsets.push_back(Length::inches(14)); },
      [](Stated& s) { s.pattern.rows[2].support = SupportKind::Eave; },
      [](Stated& s) { s.pattern.rows[2].zone = Zone::Corner; },
      [](Stated& s) { s.pattern.rows.erase(s.pattern.rows.begin() + 1); },
      [](Stated& s) { s.pattern.rows[1].offsets.clear(); },  // no screws in the corner, not those of the field
      [](Stated& s) { s.pattern.rows.push_back(row(SupportKind::Jamb, Zone::Field, {})); },
      [](Stated& s) { s.pattern.rows[0].screw = "14-14x0.875"; },
      [](Stated& s) { s.pattern.rows[0].screw.clear(); },
      [](Stated& s) { s.screws[0].diameter += Length::nanometres(1); },
      [](Stated& s) { s.screws[0].washer += Length::nanometres(1); },
      [](Stated& s) { s.screws[0].length += Length::nanometres(1); },
      [](Stated& s) { s.screws[0].pilot += Length::nanometres(1); },
      [](Stated& s) { s.screws[1].diameter += Length::nanometres(1); },
      [](Stated& s) { s.pattern.stitchSpacing = Length::inches(20); },
      [](Stated& s) { s.pattern.stitchSpacing.reset(); },
      [](Stated& s) { s.pattern.stitchScrew = "12-14x1.25"; },
      [](Stated& s) { s.pattern.lapHoles = ScrewPattern::LapHoles::BothSheets; },
      [](Stated& s) { s.pattern.limits = ScrewPattern::Limits::Ufgs07413; },
      [](Stated& s) { s.pattern.limits = ScrewPattern::Limits::Branz146; },
      [](Stated& s) { s.pattern.spacingLimit = Length::inches(12); },
      [](Stated& s) { s.pattern.jambSpacingLimit = Length::inches(16); },
      [](Stated& s) { s.pattern.profile = "rib-32"; },
  };
  std::set<std::string> seen = {numbers(stated())};
  for (std::size_t i = 0; i < changes.size(); ++i) {
    INFO("change " << i);
    const std::string after = numbersAfter(changes[i]);
    CHECK(after.size() == 16);
    CHECK(seen.insert(after).second);
  }
}

TEST_CASE("a confirmation stands whatever the order, the ids and the names") {
  const std::vector<std::function<void(Stated&)>> changes = {
      [](Stated& s) { std::reverse(s.pattern.rows.begin(), s.pattern.rows.end()); },
      [](Stated& s) { std::reverse(s.pattern.rows[0].offsets.begin(), s.pattern.rows[0].offsets.end()); },
      [](Stated& s) { s.pattern.rows[0].offsets.push_back(Length::inches(14)); },  // stands there already
      [](Stated& s) { s.pattern.rows.push_back(row(SupportKind::Girt, Zone::Field, {Length::inches(5)})); },
      [](Stated& s) { std::reverse(s.screws.begin(), s.screws.end()); },
      [](Stated& s) { s.screws.push_back(screw("10-16x1", Length::inches(0, 12))); },
      [](Stated& s) { s.screws[1].id = s.pattern.stitchScrew = "1/4 x 7/8"; },
      [](Stated& s) { s.pattern.id = "S3 detail 4"; },
      [](Stated& s) { s.pattern.example = false; },
      [](Stated& s) {
        s.pattern.confirmation = Confirmation{"S3", "M. Reed", "2026-02-11", ""};
      },
      [](Stated& s) { s.pattern.spacingApproval = "office, 2026-02-11"; },
      [](Stated& s) { s.pattern.rows[0].drilledInPlace = true; },
  };
  for (std::size_t i = 0; i < changes.size(); ++i) {
    INFO("change " << i);
    CHECK(numbersAfter(changes[i]) == numbers(stated()));
  }
}

// Jobs hold digests: the same numbers must give the same one in every later version.
TEST_CASE("what a job held as confirmed stays confirmed") {
  CHECK(numbers(stated()) == fnv1a64("profile rib-36\n"
                                     "row 0 0: 50800000 254000000; screw 5556250 12700000 31750000 4365625\n"
                                     "row 1 0: 50800000 355600000 660400000; screw 5556250 12700000 31750000 4365625\n"
                                     "row 1 1: 50800000 254000000 355600000; screw 5556250 12700000 31750000 4365625\n"
                                     "stitch 457200000; screw 6350000 12700000 31750000 4365625\n"
                                     "lap holes 0\n"
                                     "limits 0 0 304800000\n"));
  CHECK(numbers(stated()) == "75c185d4137ab40b");
}

TEST_CASE("a pattern is confirmed by plan sheet, name and date, until its numbers change") {
  Stated all = stated();
  CHECK(confirmedIs(all.pattern, all.screws) == Confirmed::No);
  all.pattern.confirmation = Confirmation{"S3", "M. Reed", "2026-02-11", numbers(all)};
  CHECK(confirmedIs(all.pattern, all.screws) == Confirmed::Yes);
  all.pattern.rows[2].offsets[0] += Length::sixtyFourths(1);
  CHECK(confirmedIs(all.pattern, all.screws) == Confirmed::Fallen);
  all.pattern.rows[2].offsets[0] -= Length::sixtyFourths(1);
  CHECK(confirmedIs(all.pattern, all.screws) == Confirmed::Yes);
  all.screws[1].diameter += Length::sixtyFourths(1);
  CHECK(confirmedIs(all.pattern, all.screws) == Confirmed::Fallen);
  for (std::string Confirmation::*said : {&Confirmation::planSheet, &Confirmation::by, &Confirmation::date}) {
    Stated unsaid = stated();
    unsaid.pattern.confirmation = Confirmation{"S3", "M. Reed", "2026-02-11", numbers(unsaid)};
    ((*unsaid.pattern.confirmation).*said).clear();
    CHECK(confirmedIs(unsaid.pattern, unsaid.screws) == Confirmed::No);
  }
}
