// The states of a job since it was opened, to go back and forward through without limit.
//
// A state is a whole job under the name of the edit that led to it. An edit that changes nothing is no state: what was
// undone can still be redone after it.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/editing/kept_job.h"
#include "core/job/job.h"

namespace ribwright {

class History {
 public:
  // One state, as the file holds it.
  explicit History(const Job& opened);

  Job job() const { return jobOf(states_[place_].job); }

  // Goes on from here to `job`; what was redone is dropped. False: it is what is there already.
  bool push(std::string name, const Job& job);

  bool canUndo() const { return place_ > 0; }
  bool canRedo() const { return place_ + 1 < states_.size(); }
  // Names of the edits that would be undone or redone; empty when there is none.
  std::string undoName() const { return canUndo() ? states_[place_].name : std::string(); }
  std::string redoName() const { return canRedo() ? states_[place_ + 1].name : std::string(); }
  // False when there is none.
  bool undo();
  bool redo();

  // The state that stands here is the one that the file holds.
  bool isSaved() const { return saved_ == place_; }
  void markSaved() { saved_ = place_; }

  // How many states are kept, and which of them stands.
  std::size_t size() const { return states_.size(); }
  std::size_t place() const { return place_; }

 private:
  struct State {
    std::string name;  // of the edit that led here; empty for the first
    KeptJob job;
  };
  std::vector<State> states_;  // never empty
  std::size_t place_ = 0;
  std::optional<std::size_t> saved_ = 0;  // absent: the file's state was dropped
};

}  // namespace ribwright
