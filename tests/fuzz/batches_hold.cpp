// Every hole of a cleared batch bites on steel, wherever in a stick check's interval that steel stands: one hole after
// the other, from the readings on both sides of it, in whole numbers.
//
// Measured faces are rounded to the nanometre, so that a hole may lie half of one too near.
#include <algorithm>
#include <map>
#include <set>

#include "tests/fuzz/drilled_heights.h"
#include "tests/fuzz/surveyed_walls.h"

namespace ribwright::fuzz {
namespace {

// How far an edge stands above the plans: above / below.
struct Exact {
  Int128 above = 0, below = 1;
};

// One reading against the plans, and half its interval.
struct Station {
  Nm u = 0, above = 0, within = 0;
};

// With both ends of each interval: lowest first. Empty where nothing is known.
std::vector<Exact> shiftsAt(const std::vector<Station>& stations, Nm u) {
  std::vector<Exact> both;
  for (std::size_t i = 0; i < stations.size(); ++i) {
    const Station& b = stations[i];
    const Station& a = i == 0 ? b : stations[i - 1];
    if (u < a.u || b.u < u || (i == 0 && u != b.u)) continue;
    for (const int end : {-1, 1}) {
      const Int128 first = a.above + end * a.within, last = b.above + end * b.within;
      if (a.u == b.u) {
        both.push_back({last, 1});
      } else {
        both.push_back({first * (b.u - u) + last * (u - a.u), b.u - a.u});
      }
    }
    return both;
  }
  return both;
}

class HoldCheck {
 public:
  HoldCheck(const MeasuredWall& wall, const std::vector<DrillBatch>& batches, Complaints& complaints)
      : wall_(wall), batches_(batches), heights_(wall, batches), complaints_(complaints) {}

  void all() {
    checkStacks();
    for (const DrillBatch& batch : batches_) {
      checkHoles(batch);
      if (!batch.isCleared()) continue;
      ++cleared;
      for (std::size_t row = 0; row < batch.rows.size(); ++row) checkRow(batch, row);
    }
  }

  int cleared = 0, onGirts = 0, moved = 0;

 private:
  // Each sheet in one batch, the sheets of a batch one after the other in their lane, all of them of one mind.
  void checkStacks() {
    std::map<int, const DrillBatch*> of;
    for (const DrillBatch& batch : batches_) {
      for (const std::int32_t piece : batch.pieces) {
        complaints_.check(of.emplace(piece, &batch).second, "a sheet in two batches");
      }
      const std::vector<int> pieces(batch.pieces.begin(), batch.pieces.end());
      complaints_.check(wall_.mayShareAStack(pieces), batch.id + ": sheets that may not share a stack");
      checkPile(batch);
    }
    std::size_t stacked = 0;
    for (const std::vector<int>& lane : wall_.lanes()) {
      std::set<const DrillBatch*> done;
      const DrillBatch* last = nullptr;
      for (const int piece : lane) {
        const DrillBatch* batch = of.count(piece) == 1 ? of[piece] : nullptr;
        if (!complaints_.check(batch, wall_.piece(piece).mark + " is in no batch")) continue;
        ++stacked;
        if (batch == last) continue;
        complaints_.check(done.insert(batch).second, batch->id + ": its sheets do not follow one another");
        last = batch;
      }
    }
    complaints_.check(stacked == of.size(), "sheets in batches that have nothing to be drilled, or hang already");
  }

  // The same sheets, the longest lowest, of equally long ones the one hung last.
  void checkPile(const DrillBatch& batch) {
    std::vector<std::int32_t> pile = batch.stack;
    for (std::size_t i = 1; i < pile.size(); ++i) {
      const Piece &under = wall_.piece(pile[i - 1]), &over = wall_.piece(pile[i]);
      const bool right = under.blankLength > over.blankLength ||
                         (under.blankLength == over.blankLength && under.hangOrder > over.hangOrder);
      complaints_.check(right, batch.id + ": " + over.mark + " lies over " + under.mark);
    }
    std::sort(pile.begin(), pile.end());
    complaints_.check(pile == batch.pieces, batch.id + ": other sheets in its stack");
  }

  // Its rows are the holes that its sheets have, none else.
  void checkHoles(const DrillBatch& batch) {
    struct Asked {
      std::set<Nm> offsets;
      std::set<int> holes, sheets;
    };
    std::map<DrilledRow, Asked> asked;
    for (const std::int32_t piece : batch.pieces) {
      for (const DrilledHole& hole : wall_.sheet(piece)) {
        Asked& row = asked[hole.row];
        row.offsets.insert(hole.offset);
        row.holes.insert(hole.hole);
        row.sheets.insert(piece);
      }
    }
    complaints_.check(asked.size() == batch.rows.size(), batch.id + ": more or fewer rows than its sheets have");
    for (std::size_t i = 0; i < batch.rows.size(); ++i) {
      const BatchRow& row = batch.rows[i];
      const Asked& right = asked[drilledRow(row)];
      std::set<Nm> offsets;
      for (const Length offset : row.offsets) offsets.insert(nm(offset));
      complaints_.check(offsets == right.offsets && offsets.size() == row.offsets.size(),
                        whereIn(batch, i) + ": other offsets");
      complaints_.check(std::set<int>(row.holes.begin(), row.holes.end()) == right.holes,
                        whereIn(batch, i) + ": other holes");
      complaints_.check(row.sheets == static_cast<int>(right.sheets.size()), whereIn(batch, i) + ": other sheets");
    }
  }

  void checkRow(const DrillBatch& batch, std::size_t index) {
    const BatchRow& row = batch.rows[index];
    complaints_.check(nm(row.s) % wall_.tapeStep() == 0, whereIn(batch, index) + ": no mark of the tape");
    for (const std::int32_t piece : batch.pieces) {
      for (const DrilledHole& drilled : wall_.sheet(piece)) {
        if (drilled.row != drilledRow(row)) continue;
        where_ = whereIn(batch, index) + ", " + wall_.piece(piece).mark;
        const Hole& hole = wall_.holes().holes[static_cast<std::size_t>(drilled.hole)];
        checkOnSteel(hole, wall_.endAsHung(piece) + nm(row.s));
        const Nm planned = nm(wall_.piece(piece).bottom + row.s);
        if (planned == nm(hole.z)) continue;
        ++moved;
        complaints_.check(!heights_.isCrowded(drilled.hole, planned), where_ + ": too near an edge or another screw");
      }
    }
  }

  void checkOnSteel(const Hole& hole, Nm z) {
    const SupportRow& row = wall_.holes().supports.rows[static_cast<std::size_t>(hole.row)];
    const Stretch& stretch = row.stretches[static_cast<std::size_t>(hole.stretch)];
    if (stretch.steel != Stretch::Steel::Own) return;
    if (!complaints_.check(stretch.known, where_ + ": on steel of no known section")) return;
    if (row.kind == SupportKind::Girt) {
      for (const std::int32_t girt : stretch.girts) checkOnGirt(hole, z, girt);
    } else if (row.alongTop) {
      checkAlongTop(hole, z, stretch);
    } else {
      const bool base = row.kind == SupportKind::Base && wall_.wall().base.form != Base::Form::OnWall;
      checkOnFace(hole, z, nm(stretch.low), nm(stretch.high), base ? slab() : std::vector<Station>(), false);
    }
  }

  void checkOnGirt(const Hole& hole, Nm z, int index) {
    const Girt& girt = wall_.wall().girts[static_cast<std::size_t>(index)];
    const GirtFace face = statedGirtFace(wall_.job(), girt);
    ++onGirts;
    checkOnFace(hole, z, face.low, face.high, stationsOf(girt.id, [&](Nm) { return nm(girt.height); }), true);
  }

  void checkOnFace(const Hole& hole, Nm z, Nm low, Nm high, const std::vector<Station>& stations, bool needed) {
    std::vector<Exact> shifts = shiftsAt(stations, nm(hole.u));
    if (!complaints_.check(!needed || !shifts.empty(), where_ + ": on steel that was not measured")) return;
    if (shifts.empty()) shifts.push_back({});
    const Nm margin = wall_.margin(hole.screw);
    for (const Exact& shift : shifts) {
      const Int128 fromLow = 2 * (Int128(z - low - margin) * shift.below - shift.above) + shift.below;
      const Int128 fromHigh = 2 * (Int128(high - margin - z) * shift.below + shift.above) + shift.below;
      complaints_.check(fromLow >= 0, where_ + ": off the face's lower edge");
      complaints_.check(fromHigh >= 0, where_ + ": off the face's upper edge");
    }
  }

  // An eave purlin by its readings; a rake as planned, square to its slope. Heights along a slope are rounded.
  void checkAlongTop(const Hole& hole, Nm z, const Stretch& stretch) {
    const Segment& steel = wall_.face().steel.segmentAt(nm(hole.u), Side::Right);
    if (hole.kind == HoleKind::Eave) {
      const auto line = [&](Nm u) { return wall_.face().steel.heightAt(u, Side::Right); };
      const Nm low = steel.z0 + nm(stretch.low), high = steel.z0 + nm(stretch.high);
      checkOnFace(hole, z, low, high, stationsOf("eave", line), true);
      return;
    }
    const Int128 run = (Int128(steel.u1) - steel.u0) / 4, rise = (Int128(steel.z1) - steel.z0) / 4;
    const Int128 square = Int128(wall_.margin(hole.screw)) * wall_.margin(hole.screw) * (run * run + rise * rise);
    const Nm line = steel.heightAt(nm(hole.u));
    for (const Nm inside : {z - line - nm(stretch.low), line + nm(stretch.high) - z})
      complaints_.check(inside > 0 && Int128(inside + 2) * (inside + 2) * run * run >= square,
                        where_ + ": off the rake");
  }

  template <class Planned>
  std::vector<Station> stationsOf(const std::string& id, const Planned& planned) const {
    std::vector<Station> stations;
    for (const GirtSurvey& survey : wall_.wall().survey.girts) {
      if (survey.girt != id) continue;
      for (const GirtReading& reading : survey.readings) {
        const Nm u = nm(reading.u);
        const Nm above = wall_.chalkAt(u) + nm(reading.height) - planned(u);
        stations.push_back({u, above, nm(reading.within.value_or(Length()))});
      }
    }
    return stations;
  }

  std::vector<Station> slab() const {
    std::vector<Station> stations;
    for (const SlabReading& reading : wall_.wall().survey.slab) {
      const Nm u = nm(reading.u);
      stations.push_back({u, nm(reading.z) - wall_.face().concrete.heightAt(u, Side::Right), 0});
    }
    return stations;
  }

  const MeasuredWall& wall_;
  const std::vector<DrillBatch>& batches_;
  DrilledHeights heights_;
  Complaints& complaints_;
  std::string where_;
};

}  // namespace

// AISI S100-16 (1.5 d), common practice (drift)
TEST_CASE("Every hole of a cleared batch holds on the steel that was measured") {
  int cleared = 0, onGirts = 0, moved = 0;
  eachSurveyed(2500, 350, [&](const Job& job) {
    Complaints complaints;
    eachMeasuredWall(job, plan(job), [&](const MeasuredWall& wall, const WallPlan& planned) {
      complaints.at("wall " + wall.wall().letter);
      HoldCheck check(wall, planned.batches, complaints);
      check.all();
      cleared += check.cleared;
      onGirts += check.onGirts;
      moved += check.moved;
    });
    return complaints;
  });
  // The walls are not so crooked that nothing is looked at.
  CHECK(cleared > 1000);
  CHECK(onGirts > 5000);
  CHECK(moved > 10000);
}

}  // namespace ribwright::fuzz
