// Tables as files that a person chose: what reading and writing them comes to.
#pragma once

#include <QString>
#include <string>
#include <vector>

#include "core/units/outcome.h"

namespace ribwright {

// Far more than any building has openings, readings or prices.
constexpr qint64 mostTableBytes = 16 * 1024 * 1024;

// What came of it: a line to be shown for a while, or under a title why nothing was done. Neither: nobody chose a file.
struct TableFileEnd {
  QString done;
  QString title;
  std::vector<Fault> faults;
};

TableFileEnd tableFailed(const QString& title, const QString& path, const QString& what);

// A few of them, with commas between; more than `most` end in three dots.
QString namedFew(const std::vector<std::string>& names, std::size_t most);

// Whole or not at all; then `error` says why.
bool writeWhole(const QString& path, const std::string& text, QString& error);

}  // namespace ribwright
