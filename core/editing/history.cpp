#include "core/editing/history.h"

namespace ribwright {

History::History(const Job& opened) { states_.push_back({"", keep(opened, nullptr)}); }

bool History::push(std::string name, const Job& job) {
  const KeptJob& here = states_[place_].job;
  if (isKept(job, here)) return false;
  State next{std::move(name), keep(job, &here)};
  if (saved_ && *saved_ > place_) saved_.reset();
  states_.resize(place_ + 1);
  states_.push_back(std::move(next));
  ++place_;
  return true;
}

bool History::undo() {
  if (!canUndo()) return false;
  --place_;
  return true;
}

bool History::redo() {
  if (!canRedo()) return false;
  ++place_;
  return true;
}

}  // namespace ribwright
