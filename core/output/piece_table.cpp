#include "core/output/columns.h"
#include "core/output/figures.h"
#include "core/output/tables.h"

namespace ribwright {
namespace {

std::string kindWord(PieceKind kind) {
  switch (kind) {
    case PieceKind::Full:
      return "full";
    case PieceKind::Rip:
      return "rip";
    case PieceKind::Rake:
      return "rake";
    case PieceKind::Notched:
      return "notched";
    case PieceKind::Above:
      return "above";
    case PieceKind::Below:
      return "below";
    case PieceKind::Mixed:
      return "mixed";
  }
  return "";
}

int moduleNumber(const WallLayout& wall, const Piece& piece) {
  const SheetRun& run = wall.runs[static_cast<std::size_t>(piece.run)];
  return run.modules[static_cast<std::size_t>(piece.module)].number;
}

std::vector<std::string> pieceRow(const WallLayout& wall, const Piece& piece, const std::string& batch,
                                  const std::string& code, UnitSystem units) {
  const auto number = [units](Length length) { return smallLength(length, units); };
  return {wall.letter,
          piece.mark,
          std::to_string(moduleNumber(wall, piece)),
          std::to_string(piece.hangOrder),
          number(piece.left),
          number(piece.right),
          number(piece.bottom),
          number(piece.lowEdge),
          number(piece.highEdge),
          number(piece.blankLength),
          kindWord(piece.kind),
          batch,
          number(piece.leftEdge),
          number(piece.rightEdge),
          number(piece.peak),
          code};
}

}  // namespace

Table pieceTable(const Plan& plan, UnitSystem units) {
  Table table;
  table.columns = columnsIn(
      units, {"wall", "mark", "module", "hang_order", "left_in", "right_in", "bottom_in", "low_edge_in", "high_edge_in",
              "blank_length_in", "kind", "batch", "left_edge_in", "right_edge_in", "peak_u_in", "order_code"});
  for (std::size_t i = 0; i < plan.walls.size(); ++i) {
    const WallPlan& wall = *plan.walls[i];
    for (std::size_t j = 0; j < wall.layout.pieces.size(); ++j) {
      const DrillBatch* batch = batchOf(wall.batches, static_cast<std::int32_t>(j));
      table.rows.push_back(pieceRow(wall.layout, wall.layout.pieces[j], batch ? batch->id : std::string(),
                                    plan.order.codes[i][j], units));
    }
  }
  return table;
}

}  // namespace ribwright
