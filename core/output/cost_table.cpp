#include "core/output/cost_table.h"

#include "core/job/stated_words.h"
#include "core/output/columns.h"
#include "core/output/figures.h"

namespace ribwright {
namespace {

constexpr std::size_t amountColumn = 13, sparesColumn = 14, wasteColumn = 15, costColumns = 17;

std::string lengthCell(Length length, UnitSystem units) {
  return length == Length() ? std::string() : smallLength(length, units);
}

std::string gramsCell(std::int64_t grams, UnitSystem units) {
  return weightText(static_cast<double>(grams) / 1000, units);
}

std::string moneyCell(const std::optional<Money>& money) { return money ? moneyText(*money) : std::string(); }

bool isMetal(const CostLine& line) { return line.length > Length(); }

std::vector<std::string> lineRow(const CostLine& line, UnitSystem units) {
  std::vector<std::string> row{"line",
                               std::string(priceWhatWords[static_cast<std::size_t>(line.thing.what)]),
                               line.thing.item,
                               line.thing.colour,
                               lengthCell(line.thing.thickness, units),
                               lengthCell(line.length, units),
                               std::to_string(line.quantity)};
  row.resize(costColumns);
  if (isMetal(line)) {
    row[7] = std::to_string(line.spares);
    row[8] = largeLength(line.measure.length, units);
    row[9] = areaText(line.measure.area, units);
    if (line.measure.grams) row[10] = gramsCell(*line.measure.grams, units);
  }
  if (line.price) {
    row[11] = pricePerWords[static_cast<std::size_t>(isMetal(line) ? line.price->per : Price::Per::Each)];
    row[12] = moneyText(Money::cents(line.price->cents));
  }
  row[amountColumn] = moneyCell(line.amount);
  if (line.amount && isMetal(line)) {
    row[sparesColumn] = moneyText(line.forSpares);
    row[wasteColumn] = moneyText(line.forWaste);
  }
  return row;
}

std::vector<std::string> sumRow(std::string row, std::string item, Money money) {
  std::vector<std::string> cells(costColumns);
  cells[0] = std::move(row);
  cells[2] = std::move(item);
  cells[amountColumn] = moneyText(money);
  return cells;
}

std::vector<std::string> thingCells(const BoughtThing& thing, Length length, UnitSystem units) {
  return {std::string(priceWhatWords[static_cast<std::size_t>(thing.what)]), thing.item, thing.colour,
          lengthCell(thing.thickness, units), lengthCell(length, units)};
}

std::vector<std::string> deltaRow(const char* list, const SheetKind& kind, std::int64_t quantity, UnitSystem units) {
  return {list,
          kind.sheet.profile,
          smallLength(kind.sheet.thickness, units),
          kind.sheet.translucent ? std::string(translucentColour) : kind.sheet.colour,
          exactText(kind.length, units),
          smallLength(kind.length, units),
          std::to_string(quantity),
          "",
          "",
          ""};
}

}  // namespace

std::string_view costKindWord(CostKind kind) {
  static constexpr std::string_view words[] = {"full",  "rip",   "rake", "notched", "above", "below",
                                               "mixed", "spare", "trim", "cut",     "charge"};
  return words[static_cast<std::size_t>(kind)];
}

Table costTable(const Job& job, const JobCost& cost, UnitSystem units) {
  Table table;
  table.columns = columnsIn(
      units, {"row", "what", "item", "colour", "thickness_in", "length_in", "quantity", "spares", "total_length_ft",
              "area_sqft", "weight_lb", "per", "price", "amount", "for_spares", "for_waste", "currency"});
  for (const CostLine& line : cost.lines) table.rows.push_back(lineRow(line, units));
  for (const auto& [wall, money] : cost.walls()) table.rows.push_back(sumRow("wall", wall, money));
  for (const auto& [kind, money] : cost.kinds())
    table.rows.push_back(sumRow("kind", std::string(costKindWord(kind)), money));
  std::vector<std::string> total = sumRow("total", "", cost.total);
  total[sparesColumn] = moneyText(cost.spares);
  total[wasteColumn] = moneyText(cost.waste);
  table.rows.push_back(std::move(total));
  for (auto& row : table.rows) row.back() = job.prices.currency;
  return table;
}

Table deltaOrderTable(const DeltaOrder& delta, UnitSystem units) {
  Table table;
  table.columns = columnsIn(units, {"list", "profile", "thickness_in", "colour", "length", "length_in", "quantity",
                                    "cut_to_in", "order_state", "marks"});
  for (const SheetLot& lot : delta.toOrder) {
    table.rows.push_back(deltaRow("order", kindOf(lot), lot.quantity, units));
    table.rows.back()[9] = spaced(lot.marks);
  }
  for (const ServedNeeds& served : delta.served) {
    std::vector<std::string> row = deltaRow("use", served.sheet, static_cast<std::int64_t>(served.marks.size()), units);
    row[7] = smallLength(served.need, units);
    row[8] = served.toCome ? "to come" : "on site";
    row[9] = spaced(served.marks);
    table.rows.push_back(std::move(row));
  }
  for (const UnneededSheets& left : delta.leftOver) {
    for (const auto& [count, state] : {std::pair(left.onSite, "on site"), std::pair(left.toCome, "to come")}) {
      if (count == 0) continue;
      table.rows.push_back(deltaRow("left", left.sheet, count, units));
      table.rows.back()[8] = state;
    }
  }
  for (const SheetLot& lot : delta.toCome) table.rows.push_back(deltaRow("to come", kindOf(lot), lot.quantity, units));
  return table;
}

Table orderDifferenceTable(const OrderDifference& difference, UnitSystem units) {
  Table table;
  table.columns = columnsIn(units, {"what", "item", "colour", "thickness_in", "length_in", "before", "after", "more",
                                    "weight_more_lb", "cost_before", "cost_after", "cost_more"});
  for (const LineChange& line : difference.lines) {
    std::vector<std::string> row = thingCells(line.thing, line.length, units);
    row.push_back(std::to_string(line.before));
    row.push_back(std::to_string(line.after));
    row.push_back(std::to_string(line.more()));
    row.push_back(gramsCell(line.gramsAfter - line.gramsBefore, units));
    row.push_back(moneyCell(line.costBefore));
    row.push_back(moneyCell(line.costAfter));
    row.push_back(moneyCell(line.costMore()));
    table.rows.push_back(std::move(row));
  }
  std::vector<std::string> total(table.columns.size());
  total[0] = "total";
  total[8] = gramsCell(difference.gramsMore, units);
  total[11] = moneyCell(difference.costMore);
  table.rows.push_back(std::move(total));
  return table;
}

}  // namespace ribwright
