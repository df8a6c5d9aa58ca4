// Orders placed and received, as edits.
#include "core/editing/placed_order_edits.h"

#include <catch2/catch.hpp>

using namespace ribwright;

namespace {

SheetLot lot(std::int64_t feet, int quantity) {
  return lotOf({{"rib-36", Length::nanometres(454'660), "red", false}, Length::feet(feet)}, quantity);
}

Job ordered() { return placeOrder(Job{}, " 17 ", "2024-05-02", {lot(12, 10), lot(10, 4)}).value(); }

std::string faultOf(const Outcome<Job>& outcome) { return outcome ? "none" : outcome.faults().front().message; }

}  // namespace

TEST_CASE("an order is placed under a number of its own") {
  const Job job = ordered();
  REQUIRE(job.facts.orders.size() == 1);
  CHECK(job.facts.orders[0].id == "17");
  CHECK(job.facts.orders[0].placed == std::vector<SheetLot>{lot(12, 10), lot(10, 4)});
  CHECK(faultOf(placeOrder(job, "17", "", {lot(12, 1)})) == "another order is called \"17\"");
  CHECK(faultOf(placeOrder(job, " ", "", {lot(12, 1)})) ==
        "the order has no number; give it one, as it stands on its paper");
  CHECK(faultOf(placeOrder(job, "18", "", {})) == "nothing is to be ordered: what was ordered before is enough");
  CHECK(faultOf(placeOrder(job, "1\n8", "", {lot(12, 1)})) != "none");
  CHECK(nextOrderNumber(job) == "2");
  CHECK(nextOrderNumber(placeOrder(job, "2", "", {lot(12, 1)}).value()) == "3");
}

TEST_CASE("all that is not short comes, and a second time nothing more") {
  const Job shortOf = setReceived(ordered(), "17", kindOf(lot(10, 1)), 0, 1).value();
  const Job all = receiveAll(shortOf, "17").value();
  CHECK(all.facts.orders[0].received == std::vector<SheetLot>{lot(12, 10), lot(10, 3)});
  CHECK(all.facts.orders[0].shortfall == std::vector<SheetLot>{lot(10, 1)});
  CHECK(receiveAll(all, "17").value() == all);
}

TEST_CASE("what came and what is short is stated kind by kind, and may be taken back") {
  const SheetKind kind = kindOf(lot(12, 1));
  const Job job = setReceived(ordered(), "17", kind, 8, 2).value();
  CHECK(countsOf(job.facts.orders[0]).at(kind) == PlacedCount{10, 8, 2});
  CHECK(setReceived(job, "17", kind, 0, 0).value() == ordered());
  CHECK(countsOf(setReceived(job, "17", kind, 12, 0).value().facts.orders[0]).at(kind).tooMany() == 2);
  CHECK(faultOf(setReceived(job, "17", kindOf(lot(9, 1)), 1, 0)) == "order \"17\" has no such sheets");
  CHECK(faultOf(setReceived(job, "18", kind, 1, 0)) == "no order is called \"18\"");
  CHECK(faultOf(setReceived(job, "17", kind, -1, 0)) == "sheets received or short are less than none");
  CHECK(faultOf(setReceived(job, "17", kind, 1'000'001, 0)) == "are more than 1,000,000 sheets");
}

TEST_CASE("an order that was never placed is gone with all that came of it") {
  CHECK(withoutOrder(receiveAll(ordered(), "17").value(), "17").value() == Job{});
  CHECK(faultOf(withoutOrder(Job{}, "17")) == "no order is called \"17\"");
}
