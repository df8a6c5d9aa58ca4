#include "ui/tools/wall_drag.h"

#include <utility>

namespace ribwright {

WallDrag::WallDrag(DraggedWall wall, std::unique_ptr<DragWork> work, const FacePoint& start, const FacePoint& pressed)
    : wall_(std::move(wall)),
      work_(std::move(work)),
      start_(start),
      pressed_(pressed),
      pointer_(start),
      to_(start),
      candidates_(work_->candidates()),
      made_(*wall_.job) {}

void WallDrag::moveTo(const PointerAt& pointer) {
  FacePoint place = start_;
  if (work_->goesAlong(Axis::U)) place.u += pointer.at.u - pressed_.u;
  if (work_->goesAlong(Axis::Z)) place.z += pointer.at.z - pressed_.z;
  pointer_ = place;
  if (typing_) return;
  goTo(pointer.at == pressed_ ? start_ : snapped(place, pointer));
}

// What is moved along one way keeps its place along the other.
bool WallDrag::isHeld(Axis axis, const FacePoint& place, Length reach) const {
  if (work_->dragFor() != DragFor::Moving || work_->typesPlaces()) return false;
  const Length u = absolute(place.u - start_.u), z = absolute(place.z - start_.z);
  return axis == Axis::U ? u <= reach && z > reach : z <= reach && u > reach;
}

// What is not snapped to anything still comes to a mark of the tape.
FacePoint WallDrag::snapped(const FacePoint& place, const PointerAt& pointer) {
  snappedTo_.clear();
  const Length mark = tapeMark(wall_.job->units), unit = wholeUnit(wall_.job->units, pointer.reach);
  const SnappedDrag hit =
      pointer.snapping ? work_->snapped(place, candidates_, pointer.reach, unit) : SnappedDrag{place, {}, {}};
  const auto along = [&](Axis axis, const std::optional<Snap>& found, Length to) {
    if (!work_->goesAlong(axis)) return axis == Axis::U ? place.u : place.z;
    if (pointer.snapping && isHeld(axis, place, pointer.reach)) return axis == Axis::U ? start_.u : start_.z;
    if (found && found->to.kind != SnapCandidate::Kind::WholeUnit)
      snappedTo_.push_back({axis, found->at, QString::fromStdString(wall_.words->say(found->to.name, wall_.style()))});
    // The edges of a girt lie at fractions that no tape has.
    const bool exact = found && found->to.kind != SnapCandidate::Kind::Girt;
    return exact ? to : roundTo(to, mark);
  };
  return {along(Axis::U, hit.across, hit.to.u), along(Axis::Z, hit.up, hit.to.z)};
}

SnappedDrag snappedBy(const DragWork& work, const FacePoint& to, const std::vector<SnapCandidate>& candidates,
                      Length reach, Length unit, const LengthStyle& style,
                      const std::function<std::vector<Length>(Axis)>& places) {
  SnappedDrag snapped{to, {}, {}};
  if (work.goesAlong(Axis::U)) snapped.across = snapAny(Axis::U, places(Axis::U), candidates, reach, unit, style);
  if (work.goesAlong(Axis::Z)) snapped.up = snapAny(Axis::Z, places(Axis::Z), candidates, reach, unit, style);
  if (snapped.across) snapped.to.u += snapped.across->by;
  if (snapped.up) snapped.to.z += snapped.up->by;
  return snapped;
}

// One length goes the one way that there is.
std::vector<Fault> WallDrag::takeTyped(std::string_view text) {
  const auto read = parseTypedDrag(text, wall_.style());
  if (!read) return read.faults();
  TypedDrag typed = read.value();
  typed.place = typed.place || work_->typesPlaces();
  if (typed.main && !work_->goesAlong(Axis::U)) typed.up = std::exchange(typed.main, std::nullopt);
  if (typed.main && !work_->goesAlong(Axis::Z)) typed.across = std::exchange(typed.main, std::nullopt);
  typing_ = true;
  snappedTo_.clear();
  FacePoint end = endOfDrag(typed, start_, pointer_, work_->dragFor());
  if (!work_->goesAlong(Axis::U)) end.u = start_.u;
  if (!work_->goesAlong(Axis::Z)) end.z = start_.z;
  goTo(end);
  return {};
}

void WallDrag::endTyping() { typing_ = false; }

void WallDrag::goTo(const FacePoint& to) {
  to_ = to;
  made_ = work_->made(to);
}

HandPicture WallDrag::picture() const {
  HandPicture picture;
  picture.readingAt = to_;
  work_->draw(to_, made_ ? &made_.value() : nullptr, picture);
  picture.snapped = snappedTo_;
  if (made_) return picture;
  picture.reading = QString::fromStdString(made_.faults().front().message);
  picture.refused = true;
  return picture;
}

}  // namespace ribwright
