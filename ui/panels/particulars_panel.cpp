#include "ui/panels/particulars_panel.h"

#include <QEvent>
#include <QHeaderView>
#include <QLabel>
#include <QSplitter>
#include <QTableWidget>
#include <QVBoxLayout>

#include "core/drawing/particulars.h"
#include "ui/panels/field_form.h"
#include "ui/panels/form_scroll.h"
#include "ui/panels/part_paths.h"

namespace ribwright {

namespace {

QTableWidgetItem* item(const std::string& words) {
  auto* made = new QTableWidgetItem(QString::fromStdString(words));
  made->setTextAlignment(Qt::AlignLeft | Qt::AlignTop);
  return made;
}

}  // namespace

ParticularsPanel::ParticularsPanel(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      title_(new QLabel(this)),
      form_(new FieldForm(session, FieldForm::Shows::All, this)),
      rows_(new QTableWidget(0, 2, this)) {
  title_->setObjectName(QStringLiteral("particularsTitle"));
  title_->setTextFormat(Qt::PlainText);
  title_->setWordWrap(true);
  makeRows();
  auto* parts = new QSplitter(Qt::Vertical, this);
  parts->setChildrenCollapsible(false);
  auto* scroll = new FormScroll(form_, parts);
  scroll->setObjectName(QStringLiteral("stated"));
  parts->addWidget(scroll);
  parts->addWidget(rows_);
  parts->setSizes({600, 400});
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addWidget(title_);
  layout->addWidget(parts, 1);
  setFocusProxy(scroll);
  rows_->viewport()->installEventFilter(this);
  fit();
  connect(&session_, &Session::wallChanged, this, &ParticularsPanel::showChosen);
  connect(&session_, &Session::chosenChanged, this, &ParticularsPanel::showChosen);
  connect(&session_, &Session::historyChanged, this, &ParticularsPanel::showStated);
  if (session_.isOpen()) showChosen();
}

void ParticularsPanel::makeRows() {
  rows_->setObjectName(QStringLiteral("particulars"));
  rows_->setAccessibleName(tr("Particulars of what is chosen"));
  rows_->horizontalHeader()->hide();
  rows_->horizontalHeader()->setStretchLastSection(true);
  rows_->verticalHeader()->hide();
  rows_->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  rows_->setShowGrid(false);
  rows_->setAlternatingRowColors(true);
  rows_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  rows_->setSelectionBehavior(QAbstractItemView::SelectRows);
  rows_->setTabKeyNavigation(false);
  rows_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
}

void ParticularsPanel::fit() {
  QFont bold = font();
  bold.setBold(true);
  title_->setFont(bold);
  title_->setMargin(fontMetrics().height() / 4);
  rows_->setMinimumHeight(4 * fontMetrics().lineSpacing());
}

void ParticularsPanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) fit();
}

void ParticularsPanel::finishTyping() { form_->finishTyping(); }

// By the newest job, which may be a moment ahead of what follows from it.
void ParticularsPanel::showStated() {
  if (!session_.isOpen() || session_.wall() < 0) return form_->setPaths({});
  const std::vector<Part> wall{Part{Part::Kind::Face, session_.chosenWall().letter, ""}};
  const auto& parts = session_.chosenParts();
  form_->setPaths(pathsOf(session_.newest(), parts.empty() ? wall : parts));
}

void ParticularsPanel::showChosen() {
  showStated();
  rows_->setRowCount(0);
  title_->clear();
  if (!session_.isOpen() || session_.wall() < 0) return;
  const Part part = session_.chosen().value_or(Part{Part::Kind::Face, session_.chosenWall().letter, ""});
  const auto all = particularsOf(session_.job(), session_.plan(), part, session_.words(), session_.style());
  title_->setText(QString::fromStdString(titleOf(session_.job(), part, session_.words())));
  rows_->setRowCount(static_cast<int>(all.size()));
  for (int row = 0; row < rows_->rowCount(); ++row) {
    const Particular& each = all[static_cast<std::size_t>(row)];
    rows_->setItem(row, 0, item(each.name));
    rows_->setItem(row, 1, item(each.value));
  }
}

// The names take a little less than half.
bool ParticularsPanel::eventFilter(QObject* watched, QEvent* event) {
  if (watched == rows_->viewport() && event->type() == QEvent::Resize)
    rows_->setColumnWidth(0, rows_->viewport()->width() * 45 / 100);
  return QWidget::eventFilter(watched, event);
}

}  // namespace ribwright
