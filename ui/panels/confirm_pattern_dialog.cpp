#include "ui/panels/confirm_pattern_dialog.h"

#include <QComboBox>
#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include "core/editing/pattern_edits.h"
#include "core/job/by_id.h"
#include "ui/panels/grade_text.h"
#include "ui/panels/named_widgets.h"
#include "ui/panels/pattern_rows.h"

namespace ribwright {

namespace {

constexpr int confirmLetters = 124, confirmLines = 30;

}  // namespace

ConfirmPatternDialog::ConfirmPatternDialog(Session& session, const std::string& pattern, QWidget* parent)
    : QDialog(parent),
      session_(session),
      choice_(new QComboBox(this)),
      standing_(sentences({}, "patternStanding", this)),
      numbers_(new QTableWidget(0, 3, this)),
      fault_(sentences({}, "patternFault", this)) {
  setObjectName(QStringLiteral("confirmPattern"));
  setWindowTitle(tr("Confirm a pattern"));
  choice_->setObjectName(QStringLiteral("patternChoice"));
  choice_->setAccessibleName(tr("Pattern"));
  for (const ScrewPattern& each : session_.job().patterns) choice_->addItem(QString::fromStdString(each.id));
  choice_->setCurrentText(QString::fromStdString(pattern));
  makeTable();
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(choice_);
  layout->addWidget(standing_);
  layout->addWidget(sentences(tr("Hold every line against the plan sheet. If one of these numbers changes later, the "
                                 "confirmation falls, and every batch that is drilled by it is held again."),
                              "patternWords", this));
  layout->addWidget(numbers_, 1);
  layout->addWidget(makeFields());
  layout->addWidget(fault_);
  layout->addWidget(makeButtons());
  resize(QSize(confirmLetters * fontMetrics().averageCharWidth(), confirmLines * fontMetrics().lineSpacing()));
  connect(choice_, &QComboBox::currentTextChanged, this, &ConfirmPatternDialog::showPattern);
  connect(&session_, &Session::jobChanged, this, &ConfirmPatternDialog::showPattern);
  session_.settle();  // what is confirmed are the numbers that are shown
  showPattern();
  sheet_->setFocus();
}

void ConfirmPatternDialog::makeTable() {
  numbers_->setObjectName(QStringLiteral("patternNumbers"));
  numbers_->setAccessibleName(tr("Numbers of the pattern"));
  numbers_->setHorizontalHeaderLabels({tr("Row"), tr("Screw"), tr("From the module line")});
  numbers_->verticalHeader()->hide();
  numbers_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  numbers_->setSelectionBehavior(QAbstractItemView::SelectRows);
  numbers_->setWordWrap(false);
  numbers_->setTabKeyNavigation(false);
  numbers_->setAlternatingRowColors(true);
  numbers_->horizontalHeader()->setStretchLastSection(true);
}

void ConfirmPatternDialog::addField(QGridLayout* grid, const QString& label, QLineEdit*& field, const char* name) {
  field = new QLineEdit(this);
  field->setObjectName(QLatin1String(name));
  field->setAccessibleName(label);
  auto* words = new QLabel(label, this);
  words->setBuddy(field);
  const int row = grid->rowCount();
  grid->addWidget(words, row, 0);
  grid->addWidget(field, row, 1);
}

QWidget* ConfirmPatternDialog::makeFields() {
  auto* fields = new QWidget(this);
  auto* grid = new QGridLayout(fields);
  grid->setContentsMargins(0, 0, 0, 0);
  addField(grid, tr("Plan sheet"), sheet_, "patternSheet");
  addField(grid, tr("Held against it by"), by_, "patternBy");
  addField(grid, tr("Date"), date_, "patternDate");
  return fields;
}

QWidget* ConfirmPatternDialog::makeButtons() {
  auto* row = new QWidget(this);
  auto* layout = new QHBoxLayout(row);
  layout->setContentsMargins(0, 0, 0, 0);
  withdraw_ = new QPushButton(tr("&Withdraw the confirmation"), row);
  withdraw_->setObjectName(QStringLiteral("withdrawConfirmation"));
  withdraw_->setAutoDefault(false);
  confirm_ = new QPushButton(tr("&Confirm"), row);
  confirm_->setObjectName(QStringLiteral("confirmNow"));
  confirm_->setDefault(true);
  auto* cancel = new QPushButton(tr("C&ancel"), row);
  cancel->setObjectName(QStringLiteral("cancelConfirming"));
  cancel->setAutoDefault(false);
  layout->addWidget(withdraw_);
  layout->addStretch(1);
  layout->addWidget(confirm_);
  layout->addWidget(cancel);
  connect(withdraw_, &QPushButton::clicked, this, &ConfirmPatternDialog::withdraw);
  connect(confirm_, &QPushButton::clicked, this, &ConfirmPatternDialog::confirm);
  connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
  return row;
}

const ScrewPattern* ConfirmPatternDialog::pattern() const {
  return byId(session_.job().patterns, choice_->currentText().toStdString());
}

void ConfirmPatternDialog::showPattern() {
  tell({});
  const ScrewPattern* shown = pattern();
  confirm_->setEnabled(shown);
  withdraw_->setEnabled(shown && shown->confirmation);
  numbers_->setRowCount(0);
  if (!shown) return;
  standing_->setText(standingText(session_, *shown));
  for (const PatternRowText& row : patternRows(session_, *shown)) {
    const int place = numbers_->rowCount();
    numbers_->insertRow(place);
    numbers_->setItem(place, 0, new QTableWidgetItem(row.where));
    numbers_->setItem(place, 1, new QTableWidgetItem(row.screw));
    numbers_->setItem(place, 2, new QTableWidgetItem(row.numbers));
  }
  numbers_->resizeColumnsToContents();
}

void ConfirmPatternDialog::confirm() {
  const ScrewPattern* shown = pattern();
  if (!shown) return;
  for (QLineEdit* field : {sheet_, by_, date_}) {
    if (!field->text().trimmed().isEmpty()) continue;
    field->setFocus();
    return tell({{"", tr("Plan sheet, name and date are needed, all three.").toStdString()}});
  }
  const auto typed = [](const QLineEdit* field) { return field->text().trimmed().toStdString(); };
  const auto job = confirmPattern(session_.newest(), shown->id, {typed(sheet_), typed(by_), typed(date_)});
  if (!job) return tell(job.faults());
  session_.apply(tr("Confirm pattern %1").arg(choice_->currentText()).toStdString(), job.value());
  accept();
}

void ConfirmPatternDialog::withdraw() {
  const ScrewPattern* shown = pattern();
  if (!shown) return;
  session_.apply(tr("Withdraw the confirmation of pattern %1").arg(choice_->currentText()).toStdString(),
                 withdrawConfirmation(session_.newest(), shown->id));
  accept();
}

void ConfirmPatternDialog::tell(const std::vector<Fault>& faults) {
  QStringList lines;
  for (const Fault& fault : faults)
    lines << gradeSign(Grade::Look) + QLatin1Char(' ') + QString::fromStdString(oneLine(fault));
  fault_->setText(lines.join(QLatin1Char('\n')));
  fault_->setAccessibleName(fault_->text());
  fault_->setVisible(!faults.empty());
}

}  // namespace ribwright
