// Starts compared, and searched, in threads of their own, so that the window answers meanwhile.
#pragma once

#include <QObject>
#include <atomic>
#include <cstdint>
#include <functional>
#include <memory>
#include <thread>
#include <vector>

#include "core/plan/compared_starts.h"

namespace ribwright {

class StartWork : public QObject {
  Q_OBJECT

 public:
  explicit StartWork(QObject* parent = nullptr) : QObject(parent) {}
  // Stops and waits.
  ~StartWork() override;

  // What was asked before is not told any more.
  void compare(std::shared_ptr<const Job> job, std::shared_ptr<const Plan> plan, std::size_t wall);
  void search(std::shared_ptr<const Job> job, std::size_t wall);
  // The search ends soon after with the best so far; nothing else is told.
  void stopSearch();
  // Neither is told any more.
  void drop();
  bool isComparing() const { return comparing_ != nullptr; }
  bool isSearching() const { return searching_ != nullptr; }

 signals:
  void compared(const std::vector<ribwright::ComparedStart>& starts);
  void progressed(double done);
  void searched(const ribwright::StartSearch& search);

 private:
  struct Run {
    std::uint64_t number = 0;  // rising
    std::atomic<bool> stopped = false, ended = false;
    std::thread thread;
  };
  std::shared_ptr<Run> begin(const std::function<void(Run&)>& work);
  void forgetFound();
  static bool is(const std::shared_ptr<Run>& run, std::uint64_t number) { return run && run->number == number; }

  std::uint64_t last_ = 0;
  std::shared_ptr<Run> comparing_, searching_;
  std::vector<std::shared_ptr<Run>> runs_;  // those whose thread has not been joined
};

}  // namespace ribwright
