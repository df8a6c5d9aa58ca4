#include "core/editing/neighbours.h"

#include <algorithm>

#include "core/editing/opening_edits.h"
#include "core/editing/part_names.h"
#include "core/editing/penetration_edits.h"
#include "core/layout/girt_row.h"
#include "core/layout/wall_face.h"

namespace ribwright {
namespace {

struct Neighbour {
  Length at;
  Phrase name;
};

// The nearest of what is put before it, on one side of a place.
class Nearest {
 public:
  Nearest(Length edge, bool upward) : edge_(edge), upward_(upward) {}
  void look(Length at, Phrase name) {
    if (upward_ ? at <= edge_ : at >= edge_) return;
    if (!found_ || (upward_ ? at < found_->at : at > found_->at)) found_ = Neighbour{at, std::move(name)};
  }
  bool found() const { return found_.has_value(); }
  void put(std::vector<NeighbourGap>& gaps, Axis axis, Length across) const {
    if (!found_) return;
    gaps.push_back({axis, std::min(edge_, found_->at), std::max(edge_, found_->at), across, found_->name});
  }

 private:
  Length edge_;
  bool upward_;
  std::optional<Neighbour> found_;
};

class Looking {
 public:
  Looking(const Job& job, const Wall& wall, const WallLayout& layout, const FaceBox& box,
          const std::vector<std::string>& leftOut)
      : job_(job), wall_(wall), layout_(layout), box_(box), leftOut_(leftOut) {}

  std::vector<NeighbourGap> gaps() {
    for (const bool rightward : {false, true}) beside(rightward);
    for (const bool upward : {false, true}) above(upward);
    return std::move(gaps_);
  }

 private:
  bool isLeftOut(const std::string& id) const {
    return std::find(leftOut_.begin(), leftOut_.end(), id) != leftOut_.end();
  }
  Length middleU() const { return box_.left + half(box_.right - box_.left); }
  Length middleZ() const { return box_.bottom + half(box_.top - box_.bottom); }

  void lookAt(Nearest& nearest, bool rightward, const Outcome<FaceBox>& other, const std::string& id, bool opening) {
    if (!other || isLeftOut(id)) return;
    const FaceBox& is = other.value();
    if (is.top <= box_.bottom || is.bottom >= box_.top) return;
    const char* left = opening ? "name.left-jamb" : "name.left-edge";
    const char* right = opening ? "name.right-jamb" : "name.right-edge";
    nearest.look(rightward ? is.left : is.right, namedBy(rightward ? left : right, id));
  }

  void beside(bool rightward) {
    const Length edge = rightward ? box_.right : box_.left;
    Nearest opening(edge, rightward), column(edge, rightward);
    for (const Opening& one : wall_.openings) lookAt(opening, rightward, openingBox(job_, wall_, one), one.id, true);
    for (const Penetration& one : wall_.penetrations)
      lookAt(opening, rightward, penetrationBox(job_, wall_, one), one.id, false);
    const std::vector<Length> columns = columnsOf(wall_.columns);
    for (std::size_t i = 0; i < columns.size(); ++i)
      column.look(columns[i], numberedBy("name.column", static_cast<std::int64_t>(i) + 1));
    if (!opening.found())
      opening.look(rightward ? layout_.face.width : Length(), {rightward ? "name.right-corner" : "name.left-corner"});
    opening.put(gaps_, Axis::U, middleZ());
    column.put(gaps_, Axis::U, middleZ());
  }

  void above(bool upward) {
    Nearest nearest(upward ? box_.top : box_.bottom, upward);
    for (const Girt& girt : wall_.girts) {
      const GirtReach reach = girtReach(girt, layout_.face.width);
      const bool passes = reach.from < box_.right && reach.to > box_.left;
      if (passes && !isLeftOut(girt.id)) nearest.look(girtFace(girt, job_.members).row, namedBy("name.girt", girt.id));
    }
    if (!nearest.found()) {
      const WallFace& face = layout_.face;
      nearest.look(
          upward ? face.steel.heightAt(middleU(), Beside::Right) : face.concrete.heightAt(middleU(), Beside::Right),
          {upward ? "name.steel-line" : "name.concrete"});
    }
    nearest.put(gaps_, Axis::Z, middleU());
  }

  const Job& job_;
  const Wall& wall_;
  const WallLayout& layout_;
  const FaceBox& box_;
  const std::vector<std::string>& leftOut_;
  std::vector<NeighbourGap> gaps_;
};

}  // namespace

std::vector<NeighbourGap> neighbourGaps(const Job& job, const Plan& plan, std::size_t wall, const FaceBox& box,
                                        const std::vector<std::string>& leftOut) {
  const WallLayout& layout = plan.walls.at(wall)->layout;
  if (layout.face.width <= Length()) return {};
  return Looking(job, job.walls.at(wall), layout, box, leftOut).gaps();
}

}  // namespace ribwright
