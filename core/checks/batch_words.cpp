#include "core/checks/batch_words.h"

#include "core/checks/screw_words.h"
#include "core/fastening/batch_reasons.h"

namespace ribwright {
namespace {

// In the order of HoldReason::Why and of Remedy::What.
constexpr const char* whyIds[] = {"held.no-confirmation",
                                  "held.not-measured",
                                  "held.no-cross-section",
                                  "held.row-does-not-hold",
                                  "held.row-near-hole",
                                  "held.chalk",
                                  "held.stop"};
constexpr const char* whatIds[] = {"remedy.confirm",      "remedy.measure",        "remedy.measure-again",
                                   "remedy.state",        "remedy.snap",           "remedy.move-girt",
                                   "remedy.ask-engineer", "remedy.drill-in-place", "remedy.mend"};

WordValue rowIn(const DrillBatch& batch, std::int32_t row) {
  return row < 0 ? WordValue(std::string()) : WordValue(rowWords(batch.rows[static_cast<std::size_t>(row)]));
}

// What can be raised or lowered is said in its own words for each.
std::string sided(const std::string& id, Length by) { return id + (by < Length() ? ".down" : ".up"); }

}  // namespace

Phrase rowWords(const BatchRow& row) {
  return {std::string("screws.row.").append(kindId(row.key.kind)), {{"id", row.support}}};
}

Phrase sheetsOf(const DrillBatch& batch, const WallLayout& layout) {
  const auto mark = [&](std::int32_t piece) { return layout.pieces[static_cast<std::size_t>(piece)].mark; };
  const std::string first = mark(batch.pieces.front()), last = mark(batch.pieces.back());
  if (first == last) return {"screws.sheet", {{"marks", first}}};
  return {"screws.sheets", {{"marks", Phrase{"part.from-to", {{"from", first}, {"to", last}}}}}};
}

Phrase whyHeld(const DrillBatch& batch, const HoldReason& reason) {
  const std::string id = whyIds[static_cast<std::size_t>(reason.why)];
  return {reason.why == HoldReason::Why::Chalk ? sided(id, reason.by) : id,
          {{"name", reason.name},
           {"row", rowIn(batch, reason.row)},
           {"from", reason.from},
           {"to", reason.to},
           {"by", absolute(reason.by)}}};
}

Phrase whatToDo(const DrillBatch& batch, const Remedy& remedy) {
  const std::string id = whatIds[static_cast<std::size_t>(remedy.what)];
  const bool moves = remedy.what == Remedy::What::SnapAgain || remedy.what == Remedy::What::MoveGirt ||
                     remedy.what == Remedy::What::AskEngineer;
  const HoldReason& reason = batch.reasons[static_cast<std::size_t>(remedy.reason)];
  return {moves ? sided(id, remedy.by) : id,
          {{"name", remedy.name},
           {"row", rowIn(batch, reason.row)},
           {"from", remedy.from},
           {"to", remedy.to},
           {"by", absolute(remedy.by)},
           {"limit", mostGirtMove}}};
}

}  // namespace ribwright
