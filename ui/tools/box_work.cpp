// Openings and holes, drawn from corner to corner.

#include "ui/tools/draw_work.h"
#include "ui/tools/point_work.h"

#include "core/editing/next_ids.h"
#include "core/editing/opening_edits.h"
#include "core/editing/part_names.h"
#include "core/editing/penetration_edits.h"
#include "ui/tools/drag_words.h"

namespace ribwright {

namespace {

std::optional<Opening::Kind> openingKindOf(ToolKind tool) {
  switch (tool) {
    case ToolKind::Window:
      return Opening::Kind::Window;
    case ToolKind::WalkDoor:
      return Opening::Kind::WalkDoor;
    case ToolKind::OverheadDoor:
      return Opening::Kind::OverheadDoor;
    case ToolKind::SlidingDoor:
      return Opening::Kind::SlidingDoor;
    case ToolKind::Louvre:
      return Opening::Kind::Louvre;
    case ToolKind::Framed:
      return Opening::Kind::Framed;
    default:
      return std::nullopt;
  }
}

bool drawsHoles(ToolKind tool) { return tool == ToolKind::RoundHole || tool == ToolKind::RectangularHole; }

class CornerWork : public PointWork {
 public:
  explicit CornerWork(const DraggedWall& wall) : PointWork(wall) {}
  bool goesAlong(Axis) const override { return true; }
  bool typesPlaces() const override { return true; }
  Outcome<Job> made(const FacePoint&) const override { return *wall_.job; }
  std::string name(const FacePoint&) const override { return {}; }
  void draw(const FacePoint& to, const Job*, HandPicture& picture) const override {
    picture.boxes.push_back({to.u, to.u, to.z, to.z});
    picture.reading = lengthWords(to.u, wall_.style()) + QStringLiteral(", ") + lengthWords(to.z, wall_.style());
  }
};

class BoxWork : public PointWork {
 public:
  BoxWork(const DraggedWall& wall, ToolKind tool, const FacePoint& corner)
      : PointWork(wall), tool_(tool), corner_(corner) {}

  bool goesAlong(Axis) const override { return true; }
  DragFor dragFor() const override { return DragFor::Drawing; }

  Outcome<Job> made(const FacePoint& to) const override {
    const auto drawn = this->drawn(to);
    return drawn ? drawn.value().job : Outcome<Job>(drawn.faults());
  }

  std::string name(const FacePoint& to) const override {
    return editName("edit.add", chosenAfter(to), *wall_.words, wall_.style());
  }

  std::vector<Part> chosenAfter(const FacePoint& to) const override {
    const auto drawn = this->drawn(to);
    return drawn ? std::vector{drawn.value().part} : std::vector<Part>{};
  }

  void draw(const FacePoint& to, const Job* made, HandPicture& picture) const override {
    const auto drawn = made ? this->drawn(to) : Fault{};
    if (!drawn) return;
    const FaceBox box = drawn.value().box;
    picture.boxes.push_back(box);
    picture.reading =
        QString::fromStdString(drawn.value().part.id) + QStringLiteral("  ") + sizeWords(box, wall_.style());
    addGaps(picture, wall_, *made, box, {drawn.value().part.id});
  }

 private:
  struct Drawn {
    Job job;
    Part part;
    FaceBox box;
  };

  Outcome<Drawn> drawn(const FacePoint& to) const { return drawsHoles(tool_) ? hole(to) : opening(to); }

  Outcome<Drawn> opening(const FacePoint& to) const {
    const auto made = drawnOpening(*wall_.job, wall_.wall, *openingKindOf(tool_), corner_, to);
    if (!made) return made.faults();
    return lastOf(addOpening(*wall_.job, wall_.wall, made.value()), &Wall::openings, Part::Kind::Opening, openingBox);
  }

  Outcome<Drawn> hole(const FacePoint& to) const {
    const auto shape = tool_ == ToolKind::RoundHole ? Penetration::Shape::Round : Penetration::Shape::Rectangular;
    const auto made = drawnPenetration(*wall_.job, wall_.wall, shape, corner_, to);
    if (!made) return made.faults();
    return lastOf(addPenetration(*wall_.job, wall_.wall, made.value()), &Wall::penetrations, Part::Kind::Penetration,
                  penetrationBox);
  }

  // What was added stands last.
  template <class Item, class BoxOf>
  Outcome<Drawn> lastOf(Outcome<Job> job, std::vector<Item> Wall::*list, Part::Kind kind, const BoxOf& boxOf) const {
    if (!job) return job.faults();
    const Wall& wall = job.value().walls[wall_.wall];
    const Item& last = (wall.*list).back();
    const auto box = boxOf(job.value(), wall, last);
    if (!box) return box.faults();
    const Part part{kind, wall.letter, last.id};
    return Drawn{std::move(job).value(), part, box.value()};
  }

  ToolKind tool_;
  FacePoint corner_;
};

}  // namespace

bool drawsBoxes(ToolKind tool) { return openingKindOf(tool) || drawsHoles(tool); }

bool putsAtPlaces(ToolKind tool) { return tool != ToolKind::Choose && !drawsBoxes(tool); }

std::unique_ptr<DragWork> cornerWork(const DraggedWall& wall) { return std::make_unique<CornerWork>(wall); }

FacePoint boxStart(const DraggedWall& wall, ToolKind tool, const FacePoint& corner) {
  const auto kind = openingKindOf(tool);
  if (!kind || !isDoor(*kind)) return corner;
  const FacePoint head{corner.u + Length::feet(1), corner.z + Length::feet(100)};
  const auto drawn = drawnOpening(*wall.job, wall.wall, *kind, corner, head);
  return drawn ? FacePoint{corner.u, drawn.value().sill} : corner;
}

std::unique_ptr<DragWork> boxWork(const DraggedWall& wall, ToolKind tool, const FacePoint& corner) {
  return std::make_unique<BoxWork>(wall, tool, corner);
}

}  // namespace ribwright
