#include "core/editing/history.h"

namespace ribwright {

History::History(const Job& first, bool saved) {
  states_.push_back({next_++, "", keep(first, nullptr)});
  if (saved) saved_ = id();
}

bool History::push(std::string name, const Job& job, std::string_view merging) {
  const KeptJob& here = states_[place_].job;
  if (isKept(job, here)) return false;
  if (!merging.empty() && merging == merging_) return merge(std::move(name), job);
  State next{next_++, std::move(name), keep(job, &here)};
  states_.resize(place_ + 1);
  states_.push_back(std::move(next));
  ++place_;
  merging_ = merging;
  return true;
}

// Only the last state, and never the saved one, is merged into.
bool History::merge(std::string name, const Job& job) {
  const KeptJob& before = states_[place_ - 1].job;
  const bool back = isKept(job, before);
  states_.resize(place_);
  if (back) {
    --place_;
    merging_.clear();
  } else {
    states_.push_back({next_++, std::move(name), keep(job, &states_.back().job)});
  }
  return true;
}

void History::markSaved() {
  saved_ = id();
  endMerging();
}

bool History::undo() {
  endMerging();
  if (!canUndo()) return false;
  --place_;
  return true;
}

bool History::redo() {
  endMerging();
  if (!canRedo()) return false;
  ++place_;
  return true;
}

}  // namespace ribwright
