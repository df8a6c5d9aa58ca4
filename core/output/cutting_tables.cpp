#include "core/output/cutting_tables.h"

#include <algorithm>
#include <charconv>

#include "core/job/job_file_text.h"
#include "core/output/columns.h"
#include "core/output/figures.h"
#include "core/output/typed_rows.h"
#include "core/units/typed_text.h"

namespace ribwright {
namespace {

enum CutColumn : std::size_t { kBare, kWithUnit, kQuantity, kMark, kMarks };

const std::vector<TypedColumn> asked = {
    {"length", false, false}, {"length", true, false}, {"quantity"}, {"mark", false, false}, {"marks", false, false}};

Outcome<std::int64_t> wholeNumber(const TypedRows& rows, std::size_t row) {
  const std::string text = rows.text(row, kQuantity);
  std::int64_t number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (error == std::errc() && end == text.data() + text.size() && number >= 0) return number;
  return rows.fault(row, kQuantity, inQuotes(text) + " is no count; write a whole number of pieces");
}

Outcome<Length> lengthIn(const TypedRows& rows, std::size_t row, UnitSystem units) {
  const CutColumn column = rows.has(kBare) ? kBare : kWithUnit;
  LengthStyle style = rows.style(column);
  if (column == kBare) style.units = units;
  const auto length = parseLength(rows.text(row, column), style);
  if (!length) return rows.fault(row, column, length.faults().front().message);
  if (length.value() <= Length())
    return rows.fault(row, column, inQuotes(rows.text(row, column)) + " is no length to cut; it is more than nothing");
  return length.value();
}

std::int64_t leftOf(const CuttingList& list, const CutPattern& pattern) {
  std::int64_t left = list.stocks[static_cast<std::size_t>(pattern.stock)].length - list.endTrim;
  for (std::size_t i = 0; i < pattern.counts.size(); ++i)
    left -= pattern.counts[i] * (list.demands[i].length + list.kerf);
  return std::max<std::int64_t>(0, left);
}

void append(std::vector<std::string>& row, const std::vector<std::string>& fields) {
  row.insert(row.end(), fields.begin(), fields.end());
}

std::vector<std::string> renamed(const std::vector<std::string>& columns, const std::string& name) {
  std::vector<std::string> names;
  for (const std::string& column : columns) names.push_back(name + column.substr(std::string("length").size()));
  return names;
}

}  // namespace

Outcome<std::vector<CutLine>> readCutLines(std::string_view csv, UnitSystem units) {
  auto read = TypedRows::read(csv, asked);
  if (!read) return read.faults();
  const TypedRows& rows = read.value();
  if (!rows.has(kBare) && !rows.has(kWithUnit))
    return Fault{"line 1", "has no column length; name it length, length_in or length_mm"};
  std::vector<CutLine> lines;
  std::vector<Fault> faults;
  for (std::size_t row = 0; row < rows.size(); ++row) {
    const auto length = lengthIn(rows, row, units);
    const auto quantity = wholeNumber(rows, row);
    if (!length) faults.push_back(length.faults().front());
    if (!quantity) faults.push_back(quantity.faults().front());
    if (length && quantity)
      lines.push_back({length.value(), quantity.value(), rows.text(row, rows.has(kMark) ? kMark : kMarks)});
  }
  if (!faults.empty()) return faults;
  return lines;
}

CutFigures lengthFigures(UnitSystem units) {
  return {columnsIn(units, {"length", "length_in"}), [units](std::int64_t number) {
            const Length length = Length::nanometres(number);
            return std::vector<std::string>{exactText(length, units), smallLength(length, units)};
          }};
}

CutFigures bareFigures() {
  return {{"length"}, [](std::int64_t number) { return std::vector<std::string>{std::to_string(number)}; }};
}

Table cuttingPlanTable(const CuttingList& list, const CuttingPlan& plan, const std::vector<std::string>& marks,
                       const CutFigures& figures) {
  Table table{{"pattern", "times"}, {}};
  append(table.columns, renamed(figures.columns, "stock"));
  append(table.columns, figures.columns);
  table.columns.push_back("quantity");
  if (!marks.empty()) table.columns.push_back("mark");
  append(table.columns, renamed(figures.columns, "left"));
  for (std::size_t p = 0; p < plan.patterns.size(); ++p) {
    const CutPattern& pattern = plan.patterns[p];
    for (std::size_t i = 0; i < pattern.counts.size(); ++i) {
      if (pattern.counts[i] == 0) continue;
      std::vector<std::string> row = {std::to_string(p + 1), std::to_string(pattern.times)};
      append(row, figures.figures(list.stocks[static_cast<std::size_t>(pattern.stock)].length));
      append(row, figures.figures(list.demands[i].length));
      row.push_back(std::to_string(pattern.counts[i]));
      if (!marks.empty()) row.push_back(marks[i]);
      append(row, figures.figures(leftOf(list, pattern)));
      table.rows.push_back(std::move(row));
    }
  }
  return table;
}

}  // namespace ribwright
