// The file of a job: what was read from it or written into it last, so that no one's changes are overwritten unseen.
#pragma once

#include <QByteArray>
#include <QString>
#include <vector>

#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

class JobOnDisk {
 public:
  JobOnDisk() = default;
  // A file that holds, or once held, something of this digest.
  JobOnDisk(const QString& path, const QByteArray& digest) : path_(path), digest_(digest) {}

  // Empty until a file was read or written.
  const QString& path() const { return path_; }
  // Of the bytes that were read or written last.
  const QByteArray& digest() const { return digest_; }

  // From now on the job's file, unless it cannot be read.
  Outcome<Job> read(const QString& path);
  // The file does not hold what was read or written last. One that is gone holds nothing to be overwritten.
  bool isChanged() const;
  bool isGone() const;
  bool isSameAs(const QString& path) const;
  // Whole or not at all, whatever stands there; from now on the job's file. Faults: none when it is written.
  std::vector<Fault> write(const Job& job, const QString& path);

 private:
  QString path_;
  QByteArray digest_;
};

}  // namespace ribwright
