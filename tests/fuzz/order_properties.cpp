// What holds for the order of every building, however its lengths, spares and bundles are stated.
#include <catch2/catch.hpp>

#include "core/cutting/share_blanks.h"
#include "tests/fuzz/layout_text.h"
#include "tests/fuzz/order_checker.h"
#include "tests/fuzz/random_building.h"

namespace ribwright::fuzz {
namespace {

std::string wrongWith(const Job& job, const Layouts& layouts, const SheetOrder& order) {
  Complaints complaints;
  complaints.at("order");
  const CheckedOrder checked{job, layouts, order};
  checkSheets(checked, complaints);
  checkOrderLengths(checked, complaints);
  complaints.at("account");
  checkAccount(checked, orderAccount(order, layouts), complaints);
  complaints.at("bundles");
  checkBundles(checked, bundlesOf(job, layouts, order), complaints);
  return complaints.text();
}

std::string named(int index, const std::string& what) {
  return what.empty() ? "" : "seed " + std::to_string(kSeed) + ", building " + std::to_string(index) + "\n" + what;
}

}  // namespace

TEST_CASE("Orders of random buildings hold every piece once, at lengths sold, and account for all steel") {
  for (int i = 0; i < 1500; ++i) {
    Dice dice(kSeed + 71, i);
    const Job job = withOrdering(randomJob(kSeed, i), dice);
    const Plan made = plan(job);
    REQUIRE(named(i, wrongWith(job, made.layouts(), made.order)) == "");
  }
}

TEST_CASE("Orders of blanks that several pieces come from hold as well") {
  for (int i = 0; i < 1000; ++i) {
    Dice dice(kSeed + 72, i);
    Job job = withOrdering(randomJob(kSeed, i), dice);
    job.settings.sharing.reach = Sharing::Reach::Off;
    const Plan made = plan(job);
    const Layouts layouts = made.layouts();
    const SheetOrder order = sheetOrder(job, layouts, joinedBlanks(job, shareBlanks(job, layouts), dice));
    REQUIRE(named(i, wrongWith(job, layouts, order)) == "");
  }
}

TEST_CASE("Orders made anew after an edit are those made at once") {
  for (int i = 0; i < 300; ++i) {
    Dice dice(kSeed + 73, i);
    const Job job = withOrdering(randomJob(kSeed, i), dice);
    const Plan before = plan(job);
    Job next = withOrdering(dice.oneIn(2) ? edited(job, dice) : job, dice);
    REQUIRE(named(i, firstDifference(planText(plan(next)), planText(plan(next, before)))) == "");
  }
}

}  // namespace ribwright::fuzz
