// Keys of a table whose cells are typed into one after the other.
#pragma once

#include <QKeyEvent>
#include <QTableView>

namespace ribwright {

enum class CellKey { None, Copy, Paste, Next, Previous, Empty };  // Enter, Shift+Enter, Delete

inline CellKey cellKeyOf(const QKeyEvent& event) {
  if (event.matches(QKeySequence::Copy)) return CellKey::Copy;
  if (event.matches(QKeySequence::Paste)) return CellKey::Paste;
  switch (event.key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
      return event.modifiers().testFlag(Qt::ShiftModifier) ? CellKey::Previous : CellKey::Next;
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
      return CellKey::Empty;
    default:
      return CellKey::None;
  }
}

// To the next cell that can be typed into, row by row; none: stays. `step`: 1 or -1; `takes(row, column)`.
template <class Takes>
void goToTypedCell(QTableView& table, int step, const Takes& takes) {
  const QAbstractItemModel& model = *table.model();
  const int columns = model.columnCount(), cells = columns * model.rowCount();
  int place = table.currentIndex().row() * columns + table.currentIndex().column() + step;
  while (place >= 0 && place < cells && !takes(place / columns, place % columns)) place += step;
  if (place >= 0 && place < cells) table.setCurrentIndex(model.index(place / columns, place % columns));
}

}  // namespace ribwright
