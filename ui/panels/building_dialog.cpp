#include "ui/panels/building_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/editing/building_edits.h"
#include "ui/panels/grade_text.h"
#include "ui/panels/named_widgets.h"
#include "ui/session/window_text.h"

namespace ribwright {

namespace {

constexpr int buildingLetters = 70;

bool slopes(Roof::Kind kind) { return kind == Roof::Kind::Gable || kind == Roof::Kind::SingleSlope; }

}  // namespace

BuildingDialog::BuildingDialog(Session& session, QWidget* parent)
    : QDialog(parent), session_(session), stands_(buildingTexts(session.newest()).value()) {
  setObjectName(QStringLiteral("buildingDialog"));
  setWindowTitle(tr("Building"));
  auto* layout = new QVBoxLayout(this);
  auto* grid = new QGridLayout;
  layout->addLayout(grid);
  makeFields(grid);
  displaced_ = sentences({}, "buildingDisplaced", this);
  fit_ = new QCheckBox(tr("&Put them at the nearest place where they fit"), this);
  fit_->setObjectName(QStringLiteral("buildingFit"));
  fault_ = sentences({}, "buildingFault", this);
  for (QWidget* each : {static_cast<QWidget*>(displaced_), static_cast<QWidget*>(fit_), static_cast<QWidget*>(fault_)})
    layout->addWidget(each);
  layout->addStretch(1);
  layout->addWidget(makeButtons());
  connect(fit_, &QCheckBox::toggled, this, &BuildingDialog::look);
  resize(buildingLetters * fontMetrics().averageCharWidth(), sizeHint().height());
  look();
  length_->selectAll();
  length_->setFocus();
}

BuildingDialog::~BuildingDialog() { session_.endPreview(); }

QLineEdit* BuildingDialog::edit(const char* name, const QString& reads, const std::string& text) {
  auto* made = new QLineEdit(ribwright::text(text), this);
  made->setObjectName(QLatin1String(name));
  made->setAccessibleName(reads);
  connect(made, &QLineEdit::textEdited, this, &BuildingDialog::look);
  return made;
}

void BuildingDialog::addRow(QGridLayout* grid, const QString& words, QWidget* field, const char* place) {
  const int row = grid->rowCount();
  auto* label = new QLabel(words, this);
  label->setBuddy(field);
  labels_[field] = label;
  grid->addWidget(label, row, 0);
  grid->addWidget(field, row, 1);
  auto* fault = sentences({}, "", this);
  fault->setObjectName(field->objectName() + QStringLiteral("Fault"));
  fault->hide();
  faults_[place] = fault;
  grid->addWidget(fault, row + 1, 1);
}

void BuildingDialog::makeFields(QGridLayout* grid) {
  length_ = edit("buildingLength", tr("Length, along the front"), stands_.length);
  width_ = edit("buildingWidth", tr("Width"), stands_.width);
  eave_ = edit("buildingEave", tr("Height of the steel line at the eave"), stands_.eave);
  rise_ = edit("buildingRise", tr("Slope as 4:12, or height of the ridge"), stands_.rise);
  roof_ = new QComboBox(this);
  roof_->setObjectName(QStringLiteral("buildingRoof"));
  roof_->setAccessibleName(tr("Roof"));
  if (stands_.roof == Roof::Kind::None) roof_->addItem(tr("each wall its own top"), int(Roof::Kind::None));
  roof_->addItem(tr("Gable"), int(Roof::Kind::Gable));
  roof_->addItem(tr("Single slope"), int(Roof::Kind::SingleSlope));
  roof_->addItem(tr("Level eave"), int(Roof::Kind::Level));
  roof_->setCurrentIndex(roof_->findData(int(stands_.roof)));
  ends_ = new QComboBox(this);
  ends_->setObjectName(QStringLiteral("buildingEnds"));
  ends_->setAccessibleName(tr("End walls"));
  ends_->addItem(tr("B and D"), int(Roof::Ends::BD));
  ends_->addItem(tr("A and C"), int(Roof::Ends::AC));
  ends_->setCurrentIndex(ends_->findData(int(stands_.ends)));
  for (QComboBox* box : {roof_, ends_}) {
    box->setFocusPolicy(Qt::StrongFocus);
    connect(box, &QComboBox::currentIndexChanged, this, &BuildingDialog::look);
  }
  addRow(grid, tr("&Length, along the front"), length_, "length");
  addRow(grid, tr("&Width"), width_, "width");
  addRow(grid, tr("Roof"), roof_, "roof");
  addRow(grid, tr("End walls"), ends_, "ends");
  addRow(grid, tr("&Eave"), eave_, "eave");
  addRow(grid, tr("&Slope, or ridge"), rise_, "rise");
}

QWidget* BuildingDialog::makeButtons() {
  auto* row = new QWidget(this);
  auto* layout = new QHBoxLayout(row);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addStretch(1);
  change_ = new QPushButton(tr("&Change the building"), row);
  change_->setObjectName(QStringLiteral("buildingChange"));
  change_->setDefault(true);
  auto* cancel = new QPushButton(tr("Cancel"), row);
  cancel->setObjectName(QStringLiteral("buildingCancel"));
  cancel->setAutoDefault(false);
  layout->addWidget(change_);
  layout->addWidget(cancel);
  connect(change_, &QPushButton::clicked, this, &BuildingDialog::change);
  connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
  return row;
}

BuildingTexts BuildingDialog::typed() const {
  BuildingTexts texts;
  texts.length = length_->text().toStdString();
  texts.width = width_->text().toStdString();
  texts.roof = static_cast<Roof::Kind>(roof_->currentData().toInt());
  texts.ends = static_cast<Roof::Ends>(ends_->currentData().toInt());
  texts.eave = eave_->text().toStdString();
  texts.rise = rise_->text().toStdString();
  return texts;
}

Outcome<Job> BuildingDialog::made(const Job& job) const {
  return fit_->isChecked() ? buildingFromTextsAndFitted(job, typed()) : buildingFromTexts(job, typed());
}

void BuildingDialog::look() {
  const BuildingTexts texts = typed();
  for (QWidget* field : {static_cast<QWidget*>(eave_), static_cast<QWidget*>(rise_)}) {
    const bool seen = field == eave_ ? texts.roof != Roof::Kind::None : slopes(texts.roof);
    field->setVisible(seen);
    labels_.at(field)->setVisible(seen);
  }
  const auto job = made(session_.newest());
  showFaults(job ? std::vector<Fault>{} : job.faults());
  change_->setEnabled(job && job.value() != session_.newest());
  if (!job) return;
  tellDisplaced(job.value());
  if (job.value() == session_.newest())
    session_.endPreview();
  else
    session_.preview(job.value());
}

void BuildingDialog::showFaults(const std::vector<Fault>& faults) {
  for (const auto& [place, words] : faults_) words->hide();
  fault_->hide();
  for (const Fault& fault : faults) {
    const auto found = faults_.find(fault.place);
    QLabel* words = found == faults_.end() ? fault_ : found->second;
    words->setText(gradeSign(Grade::Stop) + QLatin1Char(' ') +
                   text(found == faults_.end() ? oneLine(fault) : fault.message));
    words->show();
  }
}

void BuildingDialog::tellDisplaced(const Job& job) {
  QStringList lines;
  for (const Displaced& each : displaced(job)) {
    const QString id = text(each.id), wall = text(job.walls[each.wall].letter);
    if (each.why == Displaced::Why::OffWall) lines << tr("%1 reaches beyond wall %2").arg(id, wall);
    if (each.why == Displaced::Why::Overlaps) lines << tr("%1 overlaps %3 on wall %2").arg(id, wall, text(each.other));
    if (each.why == Displaced::Why::ColumnGone) lines << tr("the column of %1 on wall %2 is gone").arg(id, wall);
  }
  displaced_->setText(gradeSign(Grade::Look) + QLatin1Char(' ') + tr("Without a place, and kept:") + QLatin1Char(' ') +
                      lines.join(QStringLiteral("; ")));
  displaced_->setVisible(!lines.isEmpty());
  fit_->setVisible(!lines.isEmpty() || fit_->isChecked());
}

void BuildingDialog::change() {
  const std::string name = session_.words().say("edit.building", {}, session_.style());
  const auto faults = session_.edit(name, [this](const Job& job) { return made(job); });
  if (!faults.empty()) return showFaults(faults);
  accept();
}

}  // namespace ribwright
