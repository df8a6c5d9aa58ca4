// What the trade's rules say of one run: its limits, its start, its modules and the metal of each.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/layout/wall_layout.h"
#include "tests/fuzz/stated_wall.h"

namespace ribwright::fuzz {

// Distance along the hanging direction from where the run starts, and back.
struct Along {
  Hand hand = Hand::LeftToRight;
  Nm left = 0, right = 0;
  Nm t(Nm u) const { return hand == Hand::LeftToRight ? u - left : right - u; }
  Nm u(Nm t) const { return hand == Hand::LeftToRight ? left + t : right - t; }
  Nm width() const { return right - left; }
};

struct StatedModule {
  Nm line = 0, next = 0;         // t of its module lines
  Nm starting = 0, leading = 0;  // t of its metal edges, clipped
  bool startRipped = false, leadRipped = false, hung = false;
};

struct StatedRun {
  int band = 0;
  Along along;
  Nm reachAtStart = 0, reachAtEnd = 0;
  std::optional<Nm> floor, ceiling;
};

const Profile* profileOf(const Job& job, const Wall& wall, int band);
// In hanging order from joint to joint, and there the lowest band first.
std::vector<StatedRun> statedRuns(const Wall& wall, const StatedFace& face, Hand hand);

// The offset that the start rule gives; absent where the trade's rules leave a choice (best of search, no ridge on the
// wall
// ...).
std::optional<Nm> statedOffset(const Job& job, const Wall& wall, const StatedFace& face,
                               const std::vector<StatedCut>& cuts, const StatedRun& run);
// Whether a found offset is a candidate of the search.
bool isCandidate(const Job& job, const Wall& wall, const StatedFace& face, const std::vector<StatedCut>& cuts,
                 const StatedRun& run, Nm offset);

// The module lines from one sheet to the next; `number` is the hanging number that this module would get if it is hung.
class ModuleWalk {
 public:
  ModuleWalk(const Job& job, const Wall& wall, const StatedRun& run, Nm offset);
  // False when the sheets so far reach the end of the run, and the next one does not hang there already.
  bool goesOn(int number) const;
  StatedModule module(int number) const;
  void take(const StatedModule& module);

 private:
  const Job& job_;
  const Wall& wall_;
  StatedRun run_;
  const Profile& profile_;
  Nm line_;
  Nm reached_;
  Nm leading_;  // of the last one, before it was cut to the wall
};

}  // namespace ribwright::fuzz
