#include "ui/tools/grip_work.h"

#include "core/editing/opening_edits.h"
#include "core/editing/part_edits.h"
#include "core/editing/part_names.h"
#include "core/editing/penetration_edits.h"
#include "core/job/by_id.h"
#include "ui/tools/drag_words.h"

namespace ribwright {

namespace {

using Kind = Grip::Kind;

std::optional<FaceBox> boxOf(const Job& job, std::size_t wall, const std::string& id) {
  const Wall& on = job.walls[wall];
  const Opening* opening = byId(on.openings, id);
  const Penetration* hole = byId(on.penetrations, id);
  if (!opening && !hole) return std::nullopt;
  const auto box = opening ? openingBox(job, on, *opening) : penetrationBox(job, on, *hole);
  return box ? std::optional(box.value()) : std::nullopt;
}

class GripWork : public DragWork {
 public:
  GripWork(const DraggedWall& wall, const Grip& grip)
      : wall_(wall), grip_(grip), box_(boxOf(*wall.job, wall.wall, grip.id)) {}

  bool goesAlong(Axis axis) const override { return axis == Axis::U ? grip_.alongU : grip_.alongZ; }

  std::vector<SnapCandidate> candidates() const override {
    return snapCandidatesFor(*wall_.job, *wall_.plan, wall_.wall, grip_);
  }

  SnappedDrag snapped(const FacePoint& to, const std::vector<SnapCandidate>& candidates, Length reach,
                      Length unit) const override {
    return snappedDrag(*wall_.job, wall_.wall, grip_, to, candidates, reach, unit, wall_.style());
  }

  Outcome<Job> made(const FacePoint& to) const override {
    return dragged(*wall_.job, *wall_.plan, wall_.wall, grip_, to);
  }

  std::string name(const FacePoint& to) const override {
    return nameOfDrag(*wall_.job, wall_.wall, grip_, to, *wall_.words);
  }

  void draw(const FacePoint& to, const Job* made, HandPicture& picture) const override {
    const auto box = made ? boxOf(*made, wall_.wall, grip_.id) : std::nullopt;
    if (box) {
      const bool whole = grip_.kind == Kind::Opening || grip_.kind == Kind::Penetration;
      picture.boxes.push_back(*box);
      picture.reading = whole ? wayWords(grip_.at, to, wall_.style()) : sizeWords(*box, wall_.style());
      return addGaps(picture, wall_, *made, *box, {grip_.id});
    }
    if (grip_.alongU) picture.lines.push_back({Axis::U, to.u, {}});
    if (grip_.alongZ) picture.lines.push_back({Axis::Z, to.z, {}});
    picture.reading = wayWords(grip_.at, to, wall_.style());
  }

 private:
  DraggedWall wall_;
  Grip grip_;
  std::optional<FaceBox> box_;  // of the opening or penetration, where it began
};

class PartsWork : public DragWork {
 public:
  PartsWork(const DraggedWall& wall, const std::vector<Part>& parts) : wall_(wall), parts_(parts) {
    for (const Part& part : parts) {
      if (const auto box = boxOf(*wall.job, wall.wall, part.id)) boxes_.push_back(*box);
    }
  }

  bool goesAlong(Axis) const override { return true; }

  std::vector<SnapCandidate> candidates() const override {
    std::vector<std::string> ids;
    for (const Part& part : parts_) ids.push_back(part.id);
    return snapCandidates(*wall_.job, *wall_.plan, wall_.wall, ids);
  }

  SnappedDrag snapped(const FacePoint& to, const std::vector<SnapCandidate>& candidates, Length reach,
                      Length unit) const override {
    return snappedBy(*this, to, candidates, reach, unit, wall_.style(), [&](Axis axis) {
      std::vector<Length> places;
      for (const FaceBox& box : boxes_) {
        places.push_back(axis == Axis::U ? box.left + to.u : box.bottom + to.z);
        places.push_back(axis == Axis::U ? box.right + to.u : box.top + to.z);
      }
      return places;
    });
  }

  Outcome<Job> made(const FacePoint& to) const override { return partsMoved(*wall_.job, parts_, to.u, to.z); }

  std::string name(const FacePoint& to) const override {
    if (to.u == Length() || to.z == Length())
      return editName("edit.move", parts_, *wall_.words, wall_.style(), {{"by", to.u + to.z}});
    return editName("edit.move-both", parts_, *wall_.words, wall_.style(), {{"across", to.u}, {"up", to.z}});
  }

  void draw(const FacePoint& to, const Job* made, HandPicture& picture) const override {
    for (const Part& part : parts_) {
      const auto box = made ? boxOf(*made, wall_.wall, part.id) : std::nullopt;
      if (box) picture.boxes.push_back(*box);
    }
    picture.reading = wayWords({}, to, wall_.style());
    if (!boxes_.empty()) picture.readingAt = {boxes_.front().left + to.u, boxes_.front().top + to.z};
  }

 private:
  DraggedWall wall_;
  std::vector<Part> parts_;
  std::vector<FaceBox> boxes_;  // where they began
};

}  // namespace

std::unique_ptr<DragWork> gripWork(const DraggedWall& wall, const Grip& grip) {
  return std::make_unique<GripWork>(wall, grip);
}

std::unique_ptr<DragWork> partsWork(const DraggedWall& wall, const std::vector<Part>& parts) {
  return std::make_unique<PartsWork>(wall, parts);
}

}  // namespace ribwright
