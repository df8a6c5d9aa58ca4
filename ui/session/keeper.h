// Keeps unsaved work in files beside the job's (core/job/kept_files.h), so that a program that is killed loses nothing
// older than a moment. It goes by the state of the history: what is saved, or kept already, is not kept again. It
// writes in another thread, and never while a drag is under way.
#pragma once

#include <QObject>
#include <QThread>
#include <QTimer>
#include <memory>
#include <optional>
#include <vector>

#include "ui/session/keeping_manner.h"
#include "ui/session/kept_spot.h"
#include "ui/session/session.h"

namespace ribwright {

class Keeper : public QObject {
  Q_OBJECT

 public:
  Keeper(Session& session, const KeepingManner& manner, QObject* parent = nullptr);
  // Waits for what is being written. What is kept stays, and can be offered by the next window.
  ~Keeper() override;

  // Without waiting for the hand to rest; nothing while a drag is under way.
  void keepNow();
  // The job that was just opened is what these places hold: they are this window's from now on.
  void adopt(std::vector<KeptSpot> spots, const KeptWork& kept);
  // Nothing of the open job is kept any more: it is saved, or no longer wanted.
  void drop();

 signals:
  // A state of the history is on the disk; `digest` of the job's text (file_digest.h).
  void kept(qulonglong state, const QByteArray& digest);
  void failed(const QString& why);

 private:
  struct Written {
    StateId state = 0;
    QByteArray digest;
    std::vector<Fault> faults;  // none: it is on the disk
  };
  void follow();
  void begin();
  bool isHandBusy() const;
  void keepAtLatest();
  Written write(const Job& job, KeptWork kept);
  std::vector<Fault> writeSomewhere(const KeptWork& kept);
  void finish(const Written& written);
  void await();

  Session& session_;
  KeepingManner manner_;
  QTimer idle_, latest_;
  std::string window_ = newWindowId();
  std::uint64_t number_ = 0;  // of the last keeping
  std::optional<StateId> kept_;
  std::vector<KeptSpot> spots_;  // the thread's alone while it runs
  std::unique_ptr<QThread> thread_;
  Written written_;  // by the thread
};

}  // namespace ribwright
