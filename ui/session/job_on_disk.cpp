#include "ui/session/job_on_disk.h"

#include <QDir>
#include <QFileInfo>

#include "core/job/job_file.h"
#include "ui/session/file_digest.h"

namespace ribwright {

namespace {

std::string native(const QString& path) { return QDir::toNativeSeparators(path).toStdString(); }

}  // namespace

Outcome<Job> JobOnDisk::read(const QString& path) {
  const Outcome<std::string> text = jobText(native(path));
  if (!text) return text.faults();
  Outcome<Job> job = readJob(text.value(), native(path));
  if (!job) return job;
  path_ = path;
  digest_ = digestOf(text.value());
  return job;
}

bool JobOnDisk::isGone() const { return !QFileInfo::exists(path_); }

bool JobOnDisk::isChanged() const { return !isGone() && digestOfFile(path_) != digest_; }

bool JobOnDisk::isSameAs(const QString& path) const {
  return !path_.isEmpty() && (path == path_ || QFileInfo(path) == QFileInfo(path_));
}

std::vector<Fault> JobOnDisk::write(const Job& job, const QString& path) {
  const auto saved = saveJob(job, native(path));
  const QByteArray written = digestOf(writeJob(job));
  // A fault can come after the file has taken its place: what stands there now is this window's own.
  if (saved || (isSameAs(path) && digestOfFile(path) == written)) {
    path_ = path;
    digest_ = written;
  }
  return saved ? std::vector<Fault>{} : saved.faults();
}

}  // namespace ribwright
