// The checker of cutting plans is a tool of proof, so it is proved first: what is wrong by one piece, one unit of
// length or one point is found out.
#include <catch2/catch.hpp>

#include "core/cutting/stock_cutter.h"
#include "tests/fuzz/cutting_checker.h"

namespace ribwright::fuzz {
namespace {

// Three stocks, the last nearly used up; kerf and end trim; one length in two lines.
const CuttingList& sampleList() {
  static const CuttingList list = {{{240}, {192}, {120, {}, 3}}, 1, 2, {{97, 5}, {60, 4}, {45, 6}, {60, 2}, {31, 5}}};
  return list;
}

const CuttingPlan& samplePlan() {
  static const CuttingPlan plan = cutStock(sampleList()).value();
  return plan;
}

std::string complaintsOf(const CuttingPlan& plan) { return checkCutting(sampleList(), plan).text(); }

bool notices(const CuttingPlan& plan, const std::string& what) {
  const std::string complaints = complaintsOf(plan);
  INFO(complaints);
  CHECK(complaints.find(what) != std::string::npos);
  return complaints.find(what) != std::string::npos;
}

std::size_t firstCut(const CutPattern& pattern) {
  std::size_t i = 0;
  while (pattern.counts[i] == 0) ++i;
  return i;
}

}  // namespace

TEST_CASE("The sample plan is proved, has patterns and points, and nothing is held against it") {
  CHECK(samplePlan().proved());
  CHECK(!samplePlan().provedBySearch);
  REQUIRE(samplePlan().patterns.size() > 1);
  REQUIRE(!samplePlan().proof.empty());
  CHECK(complaintsOf(samplePlan()).empty());
}

TEST_CASE("The checker notices a piece that is missing") {
  CuttingPlan plan = samplePlan();
  --plan.patterns[0].counts[firstCut(plan.patterns[0])];
  CHECK(notices(plan, "is cut"));
}

TEST_CASE("The checker notices a piece too many") {
  CuttingPlan plan = samplePlan();
  ++plan.patterns[0].counts[4];
  CHECK(notices(plan, "is cut"));
}

TEST_CASE("The checker notices an overfilled stock") {
  CuttingPlan plan = samplePlan();
  plan.patterns[0].counts[0] += 2;
  CHECK(notices(plan, "is longer than its stock"));
}

TEST_CASE("The checker notices a pattern cut once more, and once less") {
  CuttingPlan more = samplePlan(), less = samplePlan();
  ++more.patterns[0].times;
  --less.patterns[0].times;
  CHECK(notices(more, "is cut"));
  CHECK(!complaintsOf(less).empty());
}

TEST_CASE("The checker notices a stock that there is none of") {
  CuttingPlan plan = samplePlan();
  plan.patterns[0].stock = 3;
  CHECK(notices(plan, "is no pattern of this list"));
}

TEST_CASE("The checker notices a shorter stock than the pattern needs") {
  const CuttingList list = {{{100}, {50}}, 0, 0, {{60, 1}}};
  CuttingPlan plan = cutStock(list).value();
  plan.patterns[0].stock = 1;
  CHECK(checkCutting(list, plan).text().find("is longer than its stock") != std::string::npos);
}

TEST_CASE("The checker notices the kerf, and the end trim, that a pattern leaves no room for") {
  const CuttingList list = {{{100}}, 0, 0, {{50, 2}}};
  const CuttingPlan plan = cutStock(list).value();
  CHECK(checkCutting(list, plan).text().empty());
  CuttingList sawn = list, trimmed = list;
  sawn.kerf = 1;
  trimmed.endTrim = 1;
  CHECK(checkCutting(sawn, plan).text().find("is longer than its stock") != std::string::npos);
  CHECK(checkCutting(trimmed, plan).text().find("is longer than its stock") != std::string::npos);
}

TEST_CASE("The checker notices a supply that is overdrawn") {
  const CuttingList list = {{{100, 0, 2}, {100, 7}}, 0, 0, {{60, 4}}};
  const CuttingPlan plan = cutStock(list).value();
  CHECK(plan.total == 14);
  CHECK(checkCutting(list, plan).text().empty());
  CuttingList less = list;
  less.stocks[0].supply = 1;
  CHECK(checkCutting(less, plan).text().find("has a smaller supply") != std::string::npos);
}

TEST_CASE("The checker notices a pattern that is there twice") {
  CuttingPlan plan = samplePlan();
  plan.patterns.push_back(plan.patterns[0]);
  CHECK(notices(plan, "is there twice"));
}

TEST_CASE("The checker notices a total that is not the sum") {
  CuttingPlan plan = samplePlan();
  ++plan.total;
  CHECK(notices(plan, "total: is"));
}

TEST_CASE("The checker notices a point too many for a length, in each list") {
  for (std::size_t l = 0; l < samplePlan().proof.size(); ++l) {
    for (std::size_t i = 0; i < sampleList().demands.size(); ++i) {
      CuttingPlan plan = samplePlan();
      ++plan.proof[l].points[i];
      CHECK(!complaintsOf(plan).empty());
    }
  }
}

TEST_CASE("The checker notices equal lengths that count differently") {
  CuttingPlan plan = samplePlan();
  ++plan.proof[0].points[3];
  CHECK(notices(plan, "gives equal lengths different points"));
}

TEST_CASE("The checker notices a most that is lower, or higher, than the most") {
  for (const int by : {-1, 1}) {
    for (std::size_t k = 0; k < sampleList().stocks.size(); ++k) {
      CuttingPlan plan = samplePlan();
      plan.proof[0].mostPerStock[k] += by;
      CHECK(notices(plan, "holds"));
    }
  }
}

TEST_CASE("The checker notices a bound that nothing proves") {
  CuttingPlan plan = samplePlan();
  ++plan.bound;
  CHECK(notices(plan, "nothing refutes the stocks"));
  CHECK(notices(plan, "is less than the bound"));
}

TEST_CASE("The checker notices a price list that is missing") {
  for (std::size_t l = 0; l < samplePlan().proof.size(); ++l) {
    CuttingPlan plan = samplePlan();
    plan.proof.erase(plan.proof.begin() + static_cast<std::ptrdiff_t>(l));
    CHECK(notices(plan, "nothing refutes the stocks"));
  }
}

TEST_CASE("The checker notices a search that missed what serves") {
  const CuttingList list = {{{100}}, 0, 0, {{50, 4}}};
  CuttingPlan plan = cutStock(list).value();
  CHECK(plan.total == 2);
  plan.patterns = {{0, 4, {1}}};
  plan.total = plan.bound = 4;
  plan.proof.clear();
  plan.provedBySearch = true;
  CHECK(checkCutting(list, plan).text().find("do serve") != std::string::npos);
}

}  // namespace ribwright::fuzz
