#include <algorithm>
#include <compare>

#include "core/fastening/measured_faces.h"
#include "core/fastening/stack_holes.h"
#include "core/output/columns.h"
#include "core/output/figures.h"
#include "core/output/support_words.h"
#include "core/output/tables.h"

namespace ribwright {
namespace {

// One hole in one of the sheets it goes through.
struct HoleInSheet {
  const Hole* hole = nullptr;
  int sheet = 0;  // of the hole's sheets
  const Piece* piece = nullptr;
  Length x, edgeX, s;  // from the module line, the piece's starting metal edge, its lowest end
};

std::vector<HoleInSheet> holesInSheets(const WallPlan& wall) {
  std::vector<HoleInSheet> all;
  for (const Hole& hole : wall.holes.holes) {
    for (int sheet = 0; sheet < hole.sheets; ++sheet) {
      const auto index = static_cast<std::size_t>(hole.pieces.at(static_cast<std::size_t>(sheet)));
      const Piece& piece = wall.layout.pieces.at(index);
      const bool toRight = wall.layout.direction.hand == Hand::LeftToRight;
      const Length edgeX = toRight ? hole.u - piece.left : piece.right - hole.u;
      all.push_back({&hole, sheet, &piece, alongSheet(wall.layout, hole, sheet), edgeX, hole.z - piece.bottom});
    }
  }
  std::stable_sort(all.begin(), all.end(), [](const HoleInSheet& a, const HoleInSheet& b) {
    if (a.piece->hangOrder != b.piece->hangOrder) return a.piece->hangOrder < b.piece->hangOrder;
    return a.s != b.s ? a.s < b.s : a.x < b.x;
  });
  return all;
}

Length chalkLine(const WallPlan& wall, Length u) { return chalkLineAt(wall.reads.walls.at(0), wall.layout, u); }

// A sheet under another one gets no hole of its own unless the pattern says so: the run can still be gained or lost.
bool isDrilled(const WallPlan& wall, const HoleInSheet& at) {
  return at.sheet == at.hole->upper || drillsBothSheets(wall.reads, wall.holes, at.hole->run);
}

// How a screw's place comes about in one of its sheets.
struct Drilling {
  const DrillBatch* batch = nullptr;  // of the sheet that is drilled for it; null: none
  const BatchRow* row = nullptr;      // by which it is drilled in the stack; null: it is not
  Length bottom;                      // z of that sheet's lowest end
  bool isSurveyed() const { return row != nullptr && row->surveyed && batch->isCleared(); }
};

Drilling drillingOf(const WallPlan& wall, const HoleInSheet& at) {
  const int sheet = isDrilled(wall, at) ? at.sheet : at.hole->upper;
  const std::int32_t piece = at.hole->pieces.at(static_cast<std::size_t>(sheet));
  Drilling drilling;
  drilling.batch = batchOf(wall.batches, piece);
  drilling.bottom = wall.layout.pieces.at(static_cast<std::size_t>(piece)).bottom;
  if (drilling.batch)
    drilling.row = rowOf(*drilling.batch, static_cast<std::int32_t>(at.hole - wall.holes.holes.data()));
  return drilling;
}

const char* drilledWord(const WallPlan& wall, const HoleInSheet& at, const Drilling& drilling) {
  if (!isDrilled(wall, at)) return "no";
  return drilling.row || (!drilling.batch && !at.hole->inPlace) ? "stack" : "in place";
}

bool isCleared(const WallPlan& wall, const HoleInSheet& at) {
  const DrillBatch* batch = batchOf(wall.batches, at.hole->pieces.at(static_cast<std::size_t>(at.sheet)));
  return batch && batch->isCleared();
}

std::vector<std::string> holeRow(const WallPlan& wall, const HoleInSheet& at, UnitSystem units) {
  const auto number = [units](Length length) { return smallLength(length, units); };
  const Hole& hole = *at.hole;
  const Drilling drilling = drillingOf(wall, at);
  const bool surveyed = drilling.isSurveyed();
  const Length z = surveyed ? drilling.bottom + drilling.row->s : hole.z;
  return {at.piece->mark,
          supportWords(wall.holes.supports, hole),
          number(at.x),
          number(z - at.piece->bottom),
          wall.layout.letter,
          number(hole.u),
          number(z),
          hole.throughLap ? "yes" : "no",
          wall.reads.screws.at(static_cast<std::size_t>(hole.screw)).id,
          number(at.edgeX),
          number(z - chalkLine(wall, hole.u)),
          at.sheet == 0 ? "1" : "0",
          surveyed ? "surveyed" : "plan",
          isCleared(wall, at) ? "cleared" : "held",
          drilledWord(wall, at, drilling),
          hole.corner ? "corner" : "field"};
}

}  // namespace

Table holeTable(const Plan& plan, UnitSystem units) {
  Table table;
  table.columns = columnsIn(units, {"mark", "support", "x_in", "s_in", "wall", "u_in", "z_in", "through_lap", "screw",
                                    "edge_x_in", "chalk_in", "count", "basis", "status", "drilled", "zone"});
  for (const auto& wall : plan.walls) {
    for (const HoleInSheet& at : holesInSheets(*wall)) table.rows.push_back(holeRow(*wall, at, units));
  }
  return table;
}

}  // namespace ribwright
