#include "core/fastening/drill_batches.h"

#include <algorithm>
#include <map>

#include "core/fastening/batch_reasons.h"
#include "core/fastening/chosen_pattern.h"
#include "core/fastening/sheet_metal.h"
#include "core/fastening/stack_holes.h"

namespace ribwright {
namespace {

// What all holes of a row allow together.
struct Room {
  Length low = -noLimit, high = noLimit;

  void keep(Length from, Length to) {
    low = std::max(low, from);
    high = std::min(high, to);
  }
};

bool holds(const Room& room, Length s) { return room.low <= s && s <= room.high; }

// Where a row is drilled that stands twiceOff / 2 above the middle of its face by the plans: as far off that of what
// its sheets allow, but within that; upright steel alone leaves it where it is planned.
Length ordinate(const Room& room, Length planned, Length twiceOff, Length step) {
  const bool free = room.low == -noLimit && room.high == noLimit;
  // The middle may be half a nanometre: it is rounded once, together with the halving.
  const Int128 twice = free ? 2 * Int128(planned.nanometres()) : Int128((room.low + room.high + twiceOff).nanometres());
  const Length s = step * static_cast<std::int64_t>(roundHalfEven(twice, 2 * Int128(step.nanometres())));
  if (twiceOff == Length() || free || holds(room, s)) return s;
  const Length nearest = s < room.low ? roundUp(room.low, step) : step * wholeTimes(room.high, step);
  return holds(room, nearest) ? nearest : s;
}

// The sheets of one wall as they are gathered into stacks.
class Stacking {
 public:
  Stacking(const Job& job, const WallLayout& layout, const std::vector<PieceHoles>& pieces)
      : layout_(layout), pieces_(pieces), limit_(job.settings.stackLimit), step_(tapeMark(job.units)) {
    for (const Screw& screw : job.screws) reaches_.push_back(fromEdge(screw));
    for (std::size_t i = 0; i < layout.pieces.size(); ++i)
      metal_.push_back(sheetMetal(layout, static_cast<std::int32_t>(i)));
  }

  // By lane, each in hanging order: as many sheets as agree, one after the other.
  std::vector<DrillBatch> batches() {
    std::map<Lane, std::vector<std::int32_t>> lanes;
    for (std::size_t i = 0; i < layout_.pieces.size(); ++i) {
      if (!pieces_[i].stack.empty() && !isHung(layout_.pieces[i]))
        lanes[laneOf(layout_.pieces[i])].push_back(static_cast<std::int32_t>(i));
    }
    std::vector<DrillBatch> all;
    for (const auto& [lane, sheets] : lanes) divide(lane, sheets, all);
    return all;
  }

 private:
  const Module& moduleOf(const Piece& piece) const {
    return layout_.runs[static_cast<std::size_t>(piece.run)].modules[static_cast<std::size_t>(piece.module)];
  }
  bool isHung(const Piece& piece) const { return moduleOf(piece).hung; }

  Lane laneOf(const Piece& piece) const {
    const Lane::Height heights[2][2] = {{Lane::Height::Full, Lane::Height::BelowHead},
                                        {Lane::Height::AboveHead, Lane::Height::Between}};
    return {heights[piece.above ? 1 : 0][piece.below ? 1 : 0], piece.run, piece.tier, moduleOf(piece).translucent};
  }

  void divide(const Lane& lane, const std::vector<std::int32_t>& sheets, std::vector<DrillBatch>& all) {
    for (const std::int32_t sheet : sheets) {
      if (sheet == sheets.front() || !joins(sheet, all.back())) {
        all.emplace_back();
        all.back().lane = lane;
        rooms_.clear();
      }
      add(sheet, all.back());
    }
  }

  void add(std::int32_t sheet, DrillBatch& batch) {
    batch.pieces.push_back(sheet);
    for (const StackHole& hole : holesOf(sheet)) rooms_[hole.key].keep(hole.low, hole.high);
  }

  bool joins(std::int32_t sheet, const DrillBatch& batch) const {
    if (batch.pieces.size() >= static_cast<std::size_t>(limit_)) return false;
    if (!allHold(batch.pieces.front())) return false;
    const bool agreed =
        std::all_of(batch.pieces.begin(), batch.pieces.end(), [&](std::int32_t other) { return agree(sheet, other); });
    return agreed && allHold(sheet);
  }

  // Every row of this sheet holds at an ordinate of the step, with what the batch allows so far.
  bool allHold(std::int32_t sheet) const {
    const auto& holes = holesOf(sheet);
    for (auto hole = holes.begin(); hole != holes.end();) {
      const auto known = rooms_.find(hole->key);
      Room room = known == rooms_.end() ? Room{} : known->second;
      const auto first = hole;
      for (; hole != holes.end() && hole->key == first->key; ++hole) room.keep(hole->low, hole->high);
      if (!holds(room, ordinate(room, first->planned, first->twiceOff, step_))) return false;
    }
    return true;
  }

  bool agree(std::int32_t a, std::int32_t b) const {
    return startOf(a) == startOf(b) && isClear(a, b) && isClear(b, a);
  }

  // From the module line to the starting metal edge: sheets of which it differs do not nest with their edges flush.
  Length startOf(std::int32_t sheet) const {
    const Piece& piece = layout_.pieces[static_cast<std::size_t>(sheet)];
    const Length line = moduleOf(piece).startLine;
    return isRightward() ? piece.left - line : line - piece.right;
  }

  // Each hole of `a` is one of `b` too, or the drill does not meet b's metal.
  bool isClear(std::int32_t a, std::int32_t b) const {
    const auto& others = holesOf(b);
    auto other = others.begin();
    for (const StackHole& hole : holesOf(a)) {
      while (other != others.end() && isBefore(*other, hole)) ++other;
      const bool same = other != others.end() && !isBefore(hole, *other);
      if (!same && meets(hole, b)) return false;
    }
    return true;
  }

  static bool isBefore(const StackHole& a, const StackHole& b) {
    return a.key != b.key ? a.key < b.key : a.offset < b.offset;
  }

  bool meets(const StackHole& hole, std::int32_t sheet) const {
    const SheetMetal& metal = metal_[static_cast<std::size_t>(sheet)];
    const Length u = isRightward() ? metal.shape->left + hole.offset : metal.shape->right - hole.offset;
    const Length reach = reaches_[static_cast<std::size_t>(hole.key.screw)];
    const Standing standing = standingOf(metal, u, metal.shape->bottom + hole.planned, reach);
    return standing.inside || standing.nearEdge;
  }

  bool isRightward() const { return layout_.direction.hand == Hand::LeftToRight; }
  const std::vector<StackHole>& holesOf(std::int32_t sheet) const {
    return pieces_[static_cast<std::size_t>(sheet)].stack;
  }

  const WallLayout& layout_;
  const std::vector<PieceHoles>& pieces_;
  int limit_;
  Length step_;
  std::vector<Length> reaches_;  // 1.5 d, parallel to Job::screws
  std::vector<SheetMetal> metal_;
  std::map<RowKey, Room> rooms_;  // of the batch that is being gathered
};

// Longest lowest; of equally long ones the one hung last.
void stackUp(const WallLayout& layout, DrillBatch& batch) {
  batch.stack.assign(batch.pieces.rbegin(), batch.pieces.rend());
  const auto lengthOf = [&](std::int32_t i) { return layout.pieces[static_cast<std::size_t>(i)].blankLength; };
  std::stable_sort(batch.stack.begin(), batch.stack.end(),
                   [&](std::int32_t a, std::int32_t b) { return lengthOf(a) > lengthOf(b); });
}

// Names of the steel, each once, in the order of the sheets.
void addName(std::string& names, std::vector<std::string>& known, const std::string& name) {
  if (name.empty() || std::find(known.begin(), known.end(), name) != known.end()) return;
  known.push_back(name);
  names += (names.empty() ? "" : ", ") + name;
}

class Rows {
 public:
  Rows(const WallHoles& holes, const std::vector<PieceHoles>& pieces, Length step)
      : holes_(holes), pieces_(pieces), step_(step) {}

  std::vector<BatchRow> of(const DrillBatch& batch) {
    for (const std::int32_t sheet : batch.stack) add(pieces_[static_cast<std::size_t>(sheet)].stack);
    std::vector<BatchRow> rows;
    for (auto& [key, made] : made_) rows.push_back(finished(made));
    std::stable_sort(rows.begin(), rows.end(), [](const BatchRow& a, const BatchRow& b) { return a.s < b.s; });
    return rows;
  }

 private:
  struct Made {
    BatchRow row;
    Room room;
    Length twiceOff;  // as in StackHole
    std::vector<std::string> names;
  };

  void add(const std::vector<StackHole>& stack) {
    const RowKey* before = nullptr;
    for (const StackHole& hole : stack) {
      const auto [at, fresh] = made_.try_emplace(hole.key);
      Made& made = at->second;
      if (fresh) begin(made, hole);
      if (!before || *before != hole.key) ++made.row.sheets;
      before = &hole.key;
      made.room.keep(hole.low, hole.high);
      made.row.surveyed = made.row.surveyed && hole.surveyed;
      made.row.offsets.push_back(hole.offset);
      made.row.holes.push_back(hole.hole);
      addName(made.row.support, made.names, nameOf(hole));
    }
  }

  void begin(Made& made, const StackHole& hole) const {
    made.twiceOff = hole.twiceOff;
    BatchRow& row = made.row;
    row.key = hole.key;
    row.row = holes_.holes[static_cast<std::size_t>(hole.hole)].row;
    row.planned = hole.planned;
    row.surveyed = true;
  }

  // Of a flange in a girt's way: the girt's, as the row is.
  std::string nameOf(const StackHole& stackHole) const {
    const Hole& hole = holes_.holes[static_cast<std::size_t>(stackHole.hole)];
    const SupportRow& row = holes_.supports.rows[static_cast<std::size_t>(hole.row)];
    const Stretch& stretch = row.stretches[static_cast<std::size_t>(hole.stretch)];
    return stretch.steel == Stretch::Steel::Own ? stretch.name : row.id;
  }

  BatchRow finished(Made& made) const {
    BatchRow& row = made.row;
    std::sort(row.offsets.begin(), row.offsets.end());
    row.offsets.erase(std::unique(row.offsets.begin(), row.offsets.end()), row.offsets.end());
    std::sort(row.holes.begin(), row.holes.end());
    row.holes.erase(std::unique(row.holes.begin(), row.holes.end()), row.holes.end());
    row.s = ordinate(made.room, row.planned, made.twiceOff, step_);
    row.low = made.room.low;
    row.high = made.room.high;
    row.holds = holds(made.room, row.s);
    return std::move(row);
  }

  const WallHoles& holes_;
  const std::vector<PieceHoles>& pieces_;
  Length step_;
  std::map<RowKey, Made> made_;
};

std::vector<std::int32_t> inPlaceOf(const DrillBatch& batch, const std::vector<PieceHoles>& pieces) {
  std::vector<std::int32_t> all;
  for (const std::int32_t sheet : batch.pieces) {
    const auto& of = pieces[static_cast<std::size_t>(sheet)].inPlace;
    all.insert(all.end(), of.begin(), of.end());
  }
  std::sort(all.begin(), all.end());
  all.erase(std::unique(all.begin(), all.end()), all.end());
  return all;
}

void number(const std::string& letter, std::vector<DrillBatch>& batches) {
  std::sort(batches.begin(), batches.end(),
            [](const DrillBatch& a, const DrillBatch& b) { return a.pieces.front() < b.pieces.front(); });
  for (std::size_t i = 0; i < batches.size(); ++i) {
    batches[i].id = letter;
    batches[i].id += '/' + std::to_string(i + 1);
  }
}

}  // namespace

const DrillBatch* batchOf(const std::vector<DrillBatch>& batches, std::int32_t piece) {
  const auto found = std::find_if(batches.begin(), batches.end(), [&](const DrillBatch& batch) {
    return std::binary_search(batch.pieces.begin(), batch.pieces.end(), piece);
  });
  return found == batches.end() ? nullptr : &*found;
}

const BatchRow* rowOf(const DrillBatch& batch, std::int32_t hole) {
  const auto found = std::find_if(batch.rows.begin(), batch.rows.end(), [&](const BatchRow& row) {
    return std::binary_search(row.holes.begin(), row.holes.end(), hole);
  });
  return found == batch.rows.end() ? nullptr : &*found;
}

std::vector<DrillBatch> drillBatches(const Job& job, const Wall& wall, const WallLayout& layout,
                                     const WallHoles& holes) {
  const MeasuredFaces faces(job, wall, layout, holes.supports);
  const std::vector<PieceHoles> pieces = pieceHoles(job, layout, holes, faces);
  std::vector<DrillBatch> batches = Stacking(job, layout, pieces).batches();
  number(layout.letter, batches);
  for (DrillBatch& batch : batches) {
    stackUp(layout, batch);
    batch.rows = Rows(holes, pieces, tapeMark(job.units)).of(batch);
    batch.inPlace = inPlaceOf(batch, pieces);
  }
  giveReasons({job, wall, layout, holes, faces, pieces}, batches);
  return batches;
}

}  // namespace ribwright
