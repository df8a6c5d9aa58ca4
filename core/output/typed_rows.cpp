#include "core/output/typed_rows.h"

#include "core/job/job_file_joined.h"

namespace ribwright {
namespace {

constexpr std::string_view inches = "_in", millimetres = "_mm";

bool isUnit(std::string_view text) { return text == inches || text == millimetres; }

}  // namespace

Outcome<TypedRows> TypedRows::read(std::string_view csv, const std::vector<TypedColumn>& columns) {
  Outcome<ReadTable> read = readCsv(csv);
  if (!read) return read.faults();
  TypedRows rows;
  rows.read_ = std::move(read).value();
  std::vector<Fault> faults;
  for (const TypedColumn& column : columns) {
    rows.places_.push_back(rows.placeOf(column));
    if (rows.places_.back().at || !column.needed) continue;
    const std::string units =
        column.length ? joined(column.name, inches, " or ", column.name, millimetres) : std::string(column.name);
    faults.push_back({"line 1", joined("no column is called ", units)});
  }
  if (!faults.empty()) return faults;
  return rows;
}

TypedRows::Place TypedRows::placeOf(const TypedColumn& column) const {
  Place place;
  const auto& names = read_.table.columns;
  for (std::size_t k = 0; k < names.size(); ++k) {
    const std::string_view name = names[k];
    const bool here =
        column.length ? name.starts_with(column.name) && isUnit(name.substr(column.name.size())) : name == column.name;
    if (!here) continue;
    place.at = k;
    place.style = {name.ends_with(millimetres) ? UnitSystem::Millimetres : UnitSystem::FeetInches, read_.decimalSign};
  }
  return place;
}

std::string TypedRows::text(std::size_t row, std::size_t column) const {
  const auto& at = places_[column].at;
  return at ? read_.table.rows[row][*at] : std::string();
}

Fault TypedRows::fault(std::size_t row, std::size_t column, const std::string& message) const {
  const std::string& name = read_.table.columns[places_[column].at.value_or(0)];
  return {joined("line ", read_.lines[row], ", ", name), message};
}

}  // namespace ribwright
