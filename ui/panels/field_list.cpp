#include "ui/panels/field_list.h"

#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>

#include "core/editing/job_fields.h"
#include "ui/panels/field_editor.h"
#include "ui/panels/field_edits.h"
#include "ui/panels/field_form.h"
#include "ui/panels/grade_text.h"
#include "ui/panels/named_widgets.h"
#include "ui/session/session.h"

namespace ribwright {

namespace {

constexpr int mostColumns = 4, mostListRows = 8, columnLetters = 13;

std::vector<const Field*> columnsOf(const Field& item) {
  std::vector<const Field*> columns;
  for (const Field& field : item.fields) {
    if (field.isText() && static_cast<int>(columns.size()) < mostColumns) columns.push_back(&field);
  }
  return columns;
}

}  // namespace

FieldList::FieldList(Session& session, const Field& list, QWidget* parent)
    : QWidget(parent),
      session_(session),
      path_(list.path),
      table_(new QTableWidget(this)),
      fault_(new QLabel(this)),
      form_(new FieldForm(session, FieldForm::Shows::All, this)) {
  const QString name = fieldName(path_);
  table_->setObjectName(name + QStringLiteral(".items"));
  table_->setAccessibleName(labelOf(session, list));
  table_->verticalHeader()->hide();
  table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  table_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  table_->horizontalHeader()->setTextElideMode(Qt::ElideRight);
  table_->horizontalHeader()->setMinimumSectionSize(1);
  table_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  table_->setSelectionBehavior(QAbstractItemView::SelectRows);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table_->setTabKeyNavigation(false);
  table_->setAlternatingRowColors(true);
  fault_->setObjectName(QStringLiteral("fault"));
  fault_->setTextFormat(Qt::PlainText);
  fault_->setWordWrap(true);
  fault_->hide();
  add_ = namedButton(tr("Add"), name + QStringLiteral(".add"), this);
  remove_ = namedButton(tr("Remove"), name + QStringLiteral(".remove"), this);
  up_ = namedButton(QStringLiteral("\u2191"), name + QStringLiteral(".up"), this);
  down_ = namedButton(QStringLiteral("\u2193"), name + QStringLiteral(".down"), this);
  add_->setAccessibleName(tr("Add to: %1").arg(table_->accessibleName()));
  remove_->setAccessibleName(tr("Remove from: %1").arg(table_->accessibleName()));
  up_->setAccessibleName(tr("Move up in: %1").arg(table_->accessibleName()));
  down_->setAccessibleName(tr("Move down in: %1").arg(table_->accessibleName()));
  auto* layout = new QGridLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(table_, 0, 0);
  auto* buttons = new QHBoxLayout;
  for (QPushButton* each : {add_, remove_, up_, down_}) buttons->addWidget(each);
  buttons->addStretch(1);
  layout->addLayout(buttons, 1, 0);
  layout->addWidget(fault_, 2, 0);
  layout->addWidget(form_, 3, 0);
  for (QPushButton* each : {add_, remove_, up_, down_}) each->setToolTip(each->accessibleName());
  makeButtons();
  fit();
  connect(table_, &QTableWidget::currentCellChanged, this, [this](int now, int, int before, int) {
    if (now != before) showChosen();
  });
  refresh();
}

void FieldList::makeButtons() {
  connect(add_, &QPushButton::clicked, this, [this] {
    const int at = row() < 0 ? static_cast<int>(list_.items) : row() + 1;
    tell(addItem(session_, list_, static_cast<std::size_t>(at)), at);
  });
  connect(remove_, &QPushButton::clicked, this, [this] {
    const int at = row();
    tell(removeItem(session_, list_, static_cast<std::size_t>(at)), at);
  });
  const auto move = [this](int step) {
    const int at = row();
    tell(moveItem(session_, list_, static_cast<std::size_t>(at), static_cast<std::size_t>(at + step)), at + step);
  };
  connect(up_, &QPushButton::clicked, this, [move] { move(-1); });
  connect(down_, &QPushButton::clicked, this, [move] { move(1); });
}

void FieldList::tell(const std::vector<Fault>& faults, int row) {
  fault_->setVisible(!faults.empty());
  if (faults.empty()) return choose(row);
  fault_->setText(gradeSign(Grade::Look) + QLatin1Char(' ') + QString::fromStdString(oneLine(faults.front())));
}

void FieldList::refresh() {
  auto list = session_.isOpen() ? fieldAt(session_.newest(), path_) : Outcome<Field>(Fault{});
  if (!list) return;
  list_ = std::move(list).value();
  fillTable();
  showChosen();
}

void FieldList::fillTable() {
  const int before = row();
  const QSignalBlocker quiet(table_);
  const int rows = static_cast<int>(list_.fields.size());
  table_->setVisible(rows > 0);
  table_->setRowCount(rows);
  if (rows == 0) return;
  const auto columns = columnsOf(list_.fields.front());
  table_->setColumnCount(static_cast<int>(columns.size()));
  for (int column = 0; column < table_->columnCount(); ++column) {
    const QString label = labelOf(session_, *columns[static_cast<std::size_t>(column)]);
    auto* head = new QTableWidgetItem(label);
    head->setToolTip(label);
    table_->setHorizontalHeaderItem(column, head);
  }
  for (int line = 0; line < rows; ++line) {
    const auto cells = columnsOf(list_.fields[static_cast<std::size_t>(line)]);
    for (int column = 0; column < table_->columnCount(); ++column) {
      const QString words = shownText(session_, *cells[static_cast<std::size_t>(column)]);
      auto* cell = new QTableWidgetItem(words);
      cell->setToolTip(words);
      table_->setItem(line, column, cell);
    }
  }
  table_->setCurrentCell(std::clamp(before, 0, rows - 1), 0);
  fit();
}

// As high as its rows, up to some; then it scrolls.
void FieldList::fit() {
  const int line = fontMetrics().lineSpacing() + fontMetrics().height() / 2;
  table_->verticalHeader()->setDefaultSectionSize(line);
  const int rows = std::min(mostListRows, table_->rowCount());
  table_->setFixedHeight(rows * line + table_->horizontalHeader()->sizeHint().height() + 2 * table_->frameWidth());
  const int room = 2 * fontMetrics().height();
  for (QPushButton* each : {up_, down_}) each->setFixedWidth(room);
  fitColumns();
}

// As many columns as can be read; the first in any case.
void FieldList::fitColumns() {
  const int fitting = std::max(1, width() / (columnLetters * fontMetrics().averageCharWidth()));
  for (int column = 0; column < table_->columnCount(); ++column) table_->setColumnHidden(column, column >= fitting);
}

void FieldList::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fitColumns();
}

void FieldList::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) fit();
}

int FieldList::row() const { return table_->rowCount() > 0 ? table_->currentRow() : -1; }

void FieldList::choose(int row) {
  if (table_->rowCount() > 0) table_->setCurrentCell(std::clamp(row, 0, table_->rowCount() - 1), 0);
  showChosen();
}

void FieldList::showChosen() {
  const int at = row(), rows = table_->rowCount();
  remove_->setEnabled(at >= 0);
  up_->setEnabled(at > 0);
  down_->setEnabled(at >= 0 && at + 1 < rows);
  if (at < 0) return form_->setPaths({});
  form_->setPaths({list_.fields[static_cast<std::size_t>(at)].path});
}

void FieldList::finishTyping() { form_->finishTyping(); }

}  // namespace ribwright
