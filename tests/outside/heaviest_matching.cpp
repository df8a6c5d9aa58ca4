// GLPK, which knows nothing of blossoms, pairs things so that most is saved, as a whole-number programme:
//
//   the most  sum of saving x chosen  with  at each thing no more than one chosen,  chosen 0 or 1
//
// then, with that much saved, the most pairs. Among an odd number of things no more than half of the others of one are
// paired with each other: that holds of any such set, and rows that say so of some spare the programme a long search.
#include <glpk.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <memory>
#include <set>

#include "core/cutting/heaviest_pairs.h"
#include "core/cutting/lowest_pairs.h"
#include "tests/fuzz/random_pairs.h"

namespace ribwright::fuzz {
namespace {

struct Delete {
  void operator()(glp_prob* problem) const { glp_delete_prob(problem); }
};

// `worth` of each saving; small whole numbers, so that doubles hold all sums.
template <class Worth>
double most(int count, const std::vector<PairSaving>& savings, const Worth& worth) {
  std::unique_ptr<glp_prob, Delete> problem(glp_create_prob());
  glp_term_out(GLP_OFF);
  glp_set_obj_dir(problem.get(), GLP_MAX);
  glp_add_rows(problem.get(), count);
  for (int row = 1; row <= count; ++row) glp_set_row_bnds(problem.get(), row, GLP_UP, 0, 1);
  for (const PairSaving& saving : savings) {
    const int column = glp_add_cols(problem.get(), 1);
    glp_set_col_kind(problem.get(), column, GLP_BV);
    glp_set_obj_coef(problem.get(), column, worth(saving));
    const int rows[] = {0, saving.a + 1, saving.b + 1};
    const double ones[] = {0, 1, 1};
    glp_set_mat_col(problem.get(), column, 2, rows, ones);
  }
  std::vector<WeightedPair> pairs;
  for (const PairSaving& saving : savings) pairs.push_back({saving.a, saving.b, PairWeight(worth(saving))});
  for (const OddSet& set : heaviestPairs(count, pairs).oddSets) {
    REQUIRE(set.members.size() % 2 == 1);
    const auto holds = [&](int thing) { return std::count(set.members.begin(), set.members.end(), thing) == 1; };
    std::vector<int> columns{0};
    for (std::size_t i = 0; i < savings.size(); ++i) {
      if (holds(savings[i].a) && holds(savings[i].b)) columns.push_back(static_cast<int>(i) + 1);
    }
    const std::vector<double> ones(columns.size(), 1);
    const int row = glp_add_rows(problem.get(), 1);
    glp_set_row_bnds(problem.get(), row, GLP_UP, 0, static_cast<double>(set.members.size() / 2));
    glp_set_mat_row(problem.get(), row, static_cast<int>(columns.size()) - 1, columns.data(), ones.data());
  }
  glp_iocp options;
  glp_init_iocp(&options);
  options.presolve = GLP_ON;
  options.gmi_cuts = options.cov_cuts = GLP_ON;
  REQUIRE(glp_intopt(problem.get(), &options) == 0);
  REQUIRE(glp_mip_status(problem.get()) == GLP_OPT);
  return glp_mip_obj_val(problem.get());
}

}  // namespace

TEST_CASE("pairs save as much, and are as many, as a whole-number programme finds") {
  int largest = 0;
  for (int index = 0; index < 60; ++index) {
    Dice dice(73, index);
    const int count = dice.small(20, 60);
    auto savings = randomSavings(dice, count);
    if (savings.empty()) continue;
    for (PairSaving& saving : savings) saving.saved = 1 + saving.saved % 997;
    std::int64_t saved = 0;
    const auto pairs = lowestPairs(count, savings);
    std::set<int> paired;
    for (const auto& [a, b] : pairs) {
      REQUIRE(paired.insert(a).second);
      REQUIRE(paired.insert(b).second);
      const auto found = std::find_if(savings.begin(), savings.end(), [&, one = a, other = b](const PairSaving& s) {
        return s.a == one && s.b == other;
      });
      REQUIRE(found != savings.end());
      saved += found->saved;
    }
    INFO("index " << index << ", " << count << " things, " << savings.size() << " savings");
    const double ranked = most(count, savings, [](const PairSaving& s) { return double(s.saved * 64 + 1); });
    REQUIRE(double(saved * 64) + double(pairs.size()) == Approx(ranked).epsilon(1e-12));
    largest = std::max(largest, count);
  }
  CHECK(largest > 50);
}

}  // namespace ribwright::fuzz
