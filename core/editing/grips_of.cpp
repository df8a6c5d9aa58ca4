// Where the grips of a wall stand.

#include "core/editing/grips.h"
#include "core/editing/opening_edits.h"
#include "core/editing/penetration_edits.h"
#include "core/editing/wall_parts.h"
#include "core/job/by_id.h"
#include "core/layout/girt_row.h"
#include "core/layout/wall_face.h"

namespace ribwright {
namespace {

Length middle(Length a, Length b) { return a + half(b - a); }

FacePoint pointOf(const FaceBox& box, BoxEdge edge) {
  const auto along = [](int side, Length low, Length high) {
    return side == 0 ? middle(low, high) : side < 0 ? low : high;
  };
  return {along(edge.across, box.left, box.right), along(edge.up, box.bottom, box.top)};
}

class Gathering {
 public:
  Gathering(const Job& job, const Plan& plan, std::size_t wall)
      : job_(job), wall_(job.walls.at(wall)), layout_(plan.walls.at(wall)->layout) {}

  void add(const Part& part) {
    if (part.wall != wall_.letter) return;
    switch (part.kind) {
      case Part::Kind::Opening:
        return addOpeningGrips(part.id);
      case Part::Kind::Penetration:
        return addPenetrationGrips(part.id);
      case Part::Kind::Girt:
        return addGirtGrips(part);
      case Part::Kind::Column:
        return addColumnGrip(part);
      case Part::Kind::Face:
        return addFaceGrips();
      case Part::Kind::Piece:
      case Part::Kind::Screw:
      case Part::Kind::Batch:
        return;
    }
  }

  std::vector<Grip> grips() && { return std::move(grips_); }

 private:
  void put(Grip::Kind kind, const std::string& id, std::size_t index, BoxEdge edge, FacePoint at, bool alongU,
           bool alongZ) {
    grips_.push_back({kind, id, index, edge, at, alongU, alongZ});
  }

  void addBox(Grip::Kind whole, Grip::Kind edges, const std::string& id, const FaceBox& box, bool corners) {
    put(whole, id, 0, {}, pointOf(box, {}), true, true);
    for (const int up : {-1, 0, 1}) {
      for (const int across : {-1, 0, 1}) {
        const BoxEdge edge{across, up};
        const bool corner = across != 0 && up != 0;
        if (edge == BoxEdge{} || (corner && !corners)) continue;
        put(edges, id, 0, edge, pointOf(box, edge), across != 0, up != 0);
      }
    }
  }

  void addOpeningGrips(const std::string& id) {
    const Opening* opening = byId(wall_.openings, id);
    if (!opening) return;
    const auto box = openingBox(job_, wall_, *opening);
    if (box) addBox(Grip::Kind::Opening, Grip::Kind::OpeningEdge, id, box.value(), true);
  }

  void addPenetrationGrips(const std::string& id) {
    const Penetration* penetration = byId(wall_.penetrations, id);
    if (!penetration) return;
    const auto box = penetrationBox(job_, wall_, *penetration);
    const bool round = penetration->shape == Penetration::Shape::Round;
    if (box) addBox(Grip::Kind::Penetration, Grip::Kind::PenetrationEdge, id, box.value(), !round);
  }

  void addGirtGrips(const Part& part) {
    const Girt* girt = girtOf(wall_, part);
    if (!girt) return;
    const Length z = girtFace(*girt, job_.members).row;
    const GirtReach reach = girtReach(*girt, layout_.face.width);
    put(Grip::Kind::Girt, girt->id, 0, {}, {middle(reach.from, reach.to), z}, false, true);
    put(Grip::Kind::GirtEnd, girt->id, 0, {-1, 0}, {reach.from, z}, true, false);
    put(Grip::Kind::GirtEnd, girt->id, 0, {1, 0}, {reach.to, z}, true, false);
  }

  void addColumnGrip(const Part& part) {
    const auto number = columnOf(wall_, part);
    if (!number) return;
    put(Grip::Kind::Column, "", static_cast<std::size_t>(*number), {}, atFoot(*columnAt(wall_.columns, *number)), true,
        false);
  }

  FacePoint atFoot(Length u) const { return {u, layout_.face.bottom.heightAt(u, Beside::Right)}; }

  void addFaceGrips() {
    for (std::size_t i = 0; i < wall_.top.size(); ++i) put(Grip::Kind::TopPoint, "", i, {}, wall_.top[i], true, true);
    for (std::size_t i = 0; i < wall_.base.steps.size(); ++i)
      put(Grip::Kind::BaseStep, "", i, {}, wall_.base.steps[i], true, true);
    for (std::size_t i = 0; i < layout_.runs.size(); ++i) {
      const SheetRun& run = layout_.runs[i];
      if (run.modules.empty()) continue;
      const Length u = run.modules.front().startLine;
      put(Grip::Kind::ModuleLine, "", i, {}, {u, run.floor.value_or(atFoot(u).z)}, true, false);
    }
    for (std::size_t i = 1; i < wall_.bands.size(); ++i) {
      if (wall_.bands[i].from)
        put(Grip::Kind::Band, "", i, {}, {half(layout_.face.width), *wall_.bands[i].from}, false, true);
    }
    for (std::size_t i = 0; i < wall_.expansionJoints.size(); ++i)
      put(Grip::Kind::Joint, "", i, {}, atFoot(wall_.expansionJoints[i]), true, false);
  }

  const Job& job_;
  const Wall& wall_;
  const WallLayout& layout_;
  std::vector<Grip> grips_;
};

}  // namespace

std::vector<Grip> gripsOf(const Job& job, const Plan& plan, std::size_t wall, const std::vector<Part>& parts) {
  if (plan.walls.at(wall)->layout.face.width <= Length()) return {};  // not laid out: nothing stands anywhere yet
  Gathering gathering(job, plan, wall);
  for (const Part& part : parts) gathering.add(part);
  return std::move(gathering).grips();
}

}  // namespace ribwright
