#include "ui/panels/job_dialog.h"

#include <QDialogButtonBox>
#include <QEvent>
#include <QGridLayout>
#include <QListWidget>
#include <QPushButton>
#include <QStackedWidget>
#include <algorithm>

#include "core/editing/job_fields.h"
#include "ui/panels/field_editor.h"
#include "ui/panels/field_form.h"
#include "ui/panels/field_list.h"
#include "ui/panels/form_scroll.h"
#include "ui/session/session.h"

namespace ribwright {

namespace {

constexpr int titleLetters = 24, dialogLetters = 110, dialogLines = 40;

}  // namespace

JobDialog::JobDialog(Session& session, QWidget* parent)
    : QDialog(parent), session_(session), titles_(new QListWidget(this)), stack_(new QStackedWidget(this)) {
  setObjectName(QStringLiteral("jobDialog"));
  setWindowTitle(tr("Job particulars"));
  titles_->setObjectName(QStringLiteral("jobPages"));
  titles_->setAccessibleName(tr("Pages of the job"));
  titles_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
  for (QAbstractButton* each : buttons->buttons()) static_cast<QPushButton*>(each)->setAutoDefault(false);
  auto* layout = new QGridLayout(this);
  layout->addWidget(titles_, 0, 0);
  layout->addWidget(stack_, 0, 1);
  layout->addWidget(buttons, 1, 0, 1, 2);
  layout->setColumnStretch(1, 1);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(titles_, &QListWidget::currentRowChanged, this, &JobDialog::showPage);
  connect(&session_, &Session::jobOpened, this, &JobDialog::makePages);
  connect(&session_, &Session::historyChanged, this, &JobDialog::refresh);
  fit();
  resize(dialogLetters * fontMetrics().averageCharWidth(), dialogLines * fontMetrics().lineSpacing());
  makePages();
}

// The job's own fields first; then a page for each object and each list, in the table's order.
void JobDialog::makePages() {
  pages_.clear();
  titles_->clear();
  while (stack_->count() > 0) delete stack_->widget(0);
  if (!session_.isOpen()) return;
  const auto job = fieldAt(session_.newest(), "");
  auto* own = new FieldForm(session_, FieldForm::Shows::OwnFields, this);
  addPage(tr("Job"), {own, nullptr, ""}, own);
  for (const Field& field : job.value().fields) {
    if (field.isText()) continue;
    if (field.kind == FieldKind::List) {
      auto* list = new FieldList(session_, field, this);
      addPage(labelOf(session_, field), {nullptr, list, field.path}, list);
    } else {
      auto* form = new FieldForm(session_, FieldForm::Shows::All, this);
      addPage(labelOf(session_, field), {form, nullptr, field.path}, form);
    }
  }
  titles_->setCurrentRow(0);
}

void JobDialog::addPage(const QString& title, Page page, QWidget* shown) {
  auto* scroll = new FormScroll(shown, stack_);
  scroll->setObjectName(fieldName(page.path));
  scroll->setAccessibleName(title);
  stack_->addWidget(scroll);
  pages_.push_back(std::move(page));
  titles_->addItem(title);
}

int JobDialog::pages() const { return static_cast<int>(pages_.size()); }

void JobDialog::showPage(int page) {
  if (page < 0 || page >= pages()) return;
  finishTyping();
  titles_->setCurrentRow(page);
  stack_->setCurrentIndex(page);
  refresh();
}

void JobDialog::showPageOf(const std::string& path) {
  const auto found = std::find_if(pages_.begin(), pages_.end(), [&](const Page& page) { return page.path == path; });
  if (found != pages_.end()) showPage(static_cast<int>(found - pages_.begin()));
}

void JobDialog::finishTyping() {
  if (stack_->currentIndex() < 0) return;
  const Page& page = pages_[static_cast<std::size_t>(stack_->currentIndex())];
  page.form ? page.form->finishTyping() : page.list->finishTyping();
}

// Only what is seen.
void JobDialog::refresh() {
  const int at = stack_->currentIndex();
  if (at < 0 || at >= pages() || !session_.isOpen()) return;
  const Page& page = pages_[static_cast<std::size_t>(at)];
  page.form ? page.form->setPaths({page.path}) : page.list->refresh();
}

void JobDialog::hideEvent(QHideEvent* event) {
  finishTyping();
  QDialog::hideEvent(event);
}

void JobDialog::changeEvent(QEvent* event) {
  QDialog::changeEvent(event);
  if (event->type() == QEvent::FontChange) fit();
}

void JobDialog::fit() { titles_->setFixedWidth(titleLetters * fontMetrics().averageCharWidth()); }

}  // namespace ribwright
