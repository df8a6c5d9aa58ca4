// Steps of work counted against their limit, and who watches.
#pragma once

#include <algorithm>
#include <cstdint>

#include "core/cutting/stock_cutter.h"

namespace ribwright {

class CuttingWork {
 public:
  explicit CuttingWork(const CuttingOptions& options) : options_(options), allotted_(options.effort) {}

  void spend(std::int64_t steps) {
    spent_ += steps;
    if (spent_ >= nextTold_) tell();
  }
  // No more work is to be begun: the limit is spent, or who watches has said so.
  bool ended() const { return stopped_ || spent_ >= options_.effort; }
  // That, or what was allotted is spent.
  bool stopped() const { return stopped_ || spent_ >= allotted_; }
  std::int64_t left() const { return stopped() ? 0 : allotted_ - spent_; }

  // From now on so many steps may be taken before it is stopped, within the limit.
  void allot(std::int64_t steps) {
    allotted_ = spent_ + std::min(steps, std::max<std::int64_t>(0, options_.effort - spent_));
  }
  void allotAll() { allotted_ = options_.effort; }

  void found(std::int64_t total) {
    total_ = total;
    tell();
  }
  void proved(std::int64_t bound) {
    bound_ = bound;
    tell();
  }

 private:
  void tell() {
    nextTold_ = spent_ + tellingStep;
    if (!stopped_ && options_.progress && !options_.progress({total_, bound_, spent_})) stopped_ = true;
  }

  static constexpr std::int64_t tellingStep = 20'000'000;

  const CuttingOptions options_;
  std::int64_t allotted_, spent_ = 0, nextTold_ = tellingStep, total_ = 0, bound_ = 0;
  bool stopped_ = false;
};

}  // namespace ribwright
