// What was measured, and what may be drilled.
#include <algorithm>

#include "core/checks/batch_words.h"
#include "core/drawing/particular_list.h"

namespace ribwright {
namespace {

// "B/5, cleared", "B/5, held: the first reason".
std::string standing(const ParticularList& list, const DrillBatch& batch) {
  if (batch.isCleared()) return list.say("part.batch.cleared", {{"batch", batch.id}});
  return list.say("part.batch.held", {{"batch", batch.id}, {"why", whyHeld(batch, batch.reasons.front())}});
}

// From the bottom of the stack to its top.
std::string stackOf(const ParticularList& list, const DrillBatch& batch) {
  std::vector<std::string> marks;
  for (const std::int32_t piece : batch.stack)
    marks.push_back(list.layout().pieces[static_cast<std::size_t>(piece)].mark);
  return ParticularList::joined(marks);
}

}  // namespace

void addBatch(ParticularList& list, const DrillBatch& batch) {
  list.add("part.may-drill", list.say(batch.isCleared() ? "part.may-drill.yes" : "part.may-drill.no"));
  list.addCount("part.sheets", batch.pieces.size());
  list.add("part.stack", stackOf(list, batch));
  for (const HoldReason& reason : batch.reasons)
    list.add("part.held-why", list.words.say(whyHeld(batch, reason), list.style));
  for (const Remedy& remedy : batch.remedies)
    list.add("part.what-to-do", list.words.say(whatToDo(batch, remedy), list.style));
  if (!batch.isCleared()) return;
  for (const BatchRow& row : batch.rows) {
    const std::string at =
        list.say("part.row-at", {{"at", list.text(row.s)}, {"count", std::int64_t(row.offsets.size())}});
    list.all.push_back({list.words.say(rowWords(row), list.style), at});
  }
}

void addWallDrilling(ParticularList& list) {
  const auto& batches = list.plan.batches;
  const auto cleared =
      std::count_if(batches.begin(), batches.end(), [](const DrillBatch& batch) { return batch.isCleared(); });
  list.add("part.batches", list.say("part.batches.cleared",
                                    {{"cleared", std::int64_t(cleared)}, {"count", std::int64_t(batches.size())}}));
}

void addPieceDrilling(ParticularList& list, const Piece& piece) {
  const auto index = static_cast<std::int32_t>(&piece - list.layout().pieces.data());
  const DrillBatch* batch = batchOf(list.plan.batches, index);
  list.add("part.batch", batch ? standing(list, *batch) : list.say("part.batch.none"));
}

void addGirtSurvey(ParticularList& list, const Girt& girt) {
  std::size_t stations = 0;
  for (const GirtSurvey& survey : list.wall.survey.girts) {
    if (survey.girt == girt.id) stations = survey.readings.size();
  }
  list.add("part.survey", stations == 0 ? list.say("part.survey.none")
                                        : list.say("part.survey.stations", {{"count", std::int64_t(stations)}}));
}

void addScrewDrilling(ParticularList& list, const Hole& hole) {
  const std::int32_t piece = hole.pieces[static_cast<std::size_t>(hole.upper)];
  const DrillBatch* batch = batchOf(list.plan.batches, piece);
  if (!batch) return;
  list.add("part.batch", standing(list, *batch));
  const auto index = static_cast<std::int32_t>(&hole - list.plan.holes.holes.data());
  const BatchRow* row = rowOf(*batch, index);
  if (row && row->surveyed && batch->isCleared()) list.add("part.drilled-at", row->s);
}

}  // namespace ribwright
