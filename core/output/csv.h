// Tables as comma-separated values, RFC 4180: fields quoted where they hold a comma, a quote or a line end, quotes
// doubled, every record closed by CR LF, the first record the names of the columns. UTF-8.
#pragma once

#include <string>
#include <vector>

namespace ribwright {

struct Table {
  std::vector<std::string> columns;
  std::vector<std::vector<std::string>> rows;  // each as long as `columns`
  bool operator==(const Table&) const = default;
};

// `byteOrderMark`: some spreadsheets take a file for UTF-8 only with one in front.
// Throws std::invalid_argument when a row is not as long as `columns`.
std::string csvText(const Table& table, bool byteOrderMark);

}  // namespace ribwright
