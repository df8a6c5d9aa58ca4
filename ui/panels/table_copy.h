// Rows of a table as they are laid on the clipboard: for a spreadsheet, and as text.
#pragma once

#include <QStringList>
#include <vector>

class QMimeData;

namespace ribwright {

// Text with tabs between the cells and a row of titles, and the same as a table in HTML.
QMimeData* copiedRows(const QStringList& titles, const std::vector<QStringList>& rows);

// Text that a spreadsheet has laid there, as rows of cells; a quoted cell may hold tabs, line ends and doubled quotes.
std::vector<QStringList> pastedCells(const QString& text);

}  // namespace ribwright
