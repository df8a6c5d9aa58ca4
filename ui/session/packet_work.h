// A packet that is made and written in a thread of its own, so that the window stays usable; it can be stopped until
// its files are about to take their places.
#pragma once

#include <QObject>
#include <QThread>
#include <atomic>
#include <memory>
#include <vector>

#include "core/job/job.h"
#include "core/plan/plan.h"
#include "core/units/outcome.h"
#include "ui/printing/packet_files.h"

namespace ribwright {

// What came of it.
struct PacketEnd {
  QString folder;
  int files = 0;         // written
  bool stopped = false;  // nothing was written
  std::vector<Fault> faults;
};

class PacketWork : public QObject {
  Q_OBJECT

 public:
  explicit PacketWork(QObject* parent = nullptr);
  // Stops and waits.
  ~PacketWork() override;

  // False while another one runs.
  bool start(std::shared_ptr<const Job> job, std::shared_ptr<const Plan> plan, const PacketForm& form,
             const QString& folder);
  bool isRunning() const { return thread_ != nullptr; }
  // It ends soon after with `stopped`; or with its files, when they were on their way already.
  void stop() { stopAsked_ = true; }

 signals:
  void progressed(int done, int of);
  void ended(const PacketEnd& end);

 private:
  PacketEnd work(const Job& job, const Plan& plan, const PacketForm& form, const QString& folder);
  void finish(const PacketEnd& end);

  std::unique_ptr<QThread> thread_;
  std::atomic<bool> stopAsked_ = false;
};

}  // namespace ribwright
