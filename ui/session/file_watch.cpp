#include "ui/session/file_watch.h"

#include <QFileInfo>

#include "ui/session/file_digest.h"

namespace ribwright {

namespace {

constexpr int settleMilliseconds = 200;

}  // namespace

FileWatch::FileWatch(QObject* parent) : QObject(parent) {
  settle_.setSingleShot(true);
  settle_.setInterval(settleMilliseconds);
  connect(&settle_, &QTimer::timeout, this, &FileWatch::look);
  connect(&watcher_, &QFileSystemWatcher::fileChanged, &settle_, QOverload<>::of(&QTimer::start));
  // Other files of the folder may come and go all the time: they must not put it off.
  connect(&watcher_, &QFileSystemWatcher::directoryChanged, this, [this] {
    if (!settle_.isActive()) settle_.start();
  });
}

void FileWatch::watch(const QString& path, const QByteArray& digest) {
  settle_.stop();
  if (const QStringList old = watcher_.files() + watcher_.directories(); !old.isEmpty()) watcher_.removePaths(old);
  path_ = path;
  if (path_.isEmpty()) return;
  digest_ = digest;
  follow();
  // A file that is replaced by another one is only seen by its folder.
  watcher_.addPath(QFileInfo(path_).absolutePath());
  settle_.start();  // it may have changed before it was watched
}

void FileWatch::follow() {
  if (QFileInfo::exists(path_) && !watcher_.files().contains(path_)) watcher_.addPath(path_);
}

void FileWatch::look() {
  follow();
  const QByteArray now = digestOfFile(path_);
  if (now.isEmpty() || now == digest_) return;
  digest_ = now;
  emit changed();
}

}  // namespace ribwright
