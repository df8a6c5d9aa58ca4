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

  // From what stands in it now on. Empty: watch nothing.
  void watch(const QString& path);

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
