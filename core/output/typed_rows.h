// A table that was read back from a spreadsheet, row by row: named columns in any order, others passed over. A column
// of lengths is called by its unit (height_in, height_mm), which is what a bare number in it means.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/output/csv_reading.h"
#include "core/units/length_text.h"
#include "core/units/outcome.h"

namespace ribwright {

constexpr std::size_t mostTableFaults = 20;  // are told of one table

struct TypedColumn {
  std::string_view name;  // without its unit
  bool length = false;
  bool needed = true;  // the table is nothing without it
};

class TypedRows {
 public:
  // Faults: those of readCsv; a needed column that is not there.
  static Outcome<TypedRows> read(std::string_view csv, const std::vector<TypedColumn>& columns);

  std::size_t size() const { return read_.table.rows.size(); }
  // `column`: index into the columns that were asked for.
  bool has(std::size_t column) const { return places_[column].at.has_value(); }
  // Empty where the table has no such column.
  std::string text(std::size_t row, std::size_t column) const;
  const LengthStyle& style(std::size_t column) const { return places_[column].style; }
  // "line 3, height_in": ...
  Fault fault(std::size_t row, std::size_t column, const std::string& message) const;

 private:
  struct Place {
    std::optional<std::size_t> at;
    LengthStyle style;
  };
  Place placeOf(const TypedColumn& column) const;

  ReadTable read_;
  std::vector<Place> places_;  // parallel to the columns asked for
};

}  // namespace ribwright
