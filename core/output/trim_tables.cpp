#include "core/output/trim_tables.h"

#include "core/job/by_id.h"
#include "core/job/stated_words.h"
#include "core/output/columns.h"
#include "core/output/figures.h"

namespace ribwright {
namespace {

// Sticks of one stock length.
struct OrderedTrim {
  Length stock;
  int quantity = 0;
  Length pieces, kerfs, ends, drops, waste;

  void add(const TrimStick& stick) {
    ++quantity;
    for (const TrimCut& cut : stick.cuts) pieces += cut.length;
    kerfs += stick.kerfs;
    ends += stick.ends;
    drops += stick.drop;
    waste += stick.waste;
  }
};

std::vector<OrderedTrim> orderedOf(const TrimBatch& batch) {
  std::vector<OrderedTrim> lines;
  for (const TrimStick& stick : batch.sticks) {
    if (lines.empty() || lines.back().stock != stick.stock) lines.emplace_back().stock = stick.stock;
    lines.back().add(stick);
  }
  return lines;
}

std::string resultWord(const TrimBatch& batch) {
  if (batch.madeToLength) return "to length";
  return batch.proved() ? "proved" : "not proved";
}

std::vector<std::string> cutRow(const TrimBatch& batch, const TrimStick& stick, int number, Length at, Length length,
                                UnitSystem units) {
  return {batch.trim,
          batch.colour,
          std::to_string(stick.number),
          exactText(stick.stock, units),
          smallLength(stick.stock, units),
          number > 0 ? std::to_string(number) : "",
          smallLength(at, units),
          smallLength(length, units)};
}

void addPiece(std::vector<std::string>& row, const TrimPiece& piece, int part, UnitSystem units) {
  const TrimPlace& place = piece.place;
  const std::string where(trimWhereWords[static_cast<int>(place.where)]);
  const std::string side = place.side == TrimPlace::Side::None   ? ""
                           : place.side == TrimPlace::Side::Left ? "left"
                                                                 : "right";
  row.insert(row.end(), {piece.id, std::to_string(part + 1), std::to_string(piece.parts.size()),
                         smallLength(piece.length, units), place.wall + place.other, where, side, place.opening,
                         smallLength(piece.lip, units), std::string(trimLapsWords[static_cast<int>(piece.laps)])});
}

}  // namespace

Table trimOrderTable(const Job& job, const std::vector<TrimBatch>& batches, UnitSystem units) {
  Table table;
  table.columns = columnsIn(
      units, {"line", "trim", "colour", "thickness_in", "length", "length_in", "quantity", "bought_ft", "weight_lb",
              "pieces_ft", "kerfs_ft", "ends_ft", "drops_ft", "waste_ft", "result", "at_least_ft"});
  for (const TrimBatch& batch : batches) {
    const Trim* trim = byId(job.trims, batch.trim);
    for (const OrderedTrim& line : orderedOf(batch)) {
      const Length bought = line.stock * line.quantity;
      table.rows.push_back(
          {std::to_string(table.rows.size() + 1), batch.trim, batch.colour, smallLength(trim->thickness, units),
           exactText(line.stock, units), smallLength(line.stock, units), std::to_string(line.quantity),
           largeLength(bought, units), weightText(trimKilograms(*trim, bought), units), largeLength(line.pieces, units),
           largeLength(line.kerfs, units), largeLength(line.ends, units), largeLength(line.drops, units),
           largeLength(line.waste, units), resultWord(batch), largeLength(batch.atLeast(), units)});
    }
  }
  return table;
}

Table trimCutTable(const TrimTakeoff& takeoff, const std::vector<TrimBatch>& batches, UnitSystem units) {
  Table table;
  table.columns =
      columnsIn(units, {"trim", "colour", "stick", "stock", "stock_in", "cut", "at_in", "length_in", "piece", "part",
                        "parts", "piece_length_in", "wall", "what", "side", "opening", "lip_in", "laps"});
  for (const TrimBatch& batch : batches) {
    for (const TrimStick& stick : batch.sticks) {
      int number = 0;
      for (const TrimCut& cut : stick.cuts) {
        auto row = cutRow(batch, stick, ++number, cut.at, cut.length, units);
        addPiece(row, takeoff.pieces.at(static_cast<std::size_t>(cut.piece)), cut.part, units);
        table.rows.push_back(std::move(row));
      }
      const Length rest = stick.drop + stick.waste;
      if (rest == Length()) continue;
      auto row = cutRow(batch, stick, 0, stick.restAt(), rest, units);
      row.insert(row.end(), {"", "", "", "", "", stick.drop > Length() ? "drop" : "waste", "", "", "", ""});
      table.rows.push_back(std::move(row));
    }
  }
  return table;
}

}  // namespace ribwright
