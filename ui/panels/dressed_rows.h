// A table whose rows are chosen whole, one at a time, and never typed into.
#pragma once

#include <QStringList>

class QTableWidget;

namespace ribwright {

void dressRows(QTableWidget& table, const QStringList& columns);

}  // namespace ribwright
