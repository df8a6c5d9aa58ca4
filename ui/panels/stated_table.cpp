#include "ui/panels/stated_table.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QKeyEvent>
#include <QToolTip>
#include <algorithm>
#include <optional>

#include "ui/panels/stated_delegate.h"
#include "ui/panels/table_copy.h"
#include "ui/panels/typed_cells.h"

namespace ribwright {

namespace {

constexpr int mostTold = 3;  // faults in one line

}  // namespace

StatedTable::StatedTable(Session& session, StatedList list, QWidget* parent)
    : StatedTable(session, new StatedModel(session, list), parent) {}

StatedTable::StatedTable(Session& session, StatedModel* model, QWidget* parent)
    : PartTable(session, model, parent), model_(model) {
  auto* delegate = new StatedDelegate(this);
  setItemDelegate(delegate);
  setEditTriggers(AnyKeyPressed | DoubleClicked | EditKeyPressed);
  connect(delegate, &StatedDelegate::enterAsked, this, &StatedTable::enterTyped);
  connect(delegate, &StatedDelegate::gaveUp, this,
          [this] { model_->giveUp(currentIndex().row(), currentIndex().column()), tellCurrent(); });
  connect(model_, &QAbstractItemModel::dataChanged, this, &StatedTable::tellCurrent);
}

void StatedTable::refill() {
  model_->takeWall();
  fill(model_->statedRows());
  tellCurrent();
}

void StatedTable::finishTyping() {
  if (state() == EditingState) setFocus(Qt::OtherFocusReason);
}

void StatedTable::enterTyped(QWidget* editor, int step) {
  const QPersistentModelIndex here = currentIndex();
  const bool typed = StatedDelegate::isTyped(editor);
  const QString words = StatedDelegate::typedIn(editor);
  const int rows = model_->rowCount();
  StatedDelegate::setTyped(editor, false);
  if (typed && here.isValid() && !model_->enter(here.row(), here.column(), words)) {
    StatedDelegate::setTyped(editor, true);
    editor->setAccessibleDescription(model_->sentence(here.row(), here.column()));
    return tellRefused();  // it stays open with what was typed
  }
  if (!editor->isHidden()) closeEditor(editor, QAbstractItemDelegate::NoHint);  // it goes with rows that come anew
  // One was put in: the next can be typed at once.
  if (model_->rowCount() > rows) return setCurrentIndex(model_->index(model_->rowCount() - 1, 0));
  if (here.isValid() && model_->rowCount() == rows) goOn(step);
}

// What could not be read may be readable by now: what it names is there.
void StatedTable::enterAgain(int step) {
  const QModelIndex here = currentIndex();
  if (!here.isValid()) return;
  const bool unread = here.data(StatedModel::UnreadRole).toBool();
  if (!unread || model_->setData(here, here.data(Qt::EditRole), Qt::EditRole)) return goOn(step);
  tellRefused();
}

void StatedTable::goOn(int step) {
  goToTypedCell(*this, step, [this](int, int column) { return model_->isStated(column); });
}

void StatedTable::keyPressEvent(QKeyEvent* event) {
  switch (cellKeyOf(*event)) {
    case CellKey::Paste:
      return paste();
    case CellKey::Next:
      return enterAgain(1);
    case CellKey::Previous:
      return enterAgain(-1);
    case CellKey::Empty:
      return removeRows();
    case CellKey::Copy:
    case CellKey::None:
      break;
  }
  PartTable::keyPressEvent(event);
}

void StatedTable::removeRows() {
  const QStringList faults = model_->remove(chosenRows());
  if (!faults.isEmpty()) emit told(tr("Nothing was removed: %1").arg(faults.join(QStringLiteral("; "))), true);
}

// Cells from the one at hand to the right and down; a first row of titles says which column is which.
QString StatedTable::entriesOf(const std::vector<QStringList>& pasted, std::vector<StatedModel::Entry>& entries) const {
  QStringList titles;
  for (int column = 0; column < model_->columnCount(); ++column)
    titles << model_->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
  const QStringList& first = pasted.front();
  const bool named =
      std::all_of(first.begin(), first.end(), [&](const QString& cell) { return titles.contains(cell); });
  int row = std::max(0, currentIndex().row());
  for (std::size_t line = named ? 1 : 0; line < pasted.size(); ++line, ++row) {
    for (int i = 0; i < pasted[line].size(); ++i) {
      const QString& cell = pasted[line][i];
      const int column = !named             ? std::max(0, currentIndex().column()) + i
                         : i < first.size() ? int(titles.indexOf(first[i]))
                                            : model_->columnCount();
      if (model_->isStated(column))
        entries.push_back({row, column, cell});
      else if (!cell.isEmpty() && !(named && column < model_->columnCount()))
        return tr("row %1: \"%2\" would stand in no column that is typed").arg(row + 1).arg(cell);
    }
  }
  return {};
}

void StatedTable::paste() {
  const QString text = QGuiApplication::clipboard()->text();
  if (text.isEmpty() || !currentIndex().isValid()) return;
  std::vector<StatedModel::Entry> entries;
  const QString outside = entriesOf(pastedCells(text), entries);
  const QStringList faults = !outside.isEmpty() ? QStringList{outside} : model_->enterAll(entries);
  if (faults.isEmpty()) return;
  QString words = QStringList(faults.mid(0, mostTold)).join(QStringLiteral("; "));
  if (faults.size() > mostTold) words += tr("; and %1 more").arg(faults.size() - mostTold);
  emit told(tr("Nothing was pasted: %1").arg(words), true);
}

void StatedTable::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
  PartTable::currentChanged(current, previous);
  tellCurrent();
}

void StatedTable::tellCurrent() {
  const QModelIndex here = currentIndex();
  emit told(model_->sentence(here.row(), here.column()), here.isValid() && model_->isUnread(here.row(), here.column()));
}

void StatedTable::tellRefused() {
  tellCurrent();
  if (!isVisible()) return;
  const QRect cell = visualRect(currentIndex());
  QToolTip::showText(viewport()->mapToGlobal(cell.bottomLeft()),
                     model_->sentence(currentIndex().row(), currentIndex().column()), this);
}

}  // namespace ribwright
