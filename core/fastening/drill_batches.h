// Which sheets are drilled together in one stack, at which ordinates, and whether they may be drilled at all.
//
// Sheets of one batch come one after the other in their lane, have their bottoms and starting edges flush, and agree on
// every hole that the drill goes through: a hole that one of them asks for is a hole of each other one whose metal it
// meets. Metal that a notch takes away afterwards meets no hole. A row is one ordinate: the middle of what all its
// sheets allow (a base's or eave's row as far off it as it is off its face's middle by the plans, but within), rounded to a mark of the tape (tapeMark: 1/16 in or 1 mm); the rounded row is what is tested. A batch
// goes on as far as that holds, up to the stack limit: so there are as few as can be.
//
// Whether a hole meets another sheet's metal is judged at its planned height, within 1.5 d of that metal.
//
// Not in any batch: sheets that hang, and pieces without a hole to be drilled in the stack.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/fastening/holes.h"

namespace ribwright {

// Pieces that follow one another in the stack, whatever hangs between them.
struct Lane {
  enum class Height : std::uint8_t { Full, BelowHead, AboveHead, Between };
  Height height = Height::Full;
  std::int32_t run = 0;  // index into WallLayout::runs
  std::int32_t tier = 0;
  bool translucent = false;
  auto operator<=>(const Lane&) const = default;
};

// What makes holes of several sheets one row of a template: kind, screw and, for a girt or eave, the height by the
// plans; for a base, which of the sheet's base rows it is, from the lowest.
struct RowKey {
  HoleKind kind = HoleKind::Girt;
  std::int32_t screw = 0;  // index into Job::screws
  Length height;           // z; base: none
  std::int32_t level = 0;  // base: 0 the lowest; else 0
  auto operator<=>(const RowKey&) const = default;
};

// One ordinate of a template.
struct BatchRow {
  RowKey key;
  std::int32_t row = -1;            // index into WallSupports::rows
  std::string support;              // id of its girt or girts ("g1", "g1+g2"); empty: base, eave
  std::vector<Length> offsets;      // of its holes from the starting edge, rising
  std::vector<std::int32_t> holes;  // of all its sheets: indices into WallHoles::holes, rising
  Length s;                         // from the bottom end: rounded; as drilled when the batch is cleared
  Length planned;                   // the same from the plans, of the lowest sheet in the stack that has it
  Length low, high;                 // s that all its sheets allow, margins taken off; low > high: they allow none
  bool surveyed = false;            // every sheet's face was measured
  bool holds = true;                // low <= s <= high
  std::int32_t sheets = 0;          // how many of the batch have it
  bool operator==(const BatchRow&) const = default;
};

struct HoldReason {
  enum class Why : std::uint8_t {
    NoConfirmation,  // the pattern's numbers are not confirmed against a plan sheet
    NotMeasured,     // the girt is not measured from `from` to `to`
    NoCrossSection,  // the girt's member is not stated: its screw face is not known
    RowDoesNotHold,  // no ordinate of the step holds on the face at all of its sheet's holes; `by` is lacking
    RowNearHole,     // the row, where the steel is, comes too near another hole or a metal edge
    Chalk,  // sheets end at the chalk line, and it was snapped `by` above (positive) where they end by the plans
    Stop,   // a finding of grade stop: `finding` is its id
  };
  Why why = Why::NoConfirmation;
  std::string name;       // of the pattern, girt, support or finding
  std::int32_t row = -1;  // index into DrillBatch::rows, or -1
  Length from, to;        // u
  Length by;
  bool operator==(const HoldReason&) const = default;
};

// What a person can do about it, cheapest first.
struct Remedy {
  enum class What : std::uint8_t {
    Confirm,       // hold the pattern's numbers against the plan sheet and confirm them by name and date
    Measure,       // take readings from `from` to `to`
    MeasureAgain,  // the same, more exactly than a stick check of the interval taken
    State,         // state the girt's member
    SnapAgain,     // snap the chalk line `by` higher (positive) or lower
    MoveGirt,      // raise (positive) or lower the girt by `by` at u = `from`; its clip and 1/2 in allow it
    AskEngineer,   // the same, but beyond its clip's slot or 1/2 in
    DrillInPlace,  // drill this row where the sheet hangs
    Mend,          // mend what the stop finding names
  };
  What what = What::Confirm;
  std::int32_t reason = 0;  // index into DrillBatch::reasons
  std::string name;         // as in the reason
  Length from, to, by;
  bool operator==(const Remedy&) const = default;
};

struct DrillBatch {
  std::string id;  // wall letter and number: "B/1"
  Lane lane;
  std::vector<std::int32_t> pieces;  // indices into WallLayout::pieces, in hanging order
  std::vector<std::int32_t> stack;   // the same from the bottom of the stack to its top: longest lowest, then last hung
  std::vector<BatchRow> rows;        // by s
  std::vector<std::int32_t> inPlace;  // indices into WallHoles::holes: of its pieces, drilled where they hang
  std::vector<HoldReason> reasons;    // empty: cleared
  std::vector<Remedy> remedies;       // cheapest first
  bool isCleared() const { return reasons.empty(); }
  bool operator==(const DrillBatch&) const = default;
};

// In hanging order of their first piece, and numbered so.
std::vector<DrillBatch> drillBatches(const Job& job, const Wall& wall, const WallLayout& layout,
                                     const WallHoles& holes);

// The batch that a piece is drilled in; null: none.
const DrillBatch* batchOf(const std::vector<DrillBatch>& batches, std::int32_t piece);
// The row of the batch by which a hole (index into WallHoles::holes) is drilled; null: it is drilled in place, or in
// another sheet.
const BatchRow* rowOf(const DrillBatch& batch, std::int32_t hole);

// A stop found on the wall. It holds the batch of the piece that it names, or all of the wall's when it names none.
struct FoundStop {
  std::string finding;  // its id
  std::string mark;
};
void holdForStops(std::vector<DrillBatch>& batches, const WallLayout& layout, const std::vector<FoundStop>& stops);

}  // namespace ribwright
