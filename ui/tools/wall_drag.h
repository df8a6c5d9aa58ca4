// One drag on a wall, from where it began to where it ends: a tool's work. It says what would come of it, and never
// touches the history.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/editing/drag_snaps.h"
#include "core/editing/snaps.h"
#include "core/editing/typed_drag.h"
#include "core/job/job.h"
#include "core/plan/plan.h"
#include "core/units/outcome.h"
#include "core/words/words.h"
#include "ui/board/hand_picture.h"

namespace ribwright {

// The wall that a drag began on, as it was then.
struct DraggedWall {
  std::shared_ptr<const Job> job;
  std::shared_ptr<const Plan> plan;
  std::size_t wall = 0;
  const Words* words = nullptr;
  LengthStyle style() const { return {job->units, job->decimalSign}; }
  const Wall& stated() const { return job->walls[wall]; }
};

// Where the pointer is on the face.
struct PointerAt {
  FacePoint at;
  Length reach;          // what is nearer than this can be snapped to
  bool snapping = true;  // off: only to the tape's marks
};

// What a kind of drag does with a place; each is reckoned from the job that the drag began in.
class DragWork {
 public:
  virtual ~DragWork() = default;

  // Ways in which it can go.
  virtual bool goesAlong(Axis axis) const = 0;
  virtual DragFor dragFor() const { return DragFor::Moving; }
  // A typed length is a place on the wall, also without its sign.
  virtual bool typesPlaces() const { return false; }
  // What it can snap to, and the place that it is snapped to from `to`.
  virtual std::vector<SnapCandidate> candidates() const = 0;
  virtual SnappedDrag snapped(const FacePoint& to, const std::vector<SnapCandidate>& candidates, Length reach,
                              Length unit) const = 0;
  virtual Outcome<Job> made(const FacePoint& to) const = 0;
  virtual std::string name(const FacePoint& to) const = 0;
  // To be chosen when it is done; empty: what is chosen stays.
  virtual std::vector<Part> chosenAfter(const FacePoint&) const { return {}; }
  // `made`: the job that came of it; null: it cannot be.
  virtual void draw(const FacePoint& to, const Job* made, HandPicture& picture) const = 0;
};

// Each axis by itself: `places` gives what of the thing snaps along it.
SnappedDrag snappedBy(const DragWork& work, const FacePoint& to, const std::vector<SnapCandidate>& candidates,
                      Length reach, Length unit, const LengthStyle& style,
                      const std::function<std::vector<Length>(Axis)>& places);

class WallDrag {
 public:
  // `start`: where the drag is reckoned from.
  WallDrag(DraggedWall wall, std::unique_ptr<DragWork> work, const FacePoint& start, const FacePoint& pressed);

  void moveTo(const PointerAt& pointer);
  // What is typed takes the place of the pointer until typing ends. Faults: it cannot be read.
  std::vector<Fault> takeTyped(std::string_view text);
  void endTyping();

  // The job that it began in.
  const std::shared_ptr<const Job>& job() const { return wall_.job; }
  // It ends somewhere else than it began.
  bool isMoved() const { return to_ != start_; }
  const FacePoint& to() const { return to_; }
  // The job as it would be; faults: it cannot be so.
  const Outcome<Job>& made() const { return made_; }
  std::string name() const { return work_->name(to_); }
  std::vector<Part> chosenAfter() const { return work_->chosenAfter(to_); }
  HandPicture picture() const;

 private:
  void goTo(const FacePoint& to);
  FacePoint snapped(const FacePoint& place, const PointerAt& pointer);
  bool isHeld(Axis axis, const FacePoint& place, Length reach) const;

  DraggedWall wall_;
  std::unique_ptr<DragWork> work_;
  FacePoint start_, pressed_, pointer_, to_;
  bool typing_ = false;
  std::vector<SnapCandidate> candidates_;
  std::vector<HandPicture::Line> snappedTo_;
  Outcome<Job> made_;
};

}  // namespace ribwright
