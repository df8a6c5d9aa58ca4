#include "ui/session/planner.h"

#include <QMetaObject>

namespace ribwright {

Planner::Planner(QObject* parent) : QObject(parent) {}

Planner::~Planner() {
  {
    const std::lock_guard lock(mutex_);
    ending_ = true;
    waiting_.reset();
  }
  changed_.notify_all();
  if (thread_.joinable()) thread_.join();
}

std::uint64_t Planner::ask(std::shared_ptr<const Job> job, std::shared_ptr<const Plan> previous, int wall,
                           const Words& words) {
  const std::lock_guard lock(mutex_);
  waiting_ = Asked{++last_, std::move(job), std::move(previous), wall, &words};
  if (!thread_.joinable()) thread_ = std::thread([this] { work(); });
  changed_.notify_all();
  return last_;
}

void Planner::drop() {
  const std::lock_guard lock(mutex_);
  waiting_.reset();
  done_.reset();
  dropped_ = last_;
}

bool Planner::isBusy() const {
  const std::lock_guard lock(mutex_);
  return waiting_ || done_ || (working_ && last_ > dropped_);
}

void Planner::settle() {
  {
    std::unique_lock lock(mutex_);
    changed_.wait(lock, [this] { return !waiting_ && !working_; });
  }
  tell();
}

// A plan made from the one before it keeps the walls that did not change since.
Planned Planner::carriedOut(const Asked& asked) {
  Planned made{asked.number, asked.job, nullptr, -1, nullptr};
  made.plan = std::make_shared<const Plan>(plan(*asked.job, asked.previous ? *asked.previous : Plan{}));
  const auto wall = static_cast<std::size_t>(asked.wall);
  if (asked.wall < 0 || wall >= asked.job->walls.size()) return made;
  made.wall = asked.wall;
  made.picture = std::make_shared<const BoardPicture>(boardPicture(*asked.job, *made.plan, wall, *asked.words));
  return made;
}

void Planner::work() {
  std::unique_lock lock(mutex_);
  while (true) {
    changed_.wait(lock, [this] { return ending_ || waiting_; });
    if (ending_) return;
    const Asked asked = *std::exchange(waiting_, std::nullopt);
    working_ = true;
    lock.unlock();
    Planned made = carriedOut(asked);
    lock.lock();
    working_ = false;
    if (asked.number > dropped_) done_ = std::move(made);
    changed_.notify_all();
    QMetaObject::invokeMethod(
        this, [this] { tell(); }, Qt::QueuedConnection);
  }
}

void Planner::tell() {
  std::optional<Planned> result;
  {
    const std::lock_guard lock(mutex_);
    result.swap(done_);
  }
  if (result) emit planned(*result);
}

}  // namespace ribwright
