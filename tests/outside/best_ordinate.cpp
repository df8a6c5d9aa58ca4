// GLPK, which knows nothing of sheets, finds the ordinate that keeps farthest from all limits of a row's holes; the row
// is drilled at the mark of the tape nearest to it. A base's or eave's row is drilled as far off that as the plans have
// it off the middle of its face, or at the last mark before a limit.
//
//   the most t with  low + t <= s <= high - t  for every hole of the row
#include <glpk.h>

#include <algorithm>
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

// What the plans have between a row and the middle of its face, twice, upward: a girt's is its middle.
Nm twiceOffMiddle(const Wall& wall, const BatchRow& row) {
  const EdgeSupport* edge = row.key.kind == HoleKind::Base ? &wall.baseAngle : nullptr;
  if (row.key.kind == HoleKind::Eave) edge = &wall.eavePurlin;
  if (!edge) return 0;
  const Nm off = (edge->row * 2 - edge->face - edge->bend).nanometres();
  return row.key.kind == HoleKind::Base ? off : -off;
}

// Twice the distance from a mark up to the best ordinate; absent where steel upright past all holes leaves it free.
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
  return whole;
}

// The mark is the nearest to an ordinate that lies twice / 2 above it, or as near as the row's limits let it be.
bool isNearest(const BatchRow& row, Nm twice, Nm step) {
  if (twice <= step && twice >= -step) return true;
  const Length next = row.s + Length::nanometres(twice > 0 ? step : -step);
  return row.s >= row.low && row.s <= row.high && (next < row.low || next > row.high);
}

class OrdinateCheck {
 public:
  void all(const MeasuredWall& wall, const std::vector<DrillBatch>& batches) {
    for (const DrillBatch& batch : batches) {
      for (std::size_t r = 0; r < batch.rows.size(); ++r) {
        const auto best = twiceOff(wall, batch, batch.rows[r]);
        if (!best) continue;
        const Nm off = *best + twiceOffMiddle(wall.wall(), batch.rows[r]);
        ++rows;
        several += batch.rows[r].holes.size() > 1;
        close += std::abs(off) + 1 == wall.tapeStep();
        apart += twiceOffMiddle(wall.wall(), batch.rows[r]) != 0;
        complaints.check(batch.rows[r].s.nanometres() % wall.tapeStep() == 0, whereIn(batch, r) + ": no mark");
        complaints.check(isNearest(batch.rows[r], off, wall.tapeStep()),
                         whereIn(batch, r) + ": another mark is nearer");
      }
    }
  }

  Complaints complaints;
  int rows = 0, several = 0;
  int apart = 0;  // rows that the plans have off the middle of their face
  int close = 0;  // half a nanometre on, and another mark were as near
};

// All readings of the girt of a row moved together, so that its best ordinate comes to lie half a nanometre above the
// middle between two marks. False: it lies on whole nanometres, and there it stays.
bool moveBetweenMarks(Wall& wall, const MeasuredWall& measured, const BatchRow& row) {
  const Nm twice = (row.low + row.high).nanometres(), step = measured.tapeStep();
  const auto of = std::find_if(wall.survey.girts.begin(), wall.survey.girts.end(),
                               [&](const GirtSurvey& survey) { return survey.girt == row.support; });
  if (twice % 2 == 0 || of == wall.survey.girts.end()) return false;
  const Nm up = (step + 1 - twice % (2 * step)) / 2;
  for (GirtReading& reading : of->readings) reading.height += Length::nanometres(up);
  return true;
}

}  // namespace

TEST_CASE("A row is drilled at the mark nearest to the ordinate that keeps farthest from its limits") {
  SurveyReport report;
  int rows = 0, several = 0, apart = 0;
  for (int i = 0; i < 400; ++i) {
    const Job job = smallSurveyedWall(i);
    OrdinateCheck check;
    eachMeasuredWall(job, plan(job),
                     [&](const MeasuredWall& wall, const WallPlan& planned) { check.all(wall, planned.batches); });
    rows += check.rows;
    several += check.several;
    apart += check.apart;
    if (report.add(i, job, check.complaints.text())) return;
  }
  CHECK(rows > 1000);
  CHECK(several > 1000);
  CHECK(apart > 50);
}

TEST_CASE("A row is drilled at the mark nearest to it where half a nanometre decides which that is") {
  SurveyReport report;
  int close = 0;
  for (int i = 0; i < 400; ++i) {
    Job job = smallSurveyedWall(i);
    const Plan planned = plan(job);
    const WallLayout& layout = planned.walls.front()->layout;
    const WallHoles& holes = planned.walls.front()->holes;
    Wall& wall = job.walls.front();
    bool moved = false;
    {
      const Job before = job;
      const MeasuredWall measured(before, before.walls.front(), layout, holes);
      for (const DrillBatch& batch : planned.walls.front()->batches) {
        for (const BatchRow& row : batch.rows) {
          if (!moved && row.surveyed && row.key.kind == HoleKind::Girt) moved = moveBetweenMarks(wall, measured, row);
        }
      }
    }
    if (!moved) continue;
    OrdinateCheck check;
    check.all(MeasuredWall(job, wall, layout, holes), drillBatches(job, wall, layout, holes));
    close += check.close;
    if (report.add(i, job, check.complaints.text())) return;
  }
  CHECK(close > 20);
}

}  // namespace ribwright::fuzz
