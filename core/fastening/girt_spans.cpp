#include "core/fastening/girt_spans.h"

#include <algorithm>

#include "core/job/by_id.h"

namespace ribwright {
namespace {

std::vector<GirtPart> partsOf(const WallSupports& supports) {
  std::vector<GirtPart> parts;
  for (const SupportRow& row : supports.rows) {
    if (row.kind != SupportKind::Girt) continue;
    for (const Stretch& stretch : row.stretches) {
      if (stretch.steel == Stretch::Steel::Own) parts.push_back({stretch.from, stretch.to, stretch.girts});
    }
  }
  return parts;
}

bool share(const GirtPart& a, const GirtPart& b) {
  return std::any_of(a.girts.begin(), a.girts.end(), [&](std::int32_t girt) {
    return std::find(b.girts.begin(), b.girts.end(), girt) != b.girts.end();
  });
}

// The part that one goes on into; null: it ends there.
const GirtPart* nextOf(const GirtPart& part, const std::vector<GirtPart>& all) {
  const auto next = std::find_if(all.begin(), all.end(), [&](const GirtPart& other) {
    return other.from == part.to && other.to > other.from && share(part, other);
  });
  return next == all.end() ? nullptr : &*next;
}

std::vector<ContinuousGirt> joined(const std::vector<GirtPart>& parts) {
  std::vector<ContinuousGirt> all;
  for (const GirtPart& first : parts) {
    const bool goesOn = std::any_of(parts.begin(), parts.end(), [&](const GirtPart& before) {
      return before.to == first.from && share(before, first);
    });
    if (goesOn) continue;
    ContinuousGirt girt;
    for (const GirtPart* part = &first; part; part = nextOf(*part, parts)) girt.parts.push_back(*part);
    all.push_back(std::move(girt));
  }
  return all;
}

// Finds what holds a wall's girts.
class Holds {
 public:
  Holds(const Wall& wall, const WallLayout& layout, const WallSupports& supports)
      : wall_(wall), layout_(layout), supports_(supports), near_(std::max(endsAtColumn, half(wall.columns.flange))) {}

  std::vector<GirtHold> of(const ContinuousGirt& girt) const {
    std::vector<GirtHold> holds = columnsOfGirt(girt.parts.front().from, girt.parts.back().to);
    addJamb(holds, girt.parts.front().from, false);
    addJamb(holds, girt.parts.back().to, true);
    std::sort(holds.begin(), holds.end(), [](const GirtHold& a, const GirtHold& b) { return a.u < b.u; });
    return holds;
  }

 private:
  std::vector<GirtHold> columnsOfGirt(Length from, Length to) const {
    std::vector<GirtHold> holds;
    std::int32_t number = 0;
    for (const Length u : columnsOf(wall_.columns)) {
      ++number;
      if (u >= from - near_ && u <= to + near_) holds.push_back({u, number});
    }
    return holds;
  }

  void addJamb(std::vector<GirtHold>& holds, Length end, bool left) const {
    const auto jamb = std::find_if(supports_.jambs.begin(), supports_.jambs.end(), [&](const JambFlange& one) {
      return one.left == left && (left ? one.from : one.to) == end;
    });
    if (jamb == supports_.jambs.end() || !standsOnFloor(*jamb)) return;
    const bool atColumn = std::any_of(holds.begin(), holds.end(),
                                      [&](const GirtHold& hold) { return absolute(hold.u - jamb->edge) <= near_; });
    if (!atColumn) holds.push_back({jamb->edge, 0});
  }

  bool standsOnFloor(const JambFlange& jamb) const {
    const CutRegion* cut = byId(layout_.cuts, jamb.opening);
    return cut && cut->reachesFloor;
  }

  const Wall& wall_;
  const WallLayout& layout_;
  const WallSupports& supports_;
  Length near_;
};

// Flush girts end at each of their holds.
void append(std::vector<ContinuousGirt>& all, ContinuousGirt girt, GirtSetting setting) {
  if (girt.holds.size() < 2) return;
  if (setting == GirtSetting::Bypass) {
    all.push_back(std::move(girt));
    return;
  }
  for (std::size_t i = 0; i + 1 < girt.holds.size(); ++i)
    all.push_back({girt.parts, {girt.holds[i], girt.holds[i + 1]}});
}

}  // namespace

std::int32_t ContinuousGirt::girtAt(Length u) const {
  const auto part = std::find_if(parts.begin(), parts.end(), [&](const GirtPart& one) { return u <= one.to; });
  return (part == parts.end() ? parts.back() : *part).girts.front();
}

std::vector<ContinuousGirt> continuousGirts(const Wall& wall, const WallLayout& layout, const WallSupports& supports) {
  std::vector<ContinuousGirt> all;
  if (columnsOf(wall.columns).empty()) return all;
  const Holds holds(wall, layout, supports);
  for (ContinuousGirt& girt : joined(partsOf(supports))) {
    girt.holds = holds.of(girt);
    append(all, std::move(girt), wall.girtSetting);
  }
  return all;
}

}  // namespace ribwright
