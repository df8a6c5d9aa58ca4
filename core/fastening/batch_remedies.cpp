// What can be done so that a batch may be drilled, cheapest first.
#include <algorithm>

#include "core/fastening/batch_reasons.h"
#include "core/job/by_id.h"

namespace ribwright {
namespace {

using What = Remedy::What;

// A hole that keeps a row from holding, and how far its steel stands from the plans there.
struct Binding {
  const Hole* hole = nullptr;
  std::int32_t girt = -1;
  Length shift;
};

Binding bindingOf(const BatchLook& look, const StackHole& stackHole) {
  Binding binding;
  binding.hole = &look.holes.holes[static_cast<std::size_t>(stackHole.hole)];
  const SupportRow& row = look.holes.supports.rows[static_cast<std::size_t>(binding.hole->row)];
  const auto& girts = row.stretches[static_cast<std::size_t>(binding.hole->stretch)].girts;
  if (girts.size() != 1) return binding;  // nested: which of them is the engineer's to say
  const auto shift = look.faces.ofGirt(girts.front(), binding.hole->u);
  if (!shift) return binding;
  binding.girt = girts.front();
  binding.shift = shift->least + half(shift->most - shift->least);
  return binding;
}

// Of the holes of a row the one that asks for the highest ordinate, and the one that asks for the lowest.
std::pair<const StackHole*, const StackHole*> bounds(const BatchLook& look, const DrillBatch& batch, std::int32_t row) {
  const StackHole *highest = nullptr, *lowest = nullptr;
  for (const std::int32_t piece : batch.pieces) {
    for (const StackHole& hole : look.pieces[static_cast<std::size_t>(piece)].stack) {
      if (rowWith(batch, hole.key) != row) continue;
      if (!highest || hole.low > highest->low) highest = &hole;
      if (!lowest || hole.high < lowest->high) lowest = &hole;
    }
  }
  return {highest, lowest};
}

bool isStickChecked(const BatchLook& look, std::int32_t girt) {
  const std::string& id = look.wall.girts[static_cast<std::size_t>(girt)].id;
  for (const GirtSurvey& survey : look.wall.survey.girts) {
    if (survey.girt != id) continue;
    return std::any_of(survey.readings.begin(), survey.readings.end(),
                       [](const GirtReading& reading) { return reading.within.value_or(Length()) > Length(); });
  }
  return false;
}

// Whichever of the two stands farther off the plans is moved towards them.
Remedy moved(const BatchLook& look, const Binding& high, const Binding& low, Length by) {
  const bool lowers = low.girt < 0 || (high.girt >= 0 && high.shift >= -low.shift);
  const Binding& one = lowers ? high : low;
  const Girt& girt = look.wall.girts[static_cast<std::size_t>(one.girt)];
  return {
      mayMove(girt, by) ? What::MoveGirt : What::AskEngineer, 0, girt.id, one.hole->u, one.hole->u, lowers ? -by : by};
}

void rowRemedies(const BatchLook& look, const DrillBatch& batch, const HoldReason& reason, std::vector<Remedy>& all) {
  const auto [highest, lowest] = bounds(look, batch, reason.row);
  if (highest && lowest) {
    const Binding high = bindingOf(look, *highest), low = bindingOf(look, *lowest);
    for (const Binding& one : {high, low}) {
      if (one.girt < 0 || !isStickChecked(look, one.girt)) continue;
      all.push_back(
          {What::MeasureAgain, 0, look.wall.girts[static_cast<std::size_t>(one.girt)].id, reason.from, reason.to, {}});
      break;
    }
    if (high.girt >= 0 || low.girt >= 0)
      all.push_back(moved(look, high, low, roundUp(reason.by, tapeMark(look.job.units))));
  }
  all.push_back({What::DrillInPlace, 0, reason.name, reason.from, reason.to, {}});
}

std::vector<Remedy> remediesOf(const BatchLook& look, const DrillBatch& batch, const HoldReason& reason) {
  std::vector<Remedy> all;
  const auto add = [&](What what) { all.push_back({what, 0, reason.name, reason.from, reason.to, reason.by}); };
  switch (reason.why) {
    case HoldReason::Why::NoConfirmation:
      add(What::Confirm);
      break;
    case HoldReason::Why::NotMeasured:
      add(What::Measure);
      break;
    case HoldReason::Why::NoCrossSection:
      add(What::State);
      break;
    case HoldReason::Why::RowDoesNotHold:
      rowRemedies(look, batch, reason, all);
      break;
    case HoldReason::Why::RowNearHole:
      add(What::DrillInPlace);
      break;
    case HoldReason::Why::Chalk:
      all.push_back({What::SnapAgain, 0, reason.name, reason.from, reason.to, -reason.by});
      break;
    case HoldReason::Why::Stop:
      add(What::Mend);
      break;
  }
  return all;
}

}  // namespace

bool mayMove(const Girt& girt, Length by) { return girt.clipSlot && by <= *girt.clipSlot && by <= mostGirtMove; }

std::vector<Remedy> remediesOf(const BatchLook& look, const DrillBatch& batch) {
  std::vector<Remedy> all;
  for (std::size_t i = 0; i < batch.reasons.size(); ++i) {
    for (Remedy remedy : remediesOf(look, batch, batch.reasons[i])) {
      remedy.reason = static_cast<std::int32_t>(i);
      all.push_back(std::move(remedy));
    }
  }
  std::stable_sort(all.begin(), all.end(), [](const Remedy& a, const Remedy& b) { return a.what < b.what; });
  return all;
}

}  // namespace ribwright
