#include "ui/session/lock_file.h"

#include <QFile>
#include <QFileInfo>
#include <QSysInfo>

namespace ribwright {

namespace {

constexpr qint64 writingSeconds = 10;  // for which a lock may not say yet whose it is

// What a power cut leaves of a lock says nothing, and would never be stale.
bool isTorn(const QLockFile& lock) {
  qint64 process = 0;
  QString host, program;
  if (lock.getLockInfo(&process, &host, &program)) return false;
  const QFileInfo file(lock.fileName());
  return file.exists() && file.lastModified().secsTo(QDateTime::currentDateTime()) > writingSeconds;
}

}  // namespace

std::unique_ptr<QLockFile> lockAt(const QString& path) {
  auto lock = std::make_unique<QLockFile>(path);
  lock->setStaleLockTime(0);  // however long a job stays open
  return lock;
}

Hold hold(QLockFile& lock) {
  if (lock.isLocked() || lock.tryLock(0)) return Hold::Held;
  if (lock.error() != QLockFile::LockFailedError) return Hold::Impossible;
  if (isTorn(lock) && QFile::remove(lock.fileName()) && lock.tryLock(0)) return Hold::Held;
  return Hold::Taken;
}

std::optional<LockHolder> holderOf(const QString& lockPath) {
  qint64 process = 0;
  QString host, program;
  if (!QLockFile(lockPath).getLockInfo(&process, &host, &program)) return {};
  const bool elsewhere = !host.isEmpty() && host != QSysInfo::machineHostName();
  return LockHolder{host, QFileInfo(lockPath).lastModified(), elsewhere};
}

QString realPath(const QString& path) {
  const QString real = QFileInfo(path).canonicalFilePath();
  return real.isEmpty() ? QFileInfo(path).absoluteFilePath() : real;
}

}  // namespace ribwright
