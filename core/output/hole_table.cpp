#include <algorithm>
#include <compare>

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

Length chalkLine(const WallPlan& wall, Length u) {
  if (const auto& snapped = wall.reads.walls.at(0).survey.chalkLine) return *snapped;
  const HeightLine& bottom = wall.layout.face.bottom;
  return std::min(bottom.heightAt(u, Beside::Left), bottom.heightAt(u, Beside::Right));
}

bool bothSheets(const WallPlan& wall, int run) {
  const std::string& id = wall.holes.patterns.at(static_cast<std::size_t>(run)).pattern;
  return std::any_of(wall.reads.patterns.begin(), wall.reads.patterns.end(), [&](const ScrewPattern& pattern) {
    return pattern.id == id && pattern.lapHoles == ScrewPattern::LapHoles::BothSheets;
  });
}

// A sheet under another one gets no hole of its own unless the pattern says so: the run can still be gained or lost.
const char* drilledWord(const WallPlan& wall, const HoleInSheet& at) {
  const Hole& hole = *at.hole;
  if (hole.sheets > 1 && at.sheet != hole.upper && !bothSheets(wall, hole.run)) return "no";
  return hole.inPlace ? "in place" : "stack";
}

std::vector<std::string> holeRow(const WallPlan& wall, const HoleInSheet& at, UnitSystem units) {
  const auto number = [units](Length length) { return smallLength(length, units); };
  const Hole& hole = *at.hole;
  return {at.piece->mark,
          supportWords(wall.holes.supports, hole),
          number(at.x),
          number(at.s),
          wall.layout.letter,
          number(hole.u),
          number(hole.z),
          hole.throughLap ? "yes" : "no",
          wall.reads.screws.at(static_cast<std::size_t>(hole.screw)).id,
          number(at.edgeX),
          number(hole.z - chalkLine(wall, hole.u)),
          at.sheet == 0 ? "1" : "0",
          "plan",
          "held",
          drilledWord(wall, at),
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
