#include "ui/session/job_files.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QGuiApplication>
#include <QLocale>
#include <QVBoxLayout>

#include "ui/panels/lock_bar.h"
#include "ui/panels/reload_bar.h"
#include "ui/session/recent_jobs.h"

namespace ribwright {

namespace {

constexpr int lookAgainMilliseconds = 2000;
constexpr int afterFirstFrame = 500;  // ms

// The time of a day that is over needs its date.
QString sinceText(const QDateTime& since) {
  if (since.date() == QDate::currentDate()) return QLocale().toString(since.time(), QLocale::ShortFormat);
  return QLocale().toString(since, QLocale::ShortFormat);
}

}  // namespace

JobFiles::JobFiles(Session& session, const KeepingManner& manner, QWidget* window)
    : QObject(window),
      session_(session),
      manner_(manner),
      window_(window),
      saving_(session, window, manner.locks),
      keeper_(session, manner, this),
      offers_(manner.folder, window),
      bars_(new QWidget(window)),
      reload_(new ReloadBar(bars_)),
      locked_(new LockBar(bars_)) {
  auto* layout = new QVBoxLayout(bars_);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addWidget(locked_);
  layout->addWidget(reload_);
  lookAgain_.setInterval(lookAgainMilliseconds);
  connectParts();
}

void JobFiles::connectParts() {
  connect(&watch_, &FileWatch::changed, this, [this] { reload_->offer(QFileInfo(session_.path()).fileName()); });
  connect(&saving_, &SaveJob::saved, this, &JobFiles::showSaved);
  connect(&saving_, &SaveJob::readAgainAsked, this, [this] { read(session_.path()); });
  connect(&saving_, &SaveJob::failed, this, [this](const std::vector<Fault>& faults) {
    emit faulty(tr("The job could not be saved. Nothing is lost: it is still open, with all its changes."), faults);
  });
  connect(reload_, &ReloadBar::readAgainAsked, this, &JobFiles::readAgain);
  connect(locked_, &LockBar::goOnAsked, this, &JobFiles::goOnHere);
  connect(locked_, &LockBar::goneAsked, this, &JobFiles::sayThatOtherIsGone);
  connect(&lookAgain_, &QTimer::timeout, this, &JobFiles::lookAgain);
  connect(&keeper_, &Keeper::failed, this, &JobFiles::tellOfKeeping);
  connect(&keeper_, &Keeper::kept, this, [this] { tellOfKeeping({}); });
  connect(&offers_, &KeptOffers::openKeptAsked, this, &JobFiles::openKept);
  connect(&offers_, &KeptOffers::openFileAsked, this, [this](const QString& path) {
    if (path != realPath(session_.path()) && mayLetGo()) read(path);
  });
  connect(&offers_, &KeptOffers::countChanged, this, &JobFiles::keptCountChanged);
  // A job that was just begun has no file.
  connect(&session_, &Session::jobOpened, this, [this] {
    if (session_.path().isEmpty()) follow();
  });
}

void JobFiles::askAndOpen() {
  const QString folder = session_.folder();
  const QString path =
      QFileDialog::getOpenFileName(window_, tr("Open a job"), folder, tr("Job files (*.json);;All files (*)"));
  if (!path.isEmpty()) open(path);
}

bool JobFiles::open(const QString& path) {
  if (!mayLetGo()) return false;
  const bool again = session_.isOpen() && path == session_.path();
  if (!read(path)) return false;
  if (!again && manner_.offers) offers_.offerOf(path);
  return true;
}

bool JobFiles::showRead(ReadJob read, const QString& path) { return shown(session_.open(std::move(read)), path); }

void JobFiles::begin(const Job& job) {
  session_.begin(job);
  follow();
}

void JobFiles::readAgain() {
  if (!session_.path().isEmpty()) open(QString(session_.path()));
}

bool JobFiles::read(const QString& named) {
  const QString path = named;  // may be the session's own, which changes
  const bool again = session_.isOpen() && path == session_.path();
  QGuiApplication::setOverrideCursor(Qt::WaitCursor);
  const bool read = session_.open(path);
  QGuiApplication::restoreOverrideCursor();
  if (shown(read, path) && again) emit told(tr("Read again."));
  return read;
}

bool JobFiles::shown(bool read, const QString& path) {
  if (!read) {
    emit told(tr("%1 could not be read.").arg(path));
    return false;
  }
  follow();
  remember();
  return true;
}

void JobFiles::follow() {
  reload_->hide();
  watch_.watch(session_.path(), session_.fileDigest());
  if (manner_.locks) lock();
}

void JobFiles::lock() {
  const QString path = session_.path();
  lookAgain_.stop();
  locked_->hide();
  if (path.isEmpty()) return lock_.letGo();
  const Hold got = lock_.take(path);
  session_.setLookedAt(got == Hold::Taken);
  if (got == Hold::Taken) showTaken();
  if (got == Hold::Impossible)
    emit told(tr("Nothing can be written beside %1: other windows will not see that it is open here.")
                  .arg(QFileInfo(path).fileName()));
}

void JobFiles::showTaken() {
  const LockHolder other = lock_.holder().value_or(LockHolder{{}, QDateTime::currentDateTime(), false});
  locked_->showTaken(QFileInfo(session_.path()).fileName(), other.host, sinceText(other.since), other.isElsewhere);
  lookAgain_.start();
}

void JobFiles::lookAgain() {
  if (lock_.take(session_.path()) == Hold::Taken) return;
  lookAgain_.stop();
  locked_->showFree(QFileInfo(session_.path()).fileName());
}

void JobFiles::goOnHere() {
  locked_->hide();
  session_.setLookedAt(false);
}

void JobFiles::sayThatOtherIsGone() {
  lookAgain_.stop();
  if (lock_.takeOver() == Hold::Taken) return showTaken();
  goOnHere();
}

void JobFiles::save() {
  emit typingEnds();
  saving_.save();
}

void JobFiles::saveAs() {
  emit typingEnds();
  saving_.saveAs();
}

bool JobFiles::mayLetGo() {
  emit typingEnds();  // what is being typed is not lost unasked either
  return saving_.mayLetGo();
}

void JobFiles::letGo() {
  keeper_.drop();
  lock_.letGo();
}

void JobFiles::offerKept() {
  if (!manner_.offers) return;
  QStringList jobs;
  for (const RecentJob& job : recentJobs()) jobs << job.path;
  if (!session_.path().isEmpty()) jobs.prepend(session_.path());
  offers_.offerAll(jobs, session_.path());
}

void JobFiles::openKept(int offer) {
  if (!mayLetGo()) return;
  KeptOffer taken = offers_.takeOut(offer);
  const QByteArray digest = QByteArray::fromHex(QByteArray::fromStdString(taken.kept.fileDigest));
  session_.openKept(taken.job, taken.file, digest);
  keeper_.adopt(std::move(taken.spots), taken.kept);
  if (session_.path().isEmpty()) return;
  follow();
  remember();
}

void JobFiles::showSaved() {
  emit faulty({}, {});
  emit told(tr("Saved: %1").arg(session_.path()));
  follow();
  remember();
}

void JobFiles::tellOfKeeping(const QString& why) {
  const bool failed = !why.isEmpty();
  if (failed) emit told(tr("Unsaved work could not be kept, which is tried again: %1").arg(why));
  if (!failed && keepingFailed_) emit told(tr("Unsaved work is kept again."));
  keepingFailed_ = failed;
}

// Settings are written to the disk: at the start not before the first frame.
void JobFiles::remember() {
  const QString path = session_.path(), name = QString::fromStdString(session_.job().name);
  if (window_->isVisible()) return rememberJob(path, name);
  QTimer::singleShot(afterFirstFrame, this, [path, name] { rememberJob(path, name); });
}

}  // namespace ribwright
