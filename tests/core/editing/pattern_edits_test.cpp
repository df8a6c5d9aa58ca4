// Shipped numbers are examples until someone holds them against the plans.
#include "core/editing/pattern_edits.h"

#include <catch2/catch.hpp>

#include "core/job/pattern_numbers.h"

using namespace ribwright;

namespace {

Job withPattern() {
  Job job;
  job.screws = {
      {"12-14x1.25", Length::inches(0, 14), Length::inches(0, 40), Length::inches(1, 16), Length::inches(0, 10)}};
  ScrewPattern pattern;
  pattern.id = "ribs";
  pattern.rows = {{SupportKind::Girt, Zone::Field, {Length::inches(2), Length::inches(14)}, "12-14x1.25", {}}};
  job.patterns = {pattern};
  return job;
}

const ConfirmedBy stated{"S3, detail 4", "M. Reed", "2026-03-05"};

Confirmed standing(const Job& job) { return confirmedIs(job.patterns[0], job.screws); }

}  // namespace

// Until someone confirms the numbers against a plan sheet by name and date.
TEST_CASE("a pattern is confirmed by plan sheet, name and date, for the numbers as they stand") {
  const auto job = confirmPattern(withPattern(), "ribs", stated);
  REQUIRE(job);
  CHECK(standing(withPattern()) == Confirmed::No);
  CHECK(standing(job.value()) == Confirmed::Yes);
  CHECK(job.value().patterns[0].confirmation->planSheet == "S3, detail 4");
}

TEST_CASE("none of the three may be left out, and all that is missing is said at once") {
  for (const ConfirmedBy& short1 : {ConfirmedBy{"", "M. Reed", "2026-03-05"}, ConfirmedBy{"S3", " ", "2026-03-05"},
                                    ConfirmedBy{"S3", "M. Reed", ""}}) {
    const auto job = confirmPattern(withPattern(), "ribs", short1);
    REQUIRE_FALSE(job);
    CHECK(job.faults().size() == 1);
  }
  CHECK(confirmPattern(withPattern(), "ribs", {}).faults().size() == 3);
  CHECK_FALSE(confirmPattern(withPattern(), "pans", stated));
}

// If the numbers change the confirmation falls.
TEST_CASE("a confirmation falls with a number, and is given anew for the new ones") {
  Job job = confirmPattern(withPattern(), "ribs", stated).value();
  job.patterns[0].rows[0].offsets[0] = Length::inches(3);
  CHECK(standing(job) == Confirmed::Fallen);
  CHECK(standing(confirmPattern(job, "ribs", stated).value()) == Confirmed::Yes);
}

TEST_CASE("a confirmation that is withdrawn leaves the pattern as it was") {
  CHECK(withdrawConfirmation(confirmPattern(withPattern(), "ribs", stated).value(), "ribs") == withPattern());
  CHECK(withdrawConfirmation(withPattern(), "ribs") == withPattern());
}
