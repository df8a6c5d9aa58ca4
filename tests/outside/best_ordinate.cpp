// GLPK, which knows nothing of sheets, finds the ordinate that keeps farthest from all limits of a row's holes; the row
// is drilled at the mark of the tape nearest to it.
//
//   the most t with  low + t <= s <= high - t  for every hole of the row
#include <glpk.h>

#include <catch2/catch.hpp>
#include <memory>

#include "tests/fuzz/surveyed_walls.h"

namespace ribwright::fuzz {
namespace {

constexpr int kS = 1, kT = 2;  // columns

class Programme {
 public:
  explicit Programme(Nm origin) : problem_(glp_create_prob()), origin_(origin) {
    glp_term_out(GLP_OFF);
    glp_set_obj_dir(problem_.get(), GLP_MAX);
    glp_add_cols(problem_.get(), 2);
    glp_set_col_bnds(problem_.get(), kS, GLP_FR, 0, 0);
    glp_set_col_bnds(problem_.get(), kT, GLP_FR, 0, 0);
    glp_set_obj_coef(problem_.get(), kT, 1);
  }

  void keep(Nm low, Nm high) {
    limit(-1, GLP_LO, low);
    limit(1, GLP_UP, high);
  }

  // s, from the origin: in rational numbers throughout. It is half a whole number, so that a double holds it.
  double best() {
    glp_simplex(problem_.get(), nullptr);
    REQUIRE(glp_exact(problem_.get(), nullptr) == 0);
    REQUIRE(glp_get_status(problem_.get()) == GLP_OPT);
    return glp_get_col_prim(problem_.get(), kS);
  }

 private:
  // s + sign t against a bound.
  void limit(int sign, int kind, Nm bound) {
    const int row = glp_add_rows(problem_.get(), 1);
    const auto from = static_cast<double>(bound - origin_);
    glp_set_row_bnds(problem_.get(), row, kind, from, from);
    const int columns[] = {0, kS, kT};
    const double factors[] = {0, 1, static_cast<double>(sign)};
    glp_set_mat_row(problem_.get(), row, 2, columns, factors);
  }

  struct Delete {
    void operator()(glp_prob* problem) const { glp_delete_prob(problem); }
  };
  std::unique_ptr<glp_prob, Delete> problem_;
  Nm origin_;
};

// Twice the distance from a mark to the best ordinate; absent where steel upright past all holes leaves it free.
std::optional<Nm> twiceOff(const MeasuredWall& wall, const DrillBatch& batch, const BatchRow& row) {
  const Nm mark = row.s.nanometres();
  Programme programme(mark);
  bool free = true;
  for (const std::int32_t piece : batch.pieces) {
    for (const DrilledHole& hole : wall.sheet(piece)) {
      if (hole.row != drilledRow(row) || hole.upright) continue;
      programme.keep(hole.low, hole.high);
      free = false;
    }
  }
  if (free) return std::nullopt;
  const double twice = 2 * programme.best();
  const Nm whole = static_cast<Nm>(twice);
  REQUIRE(static_cast<double>(whole) == twice);
  return whole < 0 ? -whole : whole;
}

}  // namespace

TEST_CASE("A row is drilled at the mark nearest to the ordinate that keeps farthest from its limits") {
  SurveyReport report;
  int rows = 0, several = 0;
  for (int i = 0; i < 400; ++i) {
    const Job job = smallSurveyedWall(i);
    Complaints complaints;
    eachMeasuredWall(job, plan(job), [&](const MeasuredWall& wall, const WallPlan& planned) {
      for (const DrillBatch& batch : planned.batches) {
        for (std::size_t r = 0; r < batch.rows.size(); ++r) {
          const auto off = twiceOff(wall, batch, batch.rows[r]);
          if (!off) continue;
          ++rows;
          several += batch.rows[r].holes.size() > 1;
          complaints.check(batch.rows[r].s.nanometres() % wall.tapeStep() == 0, whereIn(batch, r) + ": no mark");
          complaints.check(*off <= wall.tapeStep(), whereIn(batch, r) + ": another mark is nearer");
        }
      }
    });
    if (report.add(i, job, complaints.text())) return;
  }
  CHECK(rows > 1000);
  CHECK(several > 1000);
}

}  // namespace ribwright::fuzz
