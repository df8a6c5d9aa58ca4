#include "ui/panels/start_work.h"

#include <QMetaObject>
#include <algorithm>

namespace ribwright {

namespace {

constexpr double toldSteps = 100;

std::vector<ComparedStart> ranked(std::vector<ComparedStart> starts) {
  std::stable_sort(starts.begin(), starts.end(),
                   [](const ComparedStart& a, const ComparedStart& b) { return a.rank < b.rank; });
  return starts;
}

}  // namespace

StartWork::~StartWork() {
  for (const auto& run : runs_) run->stopped = true;
  for (const auto& run : runs_) run->thread.join();
}

std::shared_ptr<StartWork::Run> StartWork::begin(const std::function<void(Run&)>& work) {
  forgetFound();
  auto run = std::make_shared<Run>();
  run->number = ++last_;
  runs_.push_back(run);
  run->thread = std::thread([run, work] {
    work(*run);
    run->ended = true;
  });
  return run;
}

void StartWork::forgetFound() {
  std::erase_if(runs_, [](const std::shared_ptr<Run>& run) {
    if (!run->ended) return false;
    run->thread.join();
    return true;
  });
}

void StartWork::compare(std::shared_ptr<const Job> job, std::shared_ptr<const Plan> plan, std::size_t wall) {
  if (comparing_) comparing_->stopped = true;
  comparing_ = begin([this, job, plan, wall](Run& run) {
    std::vector<ComparedStart> starts;
    for (const Start& start : startsFor(*job, *plan, wall)) {
      if (run.stopped) return;
      starts.push_back(comparedStart(*job, *plan, wall, start));
    }
    const std::uint64_t own = run.number;
    QMetaObject::invokeMethod(this, [this, own, starts = ranked(std::move(starts))] {
      if (!is(comparing_, own)) return;
      comparing_ = nullptr;
      emit compared(starts);
    });
  });
}

void StartWork::search(std::shared_ptr<const Job> job, std::size_t wall) {
  if (searching_) return;
  searching_ = begin([this, job, wall](Run& run) {
    const std::uint64_t own = run.number;
    double told = 0;
    const StartSearch found = searchStarts(*job, wall, [&](double done) {
      if (done < told + 1 / toldSteps) return !run.stopped;
      told = done;
      QMetaObject::invokeMethod(this, [this, own, done] {
        if (is(searching_, own)) emit progressed(done);
      });
      return !run.stopped;
    });
    QMetaObject::invokeMethod(this, [this, own, found] {
      if (!is(searching_, own)) return;
      searching_ = nullptr;
      emit searched(found);
    });
  });
}

void StartWork::stopSearch() {
  if (searching_) searching_->stopped = true;
}

void StartWork::drop() {
  for (auto* run : {&comparing_, &searching_}) {
    if (*run) (*run)->stopped = true;
    *run = nullptr;
  }
}

}  // namespace ribwright
