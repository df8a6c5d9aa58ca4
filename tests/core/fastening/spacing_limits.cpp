// How far apart screws may be. Published values stand in tests/outside/published_spacing.cpp.
#include "core/fastening/spacing_limits.h"

#include <catch2/catch.hpp>

using namespace ribwright;

namespace {

ScrewPattern patternWith(ScrewPattern::Limits limits, Length own = {}) {
  ScrewPattern pattern;
  pattern.limits = limits;
  pattern.spacingLimit = own;
  return pattern;
}

}  // namespace

TEST_CASE("a plan's own pattern is limited by what the plan states, and by nothing else") {
  CHECK(spacingLimits(patternWith(ScrewPattern::Limits::PlansOwn)) == SpacingLimits{});
  const auto limits = spacingLimits(patternWith(ScrewPattern::Limits::PlansOwn, Length::inches(12)));
  CHECK(limits.atSupports == Length::inches(12));
  CHECK(limits.atEndLaps == Length::inches(12));
  CHECK_FALSE(limits.atSideLaps);  // between screws of a row: a side lap is none
  CHECK_FALSE(limits.betweenRows);
  CHECK_FALSE(limits.endLap);
  CHECK(limits.source == "the plans");
}

TEST_CASE("the smaller of a set's limit and the plan's own holds, and is named") {
  const auto ufgs = [](Length own) { return spacingLimits(patternWith(ScrewPattern::Limits::Ufgs07413, own)); };
  CHECK(ufgs(Length::inches(6)).atSupports == Length::inches(6));
  CHECK(ufgs(Length::inches(6)).atEndLaps == Length::inches(6));
  CHECK(ufgs(Length::inches(6)).atSideLaps == Length::inches(18));
  CHECK(ufgs(Length::inches(6)).source == "UFGS 07413 3.1.1.1, the plans");
  CHECK(ufgs(Length::inches(12)) == ufgs({}));
  CHECK(ufgs(Length::inches(8)) == ufgs({}));
}

TEST_CASE("a set that says nothing of a space leaves it to the plan's own limit") {
  const auto nz = spacingLimits(patternWith(ScrewPattern::Limits::NzCode, Length::millimetres(300)));
  CHECK(nz.atSupports == Length::millimetres(300));
  CHECK(nz.source == "NZ Metal Roof and Wall Cladding Code of Practice, the plans");
  const auto branz = spacingLimits(patternWith(ScrewPattern::Limits::Branz146));
  CHECK_FALSE(branz.atSupports);
  CHECK(branz.betweenRows == Length::millimetres(1200));
}

TEST_CASE("even spaces: as few as keep the limit, one at least, none over nothing") {
  CHECK(evenSpaces(Length::inches(36), Length::inches(12)) == 3);
  CHECK(evenSpaces(Length::inches(36) + Length::nanometres(1), Length::inches(12)) == 4);
  CHECK(evenSpaces(Length::nanometres(1), Length::inches(12)) == 1);
  CHECK(evenSpaces(Length(), Length::inches(12)) == 0);
  CHECK(evenSpaces(-Length::inches(5), Length::inches(12)) == 0);
  CHECK(evenSpaces(Length::inches(36), Length()) == 1);
  CHECK(fewestPerCover(Length::inches(36), Length::inches(36)) == 1);
  CHECK(fewestPerCover(Length::inches(36), Length::inches(35)) == 2);
}
