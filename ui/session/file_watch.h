// Tells when a file on the disk is no longer what was read from it.
#pragma once

#include <QByteArray>
#include <QFileSystemWatcher>
#include <QObject>
#include <QTimer>

namespace ribwright {

class FileWatch : public QObject {
  Q_OBJECT

 public:
  explicit FileWatch(QObject* parent = nullptr);

  // `digest`: of what is known to stand in it (file_digest.h); anything else there is a change. Empty path: watch
  // nothing.
  void watch(const QString& path, const QByteArray& digest);

 signals:
  // Its bytes are others than before; once a change.
  void changed();

 private:
  void follow();
  void look();

  QString path_;
  QByteArray digest_;
  QFileSystemWatcher watcher_;
  QTimer settle_;  // programs write a file in several steps
};

}  // namespace ribwright
