#include "ui/panels/trim_work.h"

#include <QMetaObject>

namespace ribwright {

TrimWork::~TrimWork() {
  for (const auto& run : runs_) run->stopped = true;
  for (const auto& run : runs_) run->thread.join();
}

void TrimWork::cut(std::shared_ptr<const Job> job, const TrimTakeoff& takeoff) {
  drop();
  std::erase_if(runs_, [](const std::shared_ptr<Run>& run) {
    if (!run->ended) return false;
    run->thread.join();
    return true;
  });
  auto run = std::make_shared<Run>();
  current_ = run;
  runs_.push_back(run);
  run->thread = std::thread([this, run, job = std::move(job), takeoff] {
    CuttingOptions options;
    options.progress = [run](const CuttingProgress&) { return !run->stopped; };
    std::vector<TrimBatch> batches = trimBatches(*job, takeoff, options);
    QMetaObject::invokeMethod(this, [this, run, batches = std::move(batches)] {
      if (current_ != run) return;
      current_ = nullptr;
      emit done(batches);
    });
    run->ended = true;
  });
}

void TrimWork::drop() {
  if (current_) current_->stopped = true;
  current_ = nullptr;
}

}  // namespace ribwright
