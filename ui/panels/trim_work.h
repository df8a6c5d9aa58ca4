// How trim is cut, worked out in a thread of its own, so that the window answers meanwhile.
#pragma once

#include <QObject>
#include <atomic>
#include <memory>
#include <thread>
#include <vector>

#include "core/job/job.h"
#include "core/takeoff/trim_cuts.h"

namespace ribwright {

class TrimWork : public QObject {
  Q_OBJECT

 public:
  explicit TrimWork(QObject* parent = nullptr) : QObject(parent) {}
  // Stops and waits.
  ~TrimWork() override;

  // What was asked before is not told any more.
  void cut(std::shared_ptr<const Job> job, const TrimTakeoff& takeoff);
  void drop();
  bool isBusy() const { return current_ != nullptr; }

 signals:
  void done(const std::vector<ribwright::TrimBatch>& batches);

 private:
  struct Run {
    std::atomic<bool> stopped = false, ended = false;
    std::thread thread;
  };
  std::shared_ptr<Run> current_;
  std::vector<std::shared_ptr<Run>> runs_;  // those whose thread has not been joined
};

}  // namespace ribwright
