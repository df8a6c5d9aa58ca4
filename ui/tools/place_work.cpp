// What is put at one place: girts, columns, joints, limits of bands, points of the outline.

#include <algorithm>

#include "core/editing/column_edits.h"
#include "core/editing/girt_edits.h"
#include "core/editing/outline_edits.h"
#include "core/editing/run_edits.h"
#include "ui/tools/drag_words.h"
#include "ui/tools/draw_work.h"
#include "ui/tools/point_work.h"

namespace ribwright {

namespace {

class PlaceWork : public PointWork {
 public:
  PlaceWork(const DraggedWall& wall, ToolKind tool) : PointWork(wall), tool_(tool) {}

  bool goesAlong(Axis axis) const override {
    const bool point = tool_ == ToolKind::BaseStep || tool_ == ToolKind::TopPoint;
    const bool level = tool_ == ToolKind::Girt || tool_ == ToolKind::BandLimit;
    return point || (axis == Axis::Z) == level;
  }
  bool typesPlaces() const override { return true; }

  Outcome<Job> made(const FacePoint& to) const override {
    const Job& job = *wall_.job;
    switch (tool_) {
      case ToolKind::Girt:
        return addGirt(job, wall_.wall, girtAtHeight(job, wall_.wall, to.z));
      case ToolKind::Column:
        return columnAdded(job, wall_.wall, to.u);
      case ToolKind::Joint:
        return jointAdded(job, wall_.wall, to.u);
      case ToolKind::BandLimit:
        return bandSplitAt(job, wall_.wall, to.z);
      case ToolKind::BaseStep:
        return baseStepAdded(job, wall_.wall, to);
      default:
        return topPointAdded(job, wall_.wall, to);
    }
  }

  std::string name(const FacePoint&) const override {
    return wall_.words->say("edit.add", {{"what", what()}}, wall_.style());
  }

  // A girt is chosen by its id, which is the one that is new.
  std::vector<Part> chosenAfter(const FacePoint& to) const override {
    const auto job = tool_ == ToolKind::Girt ? made(to) : Fault{};
    if (!job) return {};
    for (const Girt& girt : job.value().walls[wall_.wall].girts) {
      const auto& before = wall_.stated().girts;
      if (std::find(before.begin(), before.end(), girt) == before.end())
        return {{Part::Kind::Girt, wall_.stated().letter, girt.id}};
    }
    return {};
  }

  void draw(const FacePoint& to, const Job*, HandPicture& picture) const override {
    if (goesAlong(Axis::U)) picture.lines.push_back({Axis::U, to.u, {}});
    if (goesAlong(Axis::Z)) picture.lines.push_back({Axis::Z, to.z, {}});
    QStringList places;
    if (goesAlong(Axis::U)) places << lengthWords(to.u, wall_.style());
    if (goesAlong(Axis::Z)) places << lengthWords(to.z, wall_.style());
    picture.reading = places.join(QStringLiteral(", "));
  }

 private:
  Phrase what() const {
    switch (tool_) {
      case ToolKind::Girt:
        return {"name.a-girt"};
      case ToolKind::Column:
        return {"name.a-column"};
      case ToolKind::Joint:
        return {"name.a-joint"};
      case ToolKind::BandLimit:
        return {"name.a-band"};
      case ToolKind::BaseStep:
        return {"name.a-base-step"};
      default:
        return {"name.a-top-point"};
    }
  }

  ToolKind tool_;
};

}  // namespace

std::unique_ptr<DragWork> placeWork(const DraggedWall& wall, ToolKind tool) {
  return std::make_unique<PlaceWork>(wall, tool);
}

}  // namespace ribwright
