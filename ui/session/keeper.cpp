#include "ui/session/keeper.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QGuiApplication>
#include <QSysInfo>
#include <exception>
#include <utility>

#include "core/job/job_file.h"
#include "ui/session/file_digest.h"

namespace ribwright {

Keeper::Keeper(Session& session, const KeepingManner& manner, QObject* parent)
    : QObject(parent), session_(session), manner_(manner) {
  if (manner_.idle < 0) return;
  idle_.setSingleShot(true);
  idle_.setInterval(manner_.idle);
  latest_.setSingleShot(true);
  latest_.setInterval(manner_.latest);
  connect(&idle_, &QTimer::timeout, this, &Keeper::keepNow);
  connect(&latest_, &QTimer::timeout, this, &Keeper::keepAtLatest);
  connect(&session_, &Session::historyChanged, this, &Keeper::follow);
  connect(&session_, &Session::jobOpened, this, &Keeper::drop);
}

Keeper::~Keeper() { await(); }

void Keeper::follow() {
  const History* history = session_.history();
  if (!history) return;
  if (history->isSaved()) return drop();
  if (history->id() == kept_) return idle_.stop(), latest_.stop();
  idle_.start();
  if (!latest_.isActive()) latest_.start();
}

// A drag shows a preview, or has not yet shown one but holds the button.
bool Keeper::isHandBusy() const { return session_.isPreview() || QGuiApplication::mouseButtons() != Qt::NoButton; }

void Keeper::keepNow() {
  const History* history = session_.history();
  if (!history || history->isSaved() || history->id() == kept_) return;
  if (thread_ || isHandBusy()) return idle_.start();
  idle_.stop(), latest_.stop();
  begin();
}

// A preview may stand for hours, with the pointer at rest on what is offered: only a held button is waited for.
void Keeper::keepAtLatest() {
  const History* history = session_.history();
  if (!history || history->isSaved() || history->id() == kept_) return;
  if (thread_ || QGuiApplication::mouseButtons() != Qt::NoButton) return latest_.start();
  idle_.stop();
  begin();
}

void Keeper::begin() {
  const QString path = session_.path().isEmpty() ? QString() : realPath(session_.path());
  if (spots_.empty()) spots_ = spotsFor(path, manner_.folder, window_);
  KeptWork kept;
  kept.file = path.toStdString();
  if (!path.isEmpty()) kept.fileDigest = session_.fileDigest().toHex().toStdString();
  kept.when = QDateTime::currentDateTimeUtc().toString(QStringLiteral("yyyy-MM-dd'T'HH:mm:ss'Z'")).toStdString();
  kept.host = QSysInfo::machineHostName().toStdString();
  kept.process = static_cast<std::uint64_t>(QCoreApplication::applicationPid());
  kept.window = window_;
  kept.number = ++number_;
  thread_.reset(QThread::create([this, job = session_.sharedNewest(), kept, state = session_.history()->id()] {
    written_ = write(*job, kept);
    written_.state = state;
  }));
  connect(thread_.get(), &QThread::finished, this, [this, thread = thread_.get()] {
    if (thread_.get() != thread) return;  // dropped meanwhile
    await();
    finish(written_);
  });
  thread_->start(QThread::LowPriority);
}

Keeper::Written Keeper::write(const Job& job, KeptWork kept) {
  Written written;
  try {
    written.faults = faultsOf(job);
    if (!written.faults.empty()) return written;
    kept.job = writeJob(job);
    written.digest = digestOf(kept.job);
    written.faults = writeSomewhere(kept);
  } catch (const std::exception& error) {
    written.faults = {{"", error.what()}};
  }
  return written;
}

std::vector<Fault> Keeper::writeSomewhere(const KeptWork& kept) {
  std::vector<Fault> faults;
  for (KeptSpot& spot : spots_) {
    if (spot.place.folder == manner_.folder.toStdString()) QDir().mkpath(manner_.folder);
    DiskStorage disk;
    const bool held = spot.lock && hold(*spot.lock) == Hold::Held;
    faults = held ? writeKept(spot.place, kept, disk)
                  : std::vector<Fault>{{spot.place.folder, tr("cannot be written to").toStdString()}};
    if (faults.empty()) break;
  }
  return faults;
}

void Keeper::finish(const Written& written) {
  if (!written.faults.empty()) {
    latest_.start();  // tried again
    return emit failed(QString::fromStdString(oneLine(written.faults.front())));
  }
  kept_ = written.state;
  emit kept(written.state, written.digest);
  follow();  // there may have been edits meanwhile
}

void Keeper::await() {
  if (!thread_) return;
  thread_->wait();
  thread_.release()->deleteLater();
}

void Keeper::adopt(std::vector<KeptSpot> spots, const KeptWork& kept) {
  drop();
  spots_ = std::move(spots);
  window_ = kept.window;
  number_ = kept.number;
  kept_ = session_.history()->id();
}

void Keeper::drop() {
  idle_.stop(), latest_.stop();
  await();
  clear(spots_);
  kept_.reset();
  window_ = newWindowId();
  number_ = 0;
}

}  // namespace ribwright
