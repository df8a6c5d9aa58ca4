// What stands on a wall that places snap to.
#include <algorithm>

#include "core/editing/opening_edits.h"
#include "core/editing/part_names.h"
#include "core/editing/penetration_edits.h"
#include "core/editing/snaps.h"
#include "core/layout/girt_row.h"
#include "core/layout/wall_face.h"

namespace ribwright {
namespace {

class Candidates {
 public:
  Candidates(const Job& job, const Plan& plan, std::size_t wall, const std::vector<std::string>& leftOut)
      : job_(job), wall_(job.walls.at(wall)), layout_(plan.walls.at(wall)->layout), leftOut_(leftOut) {}

  std::vector<SnapCandidate> gathered() && {
    if (layout_.face.width <= Length()) return {};
    addColumns();
    for (const Girt& girt : wall_.girts) addGirt(girt);
    for (const Opening& opening : wall_.openings) addBox(opening.id, openingBox(job_, wall_, opening), true);
    for (const Penetration& penetration : wall_.penetrations)
      addBox(penetration.id, penetrationBox(job_, wall_, penetration), false);
    addWall();
    addModuleLines();
    return std::move(all_);
  }

 private:
  bool isLeftOut(const std::string& id) const {
    return std::find(leftOut_.begin(), leftOut_.end(), id) != leftOut_.end();
  }

  void put(SnapCandidate::Kind kind, Axis axis, Length at, Phrase name, const std::string& id = "") {
    all_.push_back({kind, axis, at, std::move(name), id});
  }

  void addColumns() {
    const std::vector<Length> columns = columnsOf(wall_.columns);
    for (std::size_t i = 0; i < columns.size(); ++i) {
      const auto number = static_cast<std::int64_t>(i) + 1;
      const std::string id = std::to_string(number);
      if (!isLeftOut(id)) put(SnapCandidate::Kind::Column, Axis::U, columns[i], numberedBy("name.column", number), id);
      if (i > 0)
        put(SnapCandidate::Kind::Middle, Axis::U, columns[i - 1] + half(columns[i] - columns[i - 1]),
            numberedBy("name.bay-middle", number - 1));
    }
  }

  void addGirt(const Girt& girt) {
    if (isLeftOut(girt.id)) return;
    const ScrewFace face = girtFace(girt, job_.members);
    put(SnapCandidate::Kind::Girt, Axis::Z, face.row, namedBy("name.girt", girt.id), girt.id);
    if (face.low < face.row) {
      put(SnapCandidate::Kind::Girt, Axis::Z, face.low, namedBy("name.girt-lower-edge", girt.id), girt.id);
      put(SnapCandidate::Kind::Girt, Axis::Z, face.high, namedBy("name.girt-upper-edge", girt.id), girt.id);
    }
    for (const auto& end : {girt.from, girt.to}) {
      if (end) put(SnapCandidate::Kind::Girt, Axis::U, *end, namedBy("name.girt-end", girt.id), girt.id);
    }
  }

  void addBox(const std::string& id, const Outcome<FaceBox>& found, bool opening) {
    if (!found || isLeftOut(id)) return;
    const FaceBox& box = found.value();
    const auto edge = [&](Axis axis, Length at, const char* ofOpening, const char* other) {
      put(SnapCandidate::Kind::OpeningEdge, axis, at, namedBy(opening ? ofOpening : other, id), id);
    };
    edge(Axis::U, box.left, "name.left-jamb", "name.left-edge");
    edge(Axis::U, box.right, "name.right-jamb", "name.right-edge");
    edge(Axis::Z, box.bottom, "name.sill", "name.lower-edge");
    edge(Axis::Z, box.top, "name.head", "name.upper-edge");
    put(SnapCandidate::Kind::Middle, Axis::U, box.left + half(box.right - box.left), namedBy("name.centre", id), id);
    put(SnapCandidate::Kind::Middle, Axis::Z, box.bottom + half(box.top - box.bottom), namedBy("name.centre", id), id);
  }

  void addHeights(const HeightLine& line, const char* name) {
    std::vector<Length> known;
    for (const FaceVertex& vertex : line.vertices()) {
      if (std::find(known.begin(), known.end(), vertex.z) != known.end()) continue;
      known.push_back(vertex.z);
      put(SnapCandidate::Kind::Corner, Axis::Z, vertex.z, {name});
    }
  }

  void addWall() {
    const WallFace& face = layout_.face;
    put(SnapCandidate::Kind::Corner, Axis::U, Length(), {"name.left-corner"});
    put(SnapCandidate::Kind::Corner, Axis::U, face.width, {"name.right-corner"});
    if (face.ridge) put(SnapCandidate::Kind::Corner, Axis::U, *face.ridge, {"name.ridge"});
    put(SnapCandidate::Kind::Middle, Axis::U, half(face.width), {"name.wall-middle"});
    addHeights(face.concrete, "name.concrete");
    addHeights(face.steel, "name.steel-line");
    for (std::size_t i = 0; i < wall_.expansionJoints.size(); ++i)
      put(SnapCandidate::Kind::Joint, Axis::U, wall_.expansionJoints[i],
          numberedBy("name.joint", static_cast<std::int64_t>(i) + 1));
    for (std::size_t i = 1; i < wall_.bands.size(); ++i) {
      if (wall_.bands[i].from)
        put(SnapCandidate::Kind::Joint, Axis::Z, *wall_.bands[i].from,
            numberedBy("name.band-limit", static_cast<std::int64_t>(i) + 1));
    }
  }

  // By the number of the sheet that it starts.
  void addModuleLines() {
    for (const SheetRun& run : layout_.runs) {
      for (const Module& module : run.modules)
        put(SnapCandidate::Kind::ModuleLine, Axis::U, module.startLine, numberedBy("name.module-line", module.number));
      if (!run.modules.empty())
        put(SnapCandidate::Kind::ModuleLine, Axis::U, run.modules.back().leadLine,
            numberedBy("name.module-line", run.modules.back().number + 1));
    }
  }

  const Job& job_;
  const Wall& wall_;
  const WallLayout& layout_;
  const std::vector<std::string>& leftOut_;
  std::vector<SnapCandidate> all_;
};

}  // namespace

std::vector<SnapCandidate> snapCandidates(const Job& job, const Plan& plan, std::size_t wall,
                                          const std::vector<std::string>& leftOut) {
  return Candidates(job, plan, wall, leftOut).gathered();
}

}  // namespace ribwright
