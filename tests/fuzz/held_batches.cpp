// A batch is cleared exactly when nothing speaks against it: pattern confirmed, girts measured, their sections stated,
// chalk line where the sheets end, rows on steel and off other screws, no stop. A held one says why, and what to do.
#include <algorithm>
#include <cstdlib>
#include <map>
#include <set>

#include "core/job/pattern_numbers.h"
#include "tests/fuzz/drilled_heights.h"
#include "tests/fuzz/surveyed_walls.h"

namespace ribwright::fuzz {
namespace {

using Why = HoldReason::Why;
using Whys = std::set<Why>;

class StatusCheck {
 public:
  StatusCheck(const MeasuredWall& wall, const WallPlan& planned, Complaints& complaints)
      : wall_(wall), planned_(planned), heights_(wall, planned.batches), complaints_(complaints) {}

  void all() {
    for (const DrillBatch& batch : planned_.batches) {
      Whys due = whysOf(batch);
      // Where nobody drills, nobody need know.
      if (!isDrilled() && !has(batch, Why::RowNearHole)) due.erase(Why::RowNearHole);
      for (const Why why : due) {
        if (!complaints_.check(has(batch, why), batch.id + " is not held for reason " + number(why))) continue;
      }
      for (const HoldReason& reason : batch.reasons) {
        ++reasons[reason.why];
        complaints_.check(due.count(reason.why) == 1, batch.id + " is held for reason " + number(reason.why));
      }
      complaints_.check(batch.isCleared() == due.empty(), batch.id + ": cleared or held without reason");
      checkRemedies(batch);
    }
  }

  std::map<Why, int> reasons;
  int moved = 0, asked = 0;  // girts, and engineers about them

 private:
  static std::string number(Why why) { return std::to_string(static_cast<int>(why)); }
  static bool has(const DrillBatch& batch, Why why) {
    return std::any_of(batch.reasons.begin(), batch.reasons.end(), [&](const HoldReason& r) { return r.why == why; });
  }

  // Something on the wall is measured, or could be drilled but for such rows.
  bool isDrilled() const {
    return std::any_of(planned_.batches.begin(), planned_.batches.end(), [](const DrillBatch& batch) {
      const bool other = std::any_of(batch.reasons.begin(), batch.reasons.end(), [](const HoldReason& reason) {
        return reason.why != Why::RowNearHole && reason.why != Why::Stop;
      });
      return !other || std::any_of(batch.rows.begin(), batch.rows.end(), [](const BatchRow& r) { return r.surveyed; });
    });
  }

  Whys whysOf(const DrillBatch& batch) const {
    Whys whys;
    if (!isConfirmed(batch.lane.run)) whys.insert(Why::NoConfirmation);
    if (!wall_.rowsHold({batch.pieces.begin(), batch.pieces.end()})) whys.insert(Why::RowDoesNotHold);
    if (isCrowded(batch)) whys.insert(Why::RowNearHole);
    if (isStopped(batch)) whys.insert(Why::Stop);
    for (const std::int32_t piece : batch.pieces) {
      if (wall_.endAsHung(piece) != nm(wall_.piece(piece).bottom)) whys.insert(Why::Chalk);
      for (const DrilledHole& drilled : wall_.sheet(piece)) addSteel(drilled, whys);
    }
    return whys;
  }

  void addSteel(const DrilledHole& drilled, Whys& whys) const {
    const Hole& hole = wall_.holes().holes[static_cast<std::size_t>(drilled.hole)];
    const SupportRow& row = wall_.holes().supports.rows[static_cast<std::size_t>(hole.row)];
    if (row.kind != SupportKind::Girt || drilled.upright) return;
    for (const std::int32_t index : row.stretches[static_cast<std::size_t>(hole.stretch)].girts) {
      if (!wall_.shiftOfGirt(index, nm(hole.u))) whys.insert(Why::NotMeasured);
      const Girt& girt = wall_.wall().girts[static_cast<std::size_t>(index)];
      if (!memberOf(wall_.job(), girt.member)) whys.insert(Why::NoCrossSection);
    }
  }

  // By plan sheet, name and date, and its numbers are still those.
  bool isConfirmed(int run) const {
    const std::string& id = wall_.holes().patterns[static_cast<std::size_t>(run)].pattern;
    for (const ScrewPattern& pattern : wall_.job().patterns) {
      if (pattern.id != id) continue;
      const auto& by = pattern.confirmation;
      return by && !by->planSheet.empty() && !by->by.empty() && !by->date.empty() &&
             by->numbers == numbersOf(pattern, wall_.job().screws);
    }
    return false;
  }

  bool isCrowded(const DrillBatch& batch) const {
    for (const std::int32_t piece : batch.pieces) {
      for (const DrilledHole& drilled : wall_.sheet(piece)) {
        const auto row = std::find_if(batch.rows.begin(), batch.rows.end(),
                                      [&](const BatchRow& one) { return drilledRow(one) == drilled.row; });
        if (row == batch.rows.end()) continue;
        const bool elsewhere = nm(row->s) != drilled.planned;
        if (elsewhere && heights_.isCrowded(drilled.hole, nm(wall_.piece(piece).bottom + row->s))) return true;
      }
    }
    return false;
  }

  // By a stop that names one of its sheets, or that names none of the wall's. A chalk line off the sheets' ends holds
  // only what hangs by it.
  bool isStopped(const DrillBatch& batch) const {
    const auto names = [&](const std::string& mark, int piece) {
      const std::string& own = wall_.piece(piece).mark;
      return own == mark || own.substr(0, own.find('.')) == mark;
    };
    return std::any_of(planned_.findings.begin(), planned_.findings.end(), [&](const Finding& finding) {
      if (finding.grade != Grade::Stop || finding.id == "chalk-off-sheets") return false;
      bool ofSheet = false;
      for (std::size_t i = 0; i < planned_.layout.pieces.size(); ++i)
        ofSheet = ofSheet || (!finding.mark.empty() && names(finding.mark, static_cast<int>(i)));
      return !ofSheet || std::any_of(batch.pieces.begin(), batch.pieces.end(),
                                     [&](std::int32_t piece) { return names(finding.mark, piece); });
    });
  }

  // At least one for each reason, cheapest first.
  void checkRemedies(const DrillBatch& batch) {
    std::vector<int> remedies(batch.reasons.size());
    for (std::size_t i = 0; i < batch.remedies.size(); ++i) {
      const Remedy& remedy = batch.remedies[i];
      const auto reason = static_cast<std::size_t>(remedy.reason);
      if (complaints_.check(reason < remedies.size(), batch.id + ": a remedy of no reason")) ++remedies[reason];
      complaints_.check(i == 0 || batch.remedies[i - 1].what <= remedy.what, batch.id + ": remedies out of order");
    }
    for (const Remedy& remedy : batch.remedies) checkMove(batch, remedy);
    complaints_.check(std::count(remedies.begin(), remedies.end(), 0) == 0, batch.id + ": a reason without a remedy");
  }

  // Nobody moves a girt beyond its clip's slot or 1/2 in without the engineer; within both he need not be asked.
  void checkMove(const DrillBatch& batch, const Remedy& remedy) {
    const bool moves = remedy.what == Remedy::What::MoveGirt;
    if (!moves && remedy.what != Remedy::What::AskEngineer) return;
    const auto& girts = wall_.wall().girts;
    const auto girt = std::find_if(girts.begin(), girts.end(), [&](const Girt& g) { return g.id == remedy.name; });
    if (!complaints_.check(girt != girts.end(), batch.id + ": a girt to be moved that is not there")) return;
    const Nm by = std::abs(nm(remedy.by));
    const bool may = girt->clipSlot && by <= nm(*girt->clipSlot) && by <= kInch / 2;
    complaints_.check(moves == may, batch.id + ": who moves " + remedy.name + " by " + std::to_string(by));
    ++(moves ? moved : asked);
  }

  const MeasuredWall& wall_;
  const WallPlan& planned_;
  DrilledHeights heights_;
  Complaints& complaints_;
};

bool noneCleared(const Job& job) {
  const Plan planned = plan(job);
  return std::all_of(planned.walls.begin(), planned.walls.end(), [](const auto& wall) {
    return std::none_of(wall->batches.begin(), wall->batches.end(),
                        [](const DrillBatch& batch) { return batch.isCleared(); });
  });
}

}  // namespace

TEST_CASE("A batch is held when something speaks against it, and not otherwise") {
  std::map<Why, int> reasons;
  int moved = 0, asked = 0;
  eachSurveyed(1200, 300, [&](const Job& job) {
    Complaints complaints;
    eachMeasuredWall(job, plan(job), [&](const MeasuredWall& wall, const WallPlan& planned) {
      complaints.at("wall " + wall.wall().letter);
      StatusCheck check(wall, planned, complaints);
      check.all();
      for (const auto& [why, many] : check.reasons) reasons[why] += many;
      moved += check.moved;
      asked += check.asked;
    });
    return complaints;
  });
  for (const Why why : {Why::NoConfirmation, Why::NotMeasured, Why::NoCrossSection, Why::RowDoesNotHold,
                        Why::RowNearHole, Why::Chalk, Why::Stop}) {
    INFO("reason " << static_cast<int>(why));
    CHECK(reasons[why] >= 20);
  }
  CHECK(moved >= 20);
  CHECK(asked >= 20);
}

TEST_CASE("No batch is cleared when nobody confirmed its pattern, or its numbers changed since") {
  eachSurveyed(200, 40, [](const Job& job) {
    Complaints complaints;
    Job without = job, changed = job;
    for (ScrewPattern& pattern : without.patterns) pattern.confirmation.reset();
    for (Screw& screw : changed.screws) screw.washer += Length::nanometres(1);
    complaints.check(noneCleared(without), "cleared without a confirmation");
    complaints.check(noneCleared(changed), "cleared by a confirmation that fell");
    return complaints;
  });
}

}  // namespace ribwright::fuzz
