// Findings about orders placed and the price list.
#include <catch2/catch.hpp>

#include "core/editing/placed_order_edits.h"
#include "core/job/job_file.h"
#include "core/plan/plan.h"
#include "core/takeoff/sheet_needs.h"

using namespace ribwright;

namespace {

Job leanTo() {
  Job job = loadJob(RIBWRIGHT_ROOT "/sample-jobs/lean-to.json").value();
  job.facts.orders.clear();
  return job;
}

std::vector<SheetLot> toOrder(const Job& job) {
  const Plan made = plan(job);
  return deltaOrder(sheetNeeds(made.order, made.layouts()), job.facts.orders).toOrder;
}

Job ordered(const Job& job, const std::string& id) { return placeOrder(job, id, "", toOrder(job)).value(); }

std::vector<Finding> found(const Job& job, const std::string& id) {
  std::vector<Finding> of;
  for (const Finding& finding : plan(job).findings) {
    if (finding.id == id) of.push_back(finding);
  }
  return of;
}

std::string why(const Finding& finding) {
  return Words::of("en").say("finding." + finding.id + ".why", finding.said(), {UnitSystem::FeetInches, '.'});
}

const SheetKind redFive{{"rib-36-1.25-at-12", Length::nanometres(454'660), "barn red", false}, Length::feet(5, 5)};

}  // namespace

TEST_CASE("what was ordered as it is needed has no finding, and nothing more is to be ordered") {
  const Job job = ordered(leanTo(), "1");
  CHECK(toOrder(job).empty());
  for (const char* id : {"short-not-ordered", "received-too-many", "ordered-not-needed", "no-price", "price-twice"})
    CHECK(found(job, id).empty());
}

TEST_CASE("the sample's orders are all that it needs") {
  const Job sample = loadJob(RIBWRIGHT_ROOT "/sample-jobs/lean-to.json").value();
  CHECK(sample.facts.orders.size() == 2);
  CHECK(toOrder(sample).empty());
  for (const char* id : {"short-not-ordered", "received-too-many", "ordered-not-needed", "no-price", "price-twice"})
    CHECK(found(sample, id).empty());
}

TEST_CASE("sheets that came short are wanting until they are ordered again") {
  const Job short2 = setReceived(ordered(leanTo(), "1"), "1", redFive, 8, 2).value();
  const auto wanting = found(short2, "short-not-ordered");
  REQUIRE(wanting.size() == 1);
  CHECK(wanting[0].grade == Grade::Look);
  CHECK(why(wanting[0]) == "Sheets came short, and 2 of them are still needed and not ordered again.");
  const Job again = ordered(short2, "2");
  CHECK(again.facts.orders[1].placed.at(0).quantity == 2);
  CHECK(found(again, "short-not-ordered").empty());
}

TEST_CASE("received and short more than ordered is looked at") {
  const Job job = setReceived(ordered(leanTo(), "1"), "1", redFive, 10, 1).value();
  const auto many = found(job, "received-too-many");
  REQUIRE(many.size() == 1);
  CHECK(many[0].mark == "1");
  CHECK(why(many[0]) == "Of 10 sheets ordered 10 are received and 1 short: 1 too many.");
}

TEST_CASE("sheets that nothing needs any more are noted, with what they cost") {
  Job job = ordered(leanTo(), "1");
  job.facts.orders[0].placed.push_back(lotOf({redFive.sheet, Length::feet(20)}, 3));
  const auto left = found(job, "ordered-not-needed");
  REQUIRE(left.size() == 1);
  CHECK(left[0].grade == Grade::Note);
  CHECK(why(left[0]) ==
        "Sheets that were ordered and nothing needs any more: 3 (0 on site, 3 to come), 205.20\u00a0USD at the prices "
        "stated.");
  job.prices.items.clear();
  CHECK(why(found(job, "ordered-not-needed").at(0)).ends_with("; no price is stated for them."));
}

TEST_CASE("sheets without a price are named where the job states any; a price behind its like is looked at") {
  Job job = leanTo();
  CHECK(found(job, "no-price").empty());
  job.prices.items.push_back(job.prices.items[0]);
  CHECK(found(job, "price-twice").size() == 1);
  job.prices.items.erase(job.prices.items.begin() + 1);
  const auto none = found(job, "no-price");
  REQUIRE(none.size() == 1);
  CHECK(none[0].grade == Grade::Note);
  CHECK(none[0].part.starts_with("rib-36-0.75-at-9 charcoal"));
  job.prices.items.clear();
  CHECK(found(job, "no-price").empty());
}
