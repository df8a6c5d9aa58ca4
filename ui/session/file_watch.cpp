#include "ui/session/file_watch.h"

#include <QCryptographicHash>
#include <QFile>
#include <QFileInfo>

namespace ribwright {

namespace {

constexpr int settleMilliseconds = 200;

// Empty when the file is not there.
QByteArray digestOf(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) return {};
  QCryptographicHash hash(QCryptographicHash::Sha256);
  return hash.addData(&file) ? hash.result() : QByteArray();
}

}  // namespace

FileWatch::FileWatch(QObject* parent) : QObject(parent) {
  settle_.setSingleShot(true);
  settle_.setInterval(settleMilliseconds);
  connect(&settle_, &QTimer::timeout, this, &FileWatch::look);
  connect(&watcher_, &QFileSystemWatcher::fileChanged, &settle_, QOverload<>::of(&QTimer::start));
  connect(&watcher_, &QFileSystemWatcher::directoryChanged, &settle_, QOverload<>::of(&QTimer::start));
}

void FileWatch::watch(const QString& path) {
  settle_.stop();
  if (const QStringList old = watcher_.files() + watcher_.directories(); !old.isEmpty()) watcher_.removePaths(old);
  path_ = path;
  if (path_.isEmpty()) return;
  digest_ = digestOf(path_);
  follow();
  // A file that is replaced by another one is only seen by its folder.
  watcher_.addPath(QFileInfo(path_).absolutePath());
}

void FileWatch::follow() {
  if (QFileInfo::exists(path_) && !watcher_.files().contains(path_)) watcher_.addPath(path_);
}

void FileWatch::look() {
  follow();
  const QByteArray now = digestOf(path_);
  if (now.isEmpty() || now == digest_) return;
  digest_ = now;
  emit changed();
}

}  // namespace ribwright
