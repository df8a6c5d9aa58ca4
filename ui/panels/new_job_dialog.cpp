#include "ui/panels/new_job_dialog.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QTimer>
#include <QVBoxLayout>

#include "core/editing/new_job_fields.h"
#include "core/job/length_style.h"
#include "core/job/sample_jobs.h"
#include "core/words/words.h"
#include "ui/panels/grade_text.h"
#include "ui/panels/kept_new_job.h"
#include "ui/panels/named_widgets.h"
#include "ui/panels/new_job_form.h"
#include "ui/panels/new_job_picture.h"
#include "ui/session/window_language.h"
#include "ui/session/window_text.h"

namespace ribwright {

namespace {

constexpr int newJobLetters = 190, newJobLines = 50;
constexpr int mostShown = 4000;  // sheets that are planned between two keys
constexpr int soonEnough = 120;  // ms after the last key

// The first gable's or end's girts, as they would stand.
QString endGirts(const Job& job, Roof::Ends ends) {
  const std::size_t wall = ends == Roof::Ends::AC ? 0 : 1;
  if (wall >= job.walls.size()) return {};
  std::vector<Length> heights;
  for (const Girt& girt : job.walls[wall].girts) heights.push_back(girt.height);
  return text(lengthStringText(heights, styleOf(job)));
}

}  // namespace

NewJobDialog::NewJobDialog(QWidget* parent) : QDialog(parent), soon_(new QTimer(this)) {
  setObjectName(QStringLiteral("newJobDialog"));
  setWindowTitle(tr("New job"));
  const KeptNewJob kept = keptNewJob();
  form_ = new NewJobForm(kept.stated, this);
  picture_ = new NewJobPicture(this);
  told_ = new QLabel(this);
  told_->setObjectName(QStringLiteral("newTold"));
  told_->setWordWrap(true);
  told_->setTextFormat(Qt::PlainText);
  told_->hide();
  auto* across = new QHBoxLayout;
  across->addWidget(makeSide(), 3);
  across->addWidget(picture_, 4);
  auto* layout = new QVBoxLayout(this);
  layout->addLayout(across, 1);
  layout->addWidget(told_);
  layout->addWidget(makeButtons());
  const QSize wanted(newJobLetters * fontMetrics().averageCharWidth(), newJobLines * fontMetrics().lineSpacing());
  resize(wanted.boundedTo(screen()->availableSize()));
  soon_->setSingleShot(true);
  soon_->setInterval(soonEnough);
  connect(soon_, &QTimer::timeout, this, &NewJobDialog::look);
  connect(form_, &NewJobForm::changed, soon_, qOverload<>(&QTimer::start));
  connect(form_, &NewJobForm::lastDone, this, [this] { make_->setFocus(Qt::TabFocusReason); });
  look();
  if (!kept.faults.empty()) {
    QStringList lines{tr("The defaults that were kept cannot be read; these are the shipped ones.")};
    for (const Fault& fault : kept.faults) lines << text(oneLine(fault));
    tell(gradeSign(Grade::Look) + QLatin1Char(' ') + lines.join(QLatin1Char('\n')));
  }
  form_->firstField()->setFocus();
}

QWidget* NewJobDialog::makeSide() {
  auto* area = new QScrollArea(this);
  area->setWidget(form_);
  area->setWidgetResizable(true);
  area->setFrameShape(QFrame::NoFrame);
  area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area->setFocusPolicy(Qt::NoFocus);
  area->setMinimumWidth(form_->minimumSizeHint().width() + fontMetrics().height());
  return area;
}

QWidget* NewJobDialog::makeButtons() {
  auto* row = new QWidget(this);
  auto* layout = new QHBoxLayout(row);
  layout->setContentsMargins(0, 0, 0, 0);
  auto* sample = namedButton(tr("&From a sample…"), "newSample", row);
  auto* samples = new QMenu(sample);
  samples->setObjectName(QStringLiteral("newSamples"));
  for (const std::string_view name : sampleNames()) {
    const Job job = sampleJob(name);
    QAction* action = samples->addAction(text(job.name));
    action->setToolTip(text(job.note));
    connect(action, &QAction::triggered, this, [this, job] { begin(job); });
  }
  samples->setToolTipsVisible(true);
  sample->setMenu(samples);
  auto* keepThese = namedButton(tr("&Keep these as the defaults"), "newKeep", row);
  make_ = namedButton(tr("&Make the job"), "newMake", row);
  make_->setDefault(true);
  auto* cancel = namedButton(tr("Cancel"), "newCancel", row);
  for (QPushButton* each : {sample, keepThese}) layout->addWidget(each);
  layout->addStretch(1);
  for (QPushButton* each : {make_, cancel}) layout->addWidget(each);
  connect(keepThese, &QPushButton::clicked, this, &NewJobDialog::keep);
  connect(make_, &QPushButton::clicked, this, &NewJobDialog::make);
  connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
  return row;
}

void NewJobDialog::look() {
  soon_->stop();
  const auto job = jobOf(form_->stated(), Words::of(spokenLanguage()));
  form_->showFaults(job ? std::vector<Fault>{} : job.faults());
  picture_->setBehind(!job);
  if (!job) return;
  if (sheetsAbout(job.value()) > mostShown)
    return tell(tr("This building is too large to be drawn while it is typed; it can be made all the same."));
  form_->setEndGirtsHint(endGirts(job.value(), form_->stated().ends));
  picture_->setJob(job.value());
}

void NewJobDialog::make() {
  look();
  const auto job = jobOf(form_->stated(), Words::of(spokenLanguage()));
  if (job) return begin(job.value());
  QStringList lines{tr("The job cannot be made yet:")};
  for (const Fault& fault : job.faults()) lines << text(fault.message);
  tell(gradeSign(Grade::Stop) + QLatin1Char(' ') + lines.join(QLatin1Char('\n')));
}

void NewJobDialog::begin(const Job& job) {
  job_ = job;
  accept();
}

void NewJobDialog::keep() {
  const std::vector<Fault> faults = keepNewJob(form_->stated());
  if (faults.empty()) return tell(tr("Kept: new jobs begin with these."));
  QStringList lines{tr("The defaults could not be kept.")};
  for (const Fault& fault : faults) lines << text(oneLine(fault));
  tell(gradeSign(Grade::Look) + QLatin1Char(' ') + lines.join(QLatin1Char('\n')));
}

void NewJobDialog::tell(const QString& words) {
  told_->setText(words);
  told_->show();
}

// Ctrl+Enter makes the job from any field.
void NewJobDialog::keyPressEvent(QKeyEvent* event) {
  const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
  if (enter && event->modifiers() & Qt::ControlModifier) return make();
  QDialog::keyPressEvent(event);
}

}  // namespace ribwright
