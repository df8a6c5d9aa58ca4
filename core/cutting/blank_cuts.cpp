#include "core/cutting/blank_cuts.h"

#include <algorithm>
#include <stdexcept>

#include "core/job/by_id.h"

namespace ribwright {
namespace {

using Along = BlankCut::Along;

// From the wall face into the blank.
class Placer {
 public:
  Placer(const Profile& profile, const WallLayout& layout, const BlankPart& part)
      : part_(part),
        piece_(layout.pieces.at(static_cast<std::size_t>(part.piece.piece))),
        line_(layout.runs.at(static_cast<std::size_t>(piece_.run))
                  .modules.at(static_cast<std::size_t>(piece_.module))
                  .startLine),
        edges_(profile.cover + profile.under - profile.over),
        rightToLeft_(layout.direction.hand == Hand::RightToLeft) {}

  BlankPoint at(const FaceVertex& vertex) const {
    const Length along = rightToLeft_ ? line_ - vertex.u : vertex.u - line_;
    const Length high = vertex.z - piece_.bottom;
    return {part_.turned ? edges_ - along : along, part_.upsideDown ? part_.to - high : part_.from + high};
  }

  std::vector<std::vector<BlankPoint>> rings() const {
    std::vector<std::vector<BlankPoint>> all;
    for (const Ring& ring : piece_.rings) {
      auto& placed = all.emplace_back();
      for (const FaceVertex& vertex : ring) placed.push_back(at(vertex));
    }
    return all;
  }

 private:
  const BlankPart& part_;
  const Piece& piece_;
  Length line_, edges_;
  bool rightToLeft_;
};

// The sides of the ring between its highest corners at the part's left and right that lie on its top.
std::vector<BlankCut> topSides(const PlacedPart& placed, int part) {
  const auto& ring = placed.rings.front();
  const Length end = placed.part.upsideDown ? placed.part.to : placed.part.from;
  const auto corner = [&](Length x) {
    std::size_t found = ring.size();
    for (std::size_t i = 0; i < ring.size(); ++i) {
      if (ring[i].x == x && (found == ring.size() || absolute(ring[i].y - end) > absolute(ring[found].y - end)))
        found = i;
    }
    return found;
  };
  std::size_t from = corner(placed.part.left), to = corner(placed.part.right);
  if (placed.part.upsideDown) std::swap(from, to);  // clockwise still: from right to left along its top
  std::vector<BlankCut> cuts;
  for (std::size_t i = from; i != to; i = (i + 1) % ring.size()) {
    BlankCut cut{Along::Slope, part, ring[i], ring[(i + 1) % ring.size()]};
    if (cut.to.x < cut.from.x) std::swap(cut.from, cut.to);
    cuts.push_back(cut);
  }
  return cuts;
}

class BlankCutter {
 public:
  BlankCutter(const Blank& blank, BlankCuts& made) : blank_(blank), made_(made) {}

  void cutAll() {
    for (std::size_t i = 0; i < made_.parts.size(); ++i) cut(made_.parts[i], static_cast<int>(i));
  }

 private:
  void cut(const PlacedPart& placed, int part) {
    const BlankPart& room = placed.part;
    if (blank_.way == Blank::Way::RakePair) return cutAlongRake(placed, part);
    if (room.left > made_.left) lengthwise(room.left, room, part);
    if (room.right < made_.right) lengthwise(room.right, room, part);
    if (room.from > Length()) across(room.from, room, part);
    if (room.to < made_.length) across(room.to, room, part);
  }

  // A side ends where the part's own slope meets it: beyond lies the other part.
  void cutAlongRake(const PlacedPart& placed, int part) {
    const auto sides = topSides(placed, part);
    made_.cuts.insert(made_.cuts.end(), sides.begin(), sides.end());
    for (const Length x : {placed.part.left, placed.part.right}) {
      if (x == made_.left || x == made_.right) continue;
      BlankPart own = placed.part;
      for (const BlankCut& side : sides) {
        for (const BlankPoint& end : {side.from, side.to}) {
          if (end.x == x) (own.upsideDown ? own.from : own.to) = end.y;
        }
      }
      lengthwise(x, own, part);
    }
  }

  void lengthwise(Length x, const BlankPart& room, int part) {
    made_.cuts.push_back({Along::Lengthwise, part, {x, room.from}, {x, room.to}});
  }
  void across(Length y, const BlankPart& room, int part) {
    made_.cuts.push_back({Along::Across, part, {room.left, y}, {room.right, y}});
  }

  const Blank& blank_;
  BlankCuts& made_;
};

}  // namespace

BlankCuts blankCuts(const Job& job, const std::vector<const WallLayout*>& layouts, const Blank& blank, Length bought) {
  if (bought < blank.length) throw std::invalid_argument("a sheet is bought shorter than its blank");
  const Profile* profile = byId(job.profiles, blank.sheet.profile);
  if (!profile) throw std::invalid_argument("no profile " + blank.sheet.profile);
  BlankCuts made;
  made.left = -profile->over;
  made.right = profile->cover + profile->under;
  made.length = bought;
  for (BlankPart part : blank.parts) {
    if (part.upsideDown && part.to == blank.length) {
      part.from += bought - blank.length;
      part.to = bought;
    }
    const WallLayout& layout = *layouts.at(static_cast<std::size_t>(part.piece.wall));
    made.parts.push_back({part, Placer(*profile, layout, part).rings()});
  }
  BlankCutter(blank, made).cutAll();
  return made;
}

}  // namespace ribwright
