// One reading of one girt pushed until a sheet's row holds no more: to the last nanometre at which it holds nothing
// changes but ordinates; one nanometre on exactly those sheets are held whose rows then hold nowhere.
//
// Whether a sheet's rows hold is its own affair: sheets that do not hold are stacked with none. What a reading does not
// reach stays as it was: batches up to the one before the first sheet that it reaches, batches of the same sheets, rows
// of other girts.
#include <algorithm>
#include <optional>
#include <set>

#include "tests/fuzz/surveyed_walls.h"

namespace ribwright::fuzz {
namespace {

using Sheets = std::set<int>;

class PushedReading {
 public:
  PushedReading(const Job& job, const WallPlan& planned, std::size_t survey, std::size_t reading)
      : job_(job), layout_(planned.layout), holes_(planned.holes), survey_(survey), reading_(reading) {
    const Wall& wall = job.walls.front();
    const auto& stations = wall.survey.girts[survey].readings;
    from_ = reading > 0 ? stations[reading - 1].u : stations[reading].u - Length::nanometres(1);
    to_ = reading + 1 < stations.size() ? stations[reading + 1].u : stations[reading].u + Length::nanometres(1);
    for (std::size_t i = 0; i < holes_.holes.size(); ++i) {
      if (!goesByIt(holes_.holes[i])) continue;
      reachedHoles_.insert(static_cast<int>(i));
      const Hole& hole = holes_.holes[i];
      reached_.insert(hole.pieces.begin(), hole.pieces.begin() + hole.sheets);
    }
  }

  const Sheets& reached() const { return reached_; }
  const std::set<int>& reachedHoles() const { return reachedHoles_; }

  Job pushed(Nm by) const {
    Job job = job_;
    job.walls.front().survey.girts[survey_].readings[reading_].height += Length::nanometres(by);
    return job;
  }

  // Sheets whose own rows hold nowhere, by the checker's reckoning.
  Sheets failing(Nm by) const {
    const Job job = pushed(by);
    const MeasuredWall wall(job, job.walls.front(), layout_, holes_);
    Sheets failing;
    for (const std::vector<int>& lane : wall.lanes()) {
      for (const int piece : lane) {
        if (!wall.rowsHold({piece})) failing.insert(piece);
      }
    }
    return failing;
  }

  std::vector<DrillBatch> batches(Nm by) const {
    const Job job = pushed(by);
    return drillBatches(job, job.walls.front(), layout_, holes_);
  }

  // The last push in this direction at which the same sheets hold as now; nothing where no push within `most` matters.
  std::optional<Nm> limit(int direction, Nm most) const {
    const Sheets now = failing(0);
    if (failing(direction * most) == now) return std::nullopt;
    Nm within = 0, beyond = most;
    while (beyond - within > 1) {
      const Nm middle = within + (beyond - within) / 2;
      (failing(direction * middle) == now ? within : beyond) = middle;
    }
    return direction * within;
  }

 private:
  bool goesByIt(const Hole& hole) const {
    if (hole.kind != HoleKind::Girt && hole.kind != HoleKind::EndLap) return false;
    if (hole.u <= from_ || hole.u >= to_) return false;
    const Wall& wall = job_.walls.front();
    const Stretch& stretch =
        holes_.supports.rows[static_cast<std::size_t>(hole.row)].stretches[static_cast<std::size_t>(hole.stretch)];
    return stretch.steel == Stretch::Steel::Own &&
           std::any_of(stretch.girts.begin(), stretch.girts.end(), [&](std::int32_t girt) {
             return wall.girts[static_cast<std::size_t>(girt)].id == wall.survey.girts[survey_].girt;
           });
  }

  const Job& job_;
  const WallLayout& layout_;
  const WallHoles& holes_;
  std::size_t survey_, reading_;
  Length from_, to_;  // u: it is felt strictly between
  Sheets reached_;
  std::set<int> reachedHoles_;
};

// Sheets of batches one of whose rows holds nowhere.
Sheets heldForRows(const std::vector<DrillBatch>& batches) {
  Sheets held;
  for (const DrillBatch& batch : batches) {
    const bool row = std::any_of(batch.reasons.begin(), batch.reasons.end(), [](const HoldReason& reason) {
      return reason.why == HoldReason::Why::RowDoesNotHold;
    });
    if (row) held.insert(batch.pieces.begin(), batch.pieces.end());
  }
  return held;
}

// Reasons but for those that a neighbour's screws give.
std::vector<HoldReason> ownReasons(const DrillBatch& batch) {
  std::vector<HoldReason> own = batch.reasons;
  std::erase_if(own, [](const HoldReason& reason) { return reason.why == HoldReason::Why::RowNearHole; });
  return own;
}

class StayCheck {
 public:
  StayCheck(const PushedReading& push, const std::vector<DrillBatch>& before, const std::vector<DrillBatch>& after,
            Complaints& complaints)
      : push_(push), before_(before), after_(after), complaints_(complaints) {}

  void all() {
    for (const DrillBatch& batch : before_) {
      const DrillBatch* same = withSheets(batch.pieces);
      if (!isReached(batch) && isBeforeAll(batch))
        complaints_.check(same, batch.id + ": cut anew, and the reading is not felt there");
      if (!same) continue;
      if (!isReached(batch)) {
        ++kept;
        complaints_.check(same->rows == batch.rows && ownReasons(*same) == ownReasons(batch),
                          batch.id + ": other rows or reasons, and the reading is not felt there");
      } else {
        checkOtherRows(batch, *same);
      }
    }
  }

  int kept = 0;

 private:
  bool isReached(std::int32_t piece) const { return push_.reached().count(piece) == 1; }
  bool isReached(const DrillBatch& batch) const {
    return std::any_of(batch.pieces.begin(), batch.pieces.end(), [&](std::int32_t piece) { return isReached(piece); });
  }
  const DrillBatch* withSheets(const std::vector<std::int32_t>& pieces) const {
    for (const DrillBatch& batch : after_) {
      if (batch.pieces == pieces) return &batch;
    }
    return nullptr;
  }
  // No sheet of its lane up to the one that follows it is reached.
  bool isBeforeAll(const DrillBatch& batch) const {
    std::int32_t next = -1;
    for (const DrillBatch& other : before_) {
      if (other.lane != batch.lane) continue;
      if (other.pieces.front() < batch.pieces.front() && isReached(other)) return false;
      if (other.pieces.front() > batch.pieces.back() && (next < 0 || other.pieces.front() < next))
        next = other.pieces.front();
    }
    return next < 0 || !isReached(next);
  }
  void checkOtherRows(const DrillBatch& batch, const DrillBatch& same) {
    for (const BatchRow& row : batch.rows) {
      const bool felt = std::any_of(row.holes.begin(), row.holes.end(),
                                    [&](std::int32_t hole) { return push_.reachedHoles().count(hole) == 1; });
      if (felt) continue;
      const auto there =
          std::find_if(same.rows.begin(), same.rows.end(), [&](const BatchRow& r) { return r.key == row.key; });
      complaints_.check(there != same.rows.end() && *there == row, batch.id + ": a row of another girt moved");
    }
  }

  const PushedReading& push_;
  const std::vector<DrillBatch>&before_, &after_;
  Complaints& complaints_;
};

}  // namespace

TEST_CASE("A reading pushed past its limit holds exactly the sheets whose rows then hold nowhere") {
  SurveyReport report;
  int pushes = 0, kept = 0, cleared = 0;
  for (int i = 0; i < 900; ++i) {
    Dice dice(kSurveySeed + 7, i);
    const Job job = smallSurveyedWall(i);
    const Plan whole = plan(job);
    const WallSurvey& survey = job.walls.front().survey;
    std::vector<std::pair<std::size_t, std::size_t>> readings;
    for (std::size_t g = 0; g < survey.girts.size(); ++g) {
      for (std::size_t r = 0; r < survey.girts[g].readings.size(); ++r) {
        if (survey.girts[g].girt != "eave") readings.push_back({g, r});
      }
    }
    if (readings.empty()) continue;
    const auto [girt, reading] = dice.of(readings);
    const PushedReading push(job, *whole.walls.front(), girt, reading);
    if (push.reached().empty()) continue;
    const int direction = dice.of({-1, 1});
    const auto limit = push.limit(direction, Length::inches(4).nanometres());
    if (!limit) continue;
    ++pushes;
    Complaints complaints;
    const Nm past = *limit + direction;
    const auto now = push.batches(0), within = push.batches(*limit), beyond = push.batches(past);
    complaints.check(heldForRows(now) == push.failing(0),
                     "as measured: other sheets held than those that hold nowhere");
    complaints.check(heldForRows(within) == heldForRows(now), "held or cleared within its limit");
    complaints.check(heldForRows(beyond) == push.failing(past),
                     "past its limit: other sheets than those that hold nowhere");
    complaints.check(heldForRows(beyond) != heldForRows(within), "nothing changed past its limit");
    for (const int piece : push.failing(past)) {
      const DrillBatch* batch = batchOf(beyond, piece);
      complaints.check(batch && !batch->isCleared() && batch->pieces.size() == 1, "not held alone past its limit");
      const DrillBatch* was = batchOf(within, piece);
      if (was && was->isCleared()) ++cleared;
    }
    for (const auto* after : {&within, &beyond}) {
      StayCheck stay(push, now, *after, complaints);
      stay.all();
      kept += stay.kept;
    }
    if (report.add(i, job, complaints.text())) return;
  }
  CHECK(pushes > 200);
  CHECK(kept > 200);
  CHECK(cleared > 100);
}

}  // namespace ribwright::fuzz
