#include "tests/fuzz/screwed_wall.h"

#include <algorithm>

namespace ribwright::fuzz {
namespace {

bool reaches(Nm from, Nm to, Nm zoneFrom, Nm zoneTo) { return std::max(from, zoneFrom) < std::min(to, zoneTo); }

std::set<Nm> lapRowsOf(const Wall& wall, const WallLayout& layout, int run, int module) {
  const SheetRun& sheets = layout.runs[static_cast<std::size_t>(run)];
  std::set<Nm> rows;
  if (!sheets.modules[static_cast<std::size_t>(module)].tiered) return rows;
  for (const Piece& piece : layout.pieces) {
    if (piece.run != run || piece.module != module) continue;
    for (const Length end : sheets.lapEnds) {
      if (end == piece.bottom && piece.tier > 0) rows.insert(nm(end + wall.endLaps.endBelowRow));
    }
  }
  return rows;
}

template <class Named>
const Named* statedById(const std::vector<Named>& all, const std::string& id) {
  const auto found = std::find_if(all.begin(), all.end(), [&](const Named& one) { return one.id == id; });
  return found == all.end() ? nullptr : &*found;
}

}  // namespace

int screwIndex(const Job& job, const std::string& id) {
  const Screw* screw = id.empty() ? nullptr : statedById(job.screws, id);
  return screw ? static_cast<int>(screw - job.screws.data()) : -1;
}

const Member* memberOf(const Job& job, const std::string& id) {
  return id.empty() ? nullptr : statedById(job.members, id);
}

std::int64_t spacesOver(Nm length, Nm limit) {
  if (length <= 0) return 0;
  return length / limit + (length % limit == 0 ? 0 : 1);
}

// A zed's or cee's web, or a hat's or wide flange's near edge, is the line from which its outer flange turns up or
// down.
GirtFace statedGirtFace(const Job& job, const Girt& girt) {
  const Nm z = nm(girt.height);
  const Member* member = memberOf(job, girt.member);
  if (!member) return {z, z, z, false};
  const bool up = girt.flange == Girt::Flange::Up;
  const Nm flange = nm(member->flange), bend = nm(member->bendRadius) + nm(member->thickness);
  Nm bottom = z;
  if (girt.typedBy == Girt::TypedBy::Top) bottom = z - flange;
  if (girt.typedBy == Girt::TypedBy::Centre) bottom = z - halved(flange);
  if (girt.typedBy == Girt::TypedBy::WebLine && !up) bottom = z - flange;
  const Nm atHeel = member->shape == Member::Shape::WideFlange ? 0 : bend;
  const Nm atEdge = member->shape == Member::Shape::Hat || member->lip > Length() ? bend : 0;
  const Nm low = bottom + (up ? atHeel : atEdge), high = bottom + flange - (up ? atEdge : atHeel);
  return {low, high, low + halved(high - low), true};
}

FrameFace statedFrame(const Job& job, const FrameSteel& frame) {
  const Member* member = memberOf(job, frame.member);
  if (!member) return {nm(frame.face), nm(frame.bend), 0};
  const Nm bend = nm(member->bendRadius) + nm(member->thickness);
  const bool bent = member->shape == Member::Shape::Hat || member->lip > Length();
  return {nm(member->flange), member->shape == Member::Shape::WideFlange ? 0 : bend, bent ? bend : 0};
}

ScrewedRun::ScrewedRun(const Job& theJob, const Wall& wall, const WallLayout& layout, int theIndex,
                       const std::optional<Nm>& zone)
    : index(theIndex),
      run(&layout.runs[static_cast<std::size_t>(theIndex)]),
      along{layout.direction.hand, nm(run->left), nm(run->right)},
      profile(profileOf(theJob, wall, run->band)),
      metal(layout, theIndex),
      job(&theJob) {
  const Band& band = wall.bands[static_cast<std::size_t>(run->band)];
  patternId = band.pattern.empty() ? wall.pattern : band.pattern;
  const ScrewPattern* named = patternId.empty() ? nullptr : statedById(theJob.patterns, patternId);
  otherProfile = named && !named->profile.empty() && named->profile != band.profile;
  pattern = otherProfile ? nullptr : named;
  const Nm width = nm(layout.face.width);
  for (const Module& stated : run->modules) {
    ScrewedModule module;
    module.index = static_cast<int>(modules.size());
    const Nm a = nm(stated.startLine), b = nm(stated.leadLine);
    module.line = along.t(a);
    module.next = along.t(b);
    const Nm left = along.t(nm(stated.metalLeft)), right = along.t(nm(stated.metalRight));
    module.metalFrom = std::min(left, right);
    module.metalTo = std::max(left, right);
    const Nm from = std::min(a, b), to = std::max(a, b), corner = zone.value_or(0);
    module.corner = reaches(from, to, 0, corner) || reaches(from, to, width - corner, width);
    module.lapRows = lapRowsOf(wall, layout, index, module.index);
    modules.push_back(module);
  }
}

std::optional<Asked> ScrewedRun::asked(SupportKind kind, bool corner) const {
  if (!pattern) return std::nullopt;
  for (const Zone zone : {Zone::Corner, Zone::Field}) {
    if (zone == Zone::Corner && !corner) continue;
    for (const PatternRow& row : pattern->rows) {
      if (row.support != kind || row.zone != zone) continue;
      const int screw = screwIndex(*job, row.screw);
      if (screw < 0) return std::nullopt;
      return Asked{&row, screw};
    }
  }
  return std::nullopt;
}

ScrewedWall::ScrewedWall(const Job& theJob, const Wall& theWall, const WallPlan& plan)
    : job(theJob), wall(theWall), layout(plan.layout), holes(plan.holes), face(statedFace(theJob, theWall)) {
  zone = statedZone(job, wall, face);
  for (std::size_t i = 0; i < layout.runs.size(); ++i) runs.emplace_back(job, wall, layout, static_cast<int>(i), zone);
}

Nm ScrewedWall::fromEdge(int index) const {
  const Nm three = 3 * nm(screw(index).diameter);
  return three / 2 + three % 2;
}

const Segment& ScrewedWall::steelOver(const Stretch& stretch, Nm u) const {
  return face.steel.segmentAt(u, u >= nm(stretch.to) ? Side::Left : Side::Right);
}

Nm ScrewedWall::rowAt(const SupportRow& row, const Stretch& stretch, Nm u) const {
  return nm(stretch.row) + (row.alongTop ? steelOver(stretch, u).heightAt(u) : 0);
}

}  // namespace ribwright::fuzz
