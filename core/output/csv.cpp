#include "core/output/csv.h"

#include <stdexcept>
#include <string_view>

namespace ribwright {
namespace {

void appendField(std::string& text, std::string_view field) {
  if (field.find_first_of(",\"\r\n") == std::string_view::npos) {
    text += field;
    return;
  }
  text += '"';
  for (const char c : field) {
    if (c == '"') text += '"';
    text += c;
  }
  text += '"';
}

void appendRecord(std::string& text, const std::vector<std::string>& fields) {
  for (std::size_t i = 0; i < fields.size(); ++i) {
    if (i > 0) text += ',';
    appendField(text, fields[i]);
  }
  text += "\r\n";
}

}  // namespace

std::string csvText(const Table& table, bool byteOrderMark) {
  std::string text = byteOrderMark ? "\xEF\xBB\xBF" : "";
  appendRecord(text, table.columns);
  for (const auto& row : table.rows) {
    if (row.size() != table.columns.size()) throw std::invalid_argument("a table's row is not as long as its header");
    appendRecord(text, row);
  }
  return text;
}

}  // namespace ribwright
