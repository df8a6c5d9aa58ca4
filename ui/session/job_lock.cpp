#include "ui/session/job_lock.h"

#include <QFileInfo>

namespace ribwright {

namespace {

QString lockPathOf(const QString& jobPath) {
  const QFileInfo file(realPath(jobPath));
  return QStringLiteral("%1/.%2.lock").arg(file.absolutePath(), file.fileName());
}

}  // namespace

Hold JobLock::take(const QString& jobPath) {
  const QString path = lockPathOf(jobPath);
  if (!lock_ || lock_->fileName() != path) lock_ = lockAt(path);
  return hold(*lock_);
}

Hold JobLock::takeOver() {
  if (!lock_) return Hold::Impossible;
  const auto other = holder();
  if (other && other->isElsewhere) lock_->removeStaleLockFile();
  return hold(*lock_);
}

std::optional<LockHolder> JobLock::holder() const {
  return lock_ && !lock_->isLocked() ? holderOf(lock_->fileName()) : std::nullopt;
}

}  // namespace ribwright
