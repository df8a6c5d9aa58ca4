#include "core/fastening/stack_holes.h"

#include <algorithm>

#include "core/fastening/chosen_pattern.h"
#include "core/fastening/upright_margin.h"
#include "core/job/by_id.h"

namespace ribwright {
namespace {

class Gathering {
 public:
  Gathering(const Job& job, const WallLayout& layout, const WallHoles& holes, const MeasuredFaces& faces)
      : job_(job), layout_(layout), holes_(holes), faces_(faces), pieces_(layout.pieces.size()) {
    for (std::size_t run = 0; run < layout.runs.size(); ++run)
      both_.push_back(drillsBothSheets(job, holes, static_cast<std::int32_t>(run)));
  }

  void add(std::int32_t index) {
    const Hole& hole = holes_.holes[static_cast<std::size_t>(index)];
    const std::optional<MeasuredFace> face = isOfRow(hole) ? faces_.of(hole) : std::nullopt;
    const bool inPlace = hole.inPlace || !isOfRow(hole) || (hole.kind == HoleKind::Eave && face && !face->surveyed);
    const bool both = both_[static_cast<std::size_t>(hole.run)];
    for (int sheet = 0; sheet < hole.sheets; ++sheet) {
      PieceHoles& piece = pieces_[static_cast<std::size_t>(hole.pieces[static_cast<std::size_t>(sheet)])];
      if (inPlace) {
        piece.inPlace.push_back(index);
      } else if (sheet == hole.upper || both) {
        piece.stack.push_back(stackHole(index, sheet, face));
      }
    }
  }

  std::vector<PieceHoles> done() {
    for (PieceHoles& piece : pieces_) {
      numberLevels(piece.stack);
      std::sort(piece.stack.begin(), piece.stack.end(), [](const StackHole& a, const StackHole& b) {
        return a.key != b.key ? a.key < b.key : a.offset < b.offset;
      });
    }
    return std::move(pieces_);
  }

 private:
  static bool isOfRow(const Hole& hole) { return hole.kind != HoleKind::Jamb && hole.kind != HoleKind::Stitch; }

  StackHole stackHole(std::int32_t index, int sheet, const std::optional<MeasuredFace>& face) const {
    const Hole& hole = holes_.holes[static_cast<std::size_t>(index)];
    const Piece& piece = layout_.pieces[static_cast<std::size_t>(hole.pieces[static_cast<std::size_t>(sheet)])];
    StackHole one{};
    one.key = {hole.kind, hole.screw, hole.z, 0};
    one.offset = layout_.direction.hand == Hand::LeftToRight ? hole.u - piece.left : piece.right - hole.u;
    one.hole = index;
    one.planned = hole.z - piece.bottom;
    const Length margin = marginOf(hole);
    const MeasuredFace on = face.value_or(MeasuredFace{hole.z - margin, hole.z + margin});
    one.low = on.upright ? -noLimit : on.low + margin - piece.bottom;
    one.high = on.upright ? noLimit : on.high - margin - piece.bottom;
    one.twiceOff = twiceOffMiddle(hole);
    one.known = face.has_value();
    one.surveyed = on.surveyed;
    return one;
  }

  Length twiceOffMiddle(const Hole& hole) const {
    const SupportRow& row = holes_.supports.rows[static_cast<std::size_t>(hole.row)];
    const Stretch& stretch = row.stretches[static_cast<std::size_t>(hole.stretch)];
    if (row.kind == SupportKind::Girt || stretch.steel != Stretch::Steel::Own || !stretch.known) return {};
    return stretch.row * 2 - stretch.low - stretch.high;
  }

  Length marginOf(const Hole& hole) const {
    const Length square = fromEdge(job_.screws[static_cast<std::size_t>(hole.screw)]) + job_.settings.drift;
    if (hole.kind != HoleKind::Rake) return square;
    const SupportRow& row = holes_.supports.rows[static_cast<std::size_t>(hole.row)];
    const Stretch& stretch = row.stretches[static_cast<std::size_t>(hole.stretch)];
    return uprightMargin(square, layout_.face.steel, stretch.from, stretch.to);
  }

  // Base rows are told apart by which of the sheet's they are: their heights follow the steps of the concrete.
  static void numberLevels(std::vector<StackHole>& stack) {
    std::vector<Length> heights;
    for (const StackHole& hole : stack) {
      if (hole.key.kind == HoleKind::Base) heights.push_back(hole.key.height);
    }
    std::sort(heights.begin(), heights.end());
    heights.erase(std::unique(heights.begin(), heights.end()), heights.end());
    for (StackHole& hole : stack) {
      if (hole.key.kind != HoleKind::Base) continue;
      const auto at = std::lower_bound(heights.begin(), heights.end(), hole.key.height);
      hole.key.level = static_cast<std::int32_t>(at - heights.begin());
      hole.key.height = Length();
    }
  }

  const Job& job_;
  const WallLayout& layout_;
  const WallHoles& holes_;
  const MeasuredFaces& faces_;
  std::vector<bool> both_;  // parallel to WallLayout::runs
  std::vector<PieceHoles> pieces_;
};

}  // namespace

bool drillsBothSheets(const Job& job, const WallHoles& holes, std::int32_t run) {
  const ScrewPattern* pattern = byId(job.patterns, holes.patterns[static_cast<std::size_t>(run)].pattern);
  return pattern && pattern->lapHoles == ScrewPattern::LapHoles::BothSheets;
}

std::vector<PieceHoles> pieceHoles(const Job& job, const WallLayout& layout, const WallHoles& holes,
                                   const MeasuredFaces& faces) {
  Gathering gathering(job, layout, holes, faces);
  for (std::size_t i = 0; i < holes.holes.size(); ++i) gathering.add(static_cast<std::int32_t>(i));
  return gathering.done();
}

}  // namespace ribwright
