// The states of a job since it was opened, to go back and forward through without limit.
//
// A state is a whole job under the name of the edit that led to it. An edit that changes nothing is no state: what was
// undone can still be redone after it.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/editing/kept_job.h"
#include "core/job/job.h"

namespace ribwright {

// Of a state, as long as its history lives: no other state ever had it, not one that was dropped either.
using StateId = std::uint64_t;

class History {
 public:
  // One state, as the file holds it.
  explicit History(const Job& opened) : History(opened, true) {}
  // One state that no file holds.
  static History unsaved(const Job& begun) { return History(begun, false); }

  Job job() const { return jobOf(states_[place_].job); }

  // Goes on from here to `job`; what was redone is dropped. False: it is what is there already.
  // `merging`: edits one after the other under the same text become one step (typing into one field, turning one
  // wheel), until endMerging() or until one goes back or saves. Back where that step began, it is no step any more.
  // Empty: never.
  bool push(std::string name, const Job& job, std::string_view merging = {});
  void endMerging() { merging_.clear(); }

  bool canUndo() const { return place_ > 0; }
  bool canRedo() const { return place_ + 1 < states_.size(); }
  // Names of the edits that would be undone or redone; empty when there is none.
  std::string undoName() const { return canUndo() ? states_[place_].name : std::string(); }
  std::string redoName() const { return canRedo() ? states_[place_ + 1].name : std::string(); }
  // False when there is none.
  bool undo();
  bool redo();

  // The state that stands here is the one that the file holds.
  bool isSaved() const { return saved_ == id(); }
  void markSaved();

  // How many states are kept, and which of them stands.
  std::size_t size() const { return states_.size(); }
  std::size_t place() const { return place_; }
  StateId id() const { return states_[place_].id; }

 private:
  struct State {
    StateId id;
    std::string name;  // of the edit that led here; empty for the first
    KeptJob job;
  };
  History(const Job& first, bool saved);
  bool merge(std::string name, const Job& job);

  std::vector<State> states_;  // never empty
  std::size_t place_ = 0;
  StateId next_ = 1;
  std::optional<StateId> saved_;  // absent: no file holds any of them
  std::string merging_;           // what the state that stands here may take up; empty: nothing
};

}  // namespace ribwright
