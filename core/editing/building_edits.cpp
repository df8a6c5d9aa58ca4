#include "core/editing/building_edits.h"

#include <algorithm>

#include "core/editing/anchor_places.h"
#include "core/editing/wall_items.h"
#include "core/job/job_file.h"
#include "core/layout/cut_regions.h"
#include "core/layout/wall_face.h"
#include "core/layout/whole_root.h"

namespace ribwright {

namespace {

struct Farthest {
  Length x, y;          // of the box round the outline
  Length nextX, nextY;  // of the corners that stay
};

Farthest farthestOf(const std::vector<PlanPoint>& outline) {
  Farthest far{outline.front().x, outline.front().y, {}, {}};
  for (const PlanPoint& point : outline) {
    far.x = std::max(far.x, point.x);
    far.y = std::max(far.y, point.y);
  }
  const auto next = [&](Length PlanPoint::*at, Length most) {
    std::optional<Length> second;
    for (const PlanPoint& point : outline) {
      if (point.*at < most && (!second || point.*at > *second)) second = point.*at;
    }
    return second.value_or(most);
  };
  far.nextX = next(&PlanPoint::x, far.x);
  far.nextY = next(&PlanPoint::y, far.y);
  return far;
}

PlanPoint nearestOf(const std::vector<PlanPoint>& outline) {
  PlanPoint near = outline.front();
  for (const PlanPoint& point : outline) near = {std::min(near.x, point.x), std::min(near.y, point.y)};
  return near;
}

// Its points keep their share of the wall.
void stretchTop(Wall& wall, Length before, Length after) {
  for (FacePoint& point : wall.top) point.u = scaled(point.u, after.nanometres(), before.nanometres());
}

// What was sound before and is not any more stands in the way.
Outcome<Job> ifLaidOut(const Job& before, Job after) {
  for (std::size_t i = 0; i < after.walls.size(); ++i) {
    const auto face = wallFace(after, after.walls[i]);
    if (!face && wallFace(before, before.walls[i])) return face.faults();
  }
  if (auto faults = faultsOf(after); !faults.empty()) return faults;
  return after;
}

void stretchTops(const Job& before, Job& after) {
  for (std::size_t i = 0; i < after.walls.size(); ++i) {
    const auto was = faceWidth(before, before.walls[i]), is = faceWidth(after, after.walls[i]);
    if (was && is && was.value() > Length() && was.value() != is.value())
      stretchTop(after.walls[i], was.value(), is.value());
  }
}

bool overlaps(const CutRegion& a, const CutRegion& b) {
  return *a.steelLeft < *b.steelRight && *b.steelLeft < *a.steelRight && *a.steelBottom < *b.steelTop &&
         *b.steelBottom < *a.steelTop;
}

void addDisplaced(const Job& job, std::size_t index, std::vector<Displaced>& all) {
  const Wall& wall = job.walls[index];
  const auto face = wallFace(job, wall);
  if (!face) return;
  const std::vector<CutRegion> cuts = cutRegions(job.settings, wall, face.value());
  const auto look = [&](const std::string& id) {
    const CutRegion* cut = byId(cuts, id);
    if (!cut) return all.push_back({index, id, Displaced::Why::ColumnGone, {}});
    if (*cut->steelLeft < Length() || *cut->steelRight > face.value().width)
      return all.push_back({index, id, Displaced::Why::OffWall, {}});
    for (const CutRegion& earlier : cuts) {
      if (&earlier >= cut) return;
      if (overlaps(*cut, earlier)) return all.push_back({index, id, Displaced::Why::Overlaps, earlier.id});
    }
  };
  for (const Opening& opening : wall.openings) look(opening.id);
  for (const Penetration& penetration : wall.penetrations) look(penetration.id);
}

// Where its left jamb is meant to stand: of one whose column is gone from the last column there is.
Length meantLeft(const Job& job, const Wall& wall, const Opening& opening) {
  const auto named = anchoredPlace(job, wall, opening.place);
  if (named) return leftOf(opening.place, opening.width, named.value());
  const std::vector<Length> columns = columnsOf(wall.columns);
  const Length from = columns.empty() ? Length() : columns.back();
  return leftOf(opening.place, opening.width, from + opening.place.distance);
}

Length markBelow(Length at, Length mark) { return mark * wholeTimes(at, mark); }

// Left jambs to try: where it is meant to stand, the corners, and beside everything else with both clearances between.
std::vector<Length> placesToTry(const Job& job, const Opening& opening, Length meant, Length width,
                                const std::vector<CutRegion>& others) {
  const Length mark = tapeMark(job.units), jamb = opening.clearances.jamb.value_or(job.settings.jambClearance);
  std::vector<Length> places{meant, Length(), markBelow(width - opening.width, mark)};
  for (const CutRegion& other : others) {
    places.push_back(roundUp(other.right + jamb, mark));
    places.push_back(markBelow(other.left - jamb - opening.width, mark));
  }
  return places;
}

std::optional<Length> nearestFree(const Job& job, const Opening& opening, Length meant, Length width,
                                  const std::vector<CutRegion>& others) {
  const auto fits = [&](Length left) {
    if (left < Length() || left + opening.width > width) return false;
    return std::none_of(others.begin(), others.end(), [&](const CutRegion& other) {
      return left < *other.steelRight && *other.steelLeft < left + opening.width && opening.sill < *other.steelTop &&
             *other.steelBottom < opening.sill + opening.height;
    });
  };
  std::optional<Length> nearest;
  for (const Length left : placesToTry(job, opening, meant, width, others)) {
    if (fits(left) && (!nearest || absolute(left - meant) < absolute(*nearest - meant))) nearest = left;
  }
  return nearest;
}

}  // namespace

Outcome<BuildingSize> buildingSize(const Job& job) {
  const auto& outline = job.building.outline;
  if (outline.empty()) return Fault{"building.outline", "there is none, only free walls; resize each by itself"};
  const Farthest far = farthestOf(outline);
  const PlanPoint near = nearestOf(outline);
  return BuildingSize{far.x - near.x, far.y - near.y};
}

Outcome<Job> buildingResized(const Job& job, const BuildingSize& size) {
  const auto now = buildingSize(job);
  if (!now) return now.faults();
  Job after = job;
  const Farthest far = farthestOf(job.building.outline);
  const PlanPoint near = nearestOf(job.building.outline);
  const PlanPoint to{near.x + size.length, near.y + size.width};
  std::vector<Fault> faults;
  if (to.x <= far.nextX)
    faults.push_back({"length", "the side would come to or past another corner; write a longer one"});
  if (to.y <= far.nextY)
    faults.push_back({"width", "the side would come to or past another corner; write a wider one"});
  if (!faults.empty()) return faults;
  for (PlanPoint& point : after.building.outline) {
    if (point.x == far.x) point.x = to.x;
    if (point.y == far.y) point.y = to.y;
  }
  stretchTops(job, after);
  return ifLaidOut(job, std::move(after));
}

Outcome<Job> freeWallResized(const Job& job, std::size_t wall, Length width) {
  const Wall& on = job.walls.at(wall);
  const std::string place = "walls." + on.letter;
  if (!on.line && !on.width) return Fault{place, "stands on the building's outline; resize the building"};
  if (width <= Length()) return Fault{place, "a wall is wider than 0; write its width"};
  const auto before = faceWidth(job, on);
  if (!before) return before.faults();
  Job after = job;
  Wall& next = after.walls[wall];
  if (next.width) next.width = width;
  if (next.line) {
    const auto along = [&](Length from, Length to) {
      return from + scaled(to - from, width.nanometres(), before.value().nanometres());
    };
    next.line->to = {along(on.line->from.x, on.line->to.x), along(on.line->from.y, on.line->to.y)};
  }
  stretchTops(job, after);
  return ifLaidOut(job, std::move(after));
}

Outcome<Job> roofSetTo(const Job& job, const Roof& roof) {
  Job after = job;
  after.building.roof = roof;
  return ifLaidOut(job, std::move(after));
}

std::vector<Displaced> displaced(const Job& job) {
  std::vector<Displaced> all;
  for (std::size_t i = 0; i < job.walls.size(); ++i) addDisplaced(job, i, all);
  return all;
}

Outcome<Job> openingPutWhereItFits(const Job& job, std::size_t wall, const std::string& id) {
  const Wall& on = job.walls.at(wall);
  const Opening* opening = byId(on.openings, id);
  if (!opening) return notThere(on, "openings", id);
  const auto face = wallFace(job, on);
  if (!face) return face.faults();
  std::vector<CutRegion> others = cutRegions(job.settings, on, face.value());
  std::erase_if(others, [&](const CutRegion& cut) { return cut.id == id; });
  const Length meant = meantLeft(job, on, *opening);
  const auto left = nearestFree(job, *opening, meant, face.value().width, others);
  if (!left)
    return Fault{itemPlace(on, "openings", id),
                 "there is no room for it on this wall; make it smaller, or take it out"};
  const Length named = anchoredEdge(opening->place, opening->width, *left);
  auto anchor = anchoredAt(job, on, opening->place, named);
  Job after = job;
  Anchor& place = itemToEdit(after.walls[wall].openings, id)->place;
  if (anchor) {
    place = anchor.value();
  } else {
    const Anchor::To to = place.to;
    place = anchorNear(on, named);
    place.to = to;
  }
  return after;
}

}  // namespace ribwright
