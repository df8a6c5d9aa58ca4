#include "ui/panels/survey_table.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLineEdit>
#include <QToolTip>
#include <algorithm>

#include "ui/panels/survey_delegate.h"
#include "ui/panels/typed_cells.h"

namespace ribwright {

namespace {

QStringList linesOf(QString text) {
  text.replace(QStringLiteral("\r\n"), QStringLiteral("\n")).replace(QLatin1Char('\r'), QLatin1Char('\n'));
  while (text.endsWith(QLatin1Char('\n'))) text.chop(1);
  return text.split(QLatin1Char('\n'));
}

}  // namespace

SurveyTable::SurveyTable(Session& session, QWidget* parent)
    : QTableView(parent), session_(session), model_(new SurveyModel(session, this)) {
  setModel(model_);
  auto* delegate = new SurveyDelegate(this);
  setItemDelegate(delegate);
  setEditTriggers(AnyKeyPressed | DoubleClicked | EditKeyPressed);
  setTabKeyNavigation(false);
  setAlternatingRowColors(true);
  setWordWrap(false);
  setHorizontalScrollMode(ScrollPerPixel);
  horizontalHeader()->setHighlightSections(true);
  verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  connect(delegate, &SurveyDelegate::enterAsked, this, &SurveyTable::enterTyped);
  connect(delegate, &SurveyDelegate::gaveUp, this,
          [this] { model_->giveUp(currentIndex().row(), currentIndex().column()); });
  connect(model_, &SurveyModel::refused, this, &SurveyTable::tellRefused);
  connect(model_, &SurveyModel::entered, this, &SurveyTable::tellCurrent);
  fit();
}

void SurveyTable::refill() {
  const QModelIndex before = currentIndex();
  const int row = before.row(), column = before.column();
  following_ = true;
  model_->refill();
  if (!currentIndex().isValid() && model_->rowCount() > 0)
    setCurrentIndex(
        model_->index(std::clamp(row, 0, model_->rowCount() - 1), std::clamp(column, 0, model_->columnCount() - 1)));
  fit();
  following_ = false;
  tellCurrent();
}

void SurveyTable::fit() {
  horizontalHeader()->setFont(font());  // a table that is not seen would keep its header's old one
  verticalHeader()->setDefaultSectionSize(fontMetrics().height() + fontMetrics().height() / 2);
  resizeColumnsToContents();
}

void SurveyTable::changeEvent(QEvent* event) {
  QTableView::changeEvent(event);
  if (event->type() == QEvent::FontChange && model_) fit();
}

void SurveyTable::finishTyping() {
  if (state() == EditingState) setFocus(Qt::OtherFocusReason);
}

void SurveyTable::enterTyped(QLineEdit* editor, int step) {
  const QModelIndex here = currentIndex();
  if (editor->isModified() && !model_->setData(here, editor->text(), Qt::EditRole)) {
    editor->setAccessibleDescription(model_->sentences(here.row(), here.column()));
    return;  // it stays open with what was typed
  }
  editor->setModified(false);
  closeEditor(editor, QAbstractItemDelegate::NoHint);
  goOn(step);
}

// What could not be read may be readable by now: name and date are there.
void SurveyTable::enterAgain(int step) {
  const QModelIndex here = currentIndex();
  const bool unread = here.isValid() && here.data(SurveyModel::UnreadRole).toBool();
  if (!unread || model_->setData(here, here.data(Qt::EditRole), Qt::EditRole)) goOn(step);
}

void SurveyTable::goOn(int step) {
  goToTypedCell(*this, step, [this](int row, int column) { return model_->takesReading(row, column); });
}

void SurveyTable::keyPressEvent(QKeyEvent* event) {
  switch (cellKeyOf(*event)) {
    case CellKey::Copy:
      return copy();
    case CellKey::Paste:
      return paste();
    case CellKey::Next:
      return enterAgain(1);
    case CellKey::Previous:
      return enterAgain(-1);
    case CellKey::Empty:
      return strikeOut();
    case CellKey::None:
      break;
  }
  QTableView::keyPressEvent(event);
}

void SurveyTable::strikeOut() {
  std::vector<SurveyModel::Entry> entries;
  for (const QModelIndex& index : selectedIndexes()) {
    if (model_->takesReading(index.row(), index.column()) && !index.data(Qt::EditRole).toString().isEmpty())
      entries.push_back({index.row(), index.column(), {}});
  }
  if (!entries.empty()) model_->enter(entries);
}

void SurveyTable::copy() const {
  QModelIndexList chosen = selectedIndexes();
  std::sort(chosen.begin(), chosen.end());
  QString text;
  for (int i = 0; i < chosen.size(); ++i) {
    if (i > 0) text += chosen[i].row() == chosen[i - 1].row() ? QLatin1Char('\t') : QLatin1Char('\n');
    text += chosen[i].data(Qt::EditRole).toString();
  }
  if (!chosen.isEmpty()) QGuiApplication::clipboard()->setText(text);
}

// Cells of a spreadsheet, from the one at hand to the right and down; blank ones leave what is there.
void SurveyTable::paste() {
  std::vector<SurveyModel::Entry> entries;
  int row = currentIndex().row();
  for (const QString& line : linesOf(QGuiApplication::clipboard()->text())) {
    int column = currentIndex().column();
    for (const QString& cell : line.split(QLatin1Char('\t'))) {
      if (!cell.trimmed().isEmpty()) {
        if (!model_->takesReading(row, column))
          return emit told(tr("Nothing was pasted: \"%1\" would stand where nothing is measured.").arg(cell), true);
        entries.push_back({row, column, cell.trimmed()});
      }
      ++column;
    }
    ++row;
  }
  if (!entries.empty()) model_->enter(entries);
}

void SurveyTable::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
  QTableView::currentChanged(current, previous);
  if (following_) return;
  tellCurrent();
  // The girt that is at hand is lit up on the wall.
  if (!current.isValid() || current.row() == previous.row()) return;
  const SurveyLine& line = model_->line(current.row());
  if (line.of == SurveyLine::Of::Girt && !line.id.empty())
    session_.choose(Part{Part::Kind::Girt, session_.chosenWall().letter, line.id});
}

void SurveyTable::tellCurrent() {
  const QModelIndex here = currentIndex();
  if (!here.isValid()) return emit told(tr("Nothing is measured on this wall: it has no girts."), false);
  emit told(model_->sentences(here.row(), here.column()), here.data(SurveyModel::UnreadRole).toBool());
}

void SurveyTable::tellRefused(int row, int column) {
  setCurrentIndex(model_->index(row, column));
  if (!isVisible()) return;
  const QRect cell = visualRect(currentIndex());
  QToolTip::showText(viewport()->mapToGlobal(cell.bottomLeft()), model_->sentences(row, column), this);
}

}  // namespace ribwright
