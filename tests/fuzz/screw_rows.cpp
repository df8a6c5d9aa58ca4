#include "tests/fuzz/screw_rows.h"

#include <algorithm>

namespace ribwright::fuzz {
namespace {

constexpr Nm kNoLimit = Nm(1) << 60;

struct Limits {
  Nm atSupports = kNoLimit, atEndLaps = kNoLimit, atSideLaps = kNoLimit;
};

// UFGS 07413 3.1.1.1: 8 in at end laps and at supports, 18 in at side laps; the others say nothing of spacing. The
// pattern's own limit holds beside it.
Limits limitsOf(const ScrewPattern& pattern) {
  Limits limits;
  if (!pattern.spacingApproval.empty()) return limits;
  if (pattern.limits == ScrewPattern::Limits::Ufgs07413) limits = {8 * kInch, 8 * kInch, 18 * kInch};
  const Nm own = nm(pattern.spacingLimit);
  if (own > 0) limits.atSupports = std::min(limits.atSupports, own);
  if (own > 0) limits.atEndLaps = std::min(limits.atEndLaps, own);
  return limits;
}

}  // namespace

void ScrewRows::add(const AskedPlace& place) {
  if (place.kind != HoleKind::Jamb && place.kind != HoleKind::Stitch) rows_[{place.run, place.row}].push_back(place);
}

void ScrewRows::lapStarts(const ScrewedRun& run, const LapLine& lap, const Stand& stand) {
  lap_ = {};
  lap_.kind = lap_.orKind = HoleKind::Stitch;
  lap_.run = run.index;
  lap_.from = stand.z.from;
  lap_.to = stand.z.to;
  lap_.at = lap_.orAt = lap.u;
  lap_.limit = limitsOf(*run.pattern).atSideLaps;
  lap_.slack = stand.fromSloped || stand.toSloped ? 2 : 0;
  lapHoles_ = {stand.z.from, stand.z.to};
}

void ScrewRows::lapEnds() {
  std::sort(lapHoles_.begin(), lapHoles_.end());
  for (std::size_t i = 1; i < lapHoles_.size(); ++i) {
    if (lapHoles_[i] - lapHoles_[i - 1] <= lap_.limit) continue;
    Wide wide = lap_;
    wide.from = lapHoles_[i - 1];
    wide.to = lapHoles_[i];
    wide_.push_back(wide);
  }
}

bool ScrewRows::hasStretchAllAlong(const SupportRow& row, Nm from, Nm to) const {
  Nm reached = from;
  for (const Stretch& stretch : row.stretches) {
    if (nm(stretch.from) <= reached) reached = std::max(reached, nm(stretch.to));
  }
  return reached >= to;
}

// z of the row between two of its places: beside the steel line, else straight from one to the other.
Nm ScrewRows::betweenAt(const SupportRow& row, const AskedPlace& a, const AskedPlace& b, Nm u) const {
  if (!row.alongTop) return Segment{a.u, a.z, b.u, b.z}.heightAt(u);
  const auto stretch = std::find_if(row.stretches.begin(), row.stretches.end(),
                                    [&](const Stretch& s) { return nm(s.from) <= u && u <= nm(s.to); });
  return wall_.rowAt(row, *stretch, u);
}

// Somewhere between them the row has no metal before it, or no steel behind it.
bool ScrewRows::broken(const AskedPlace& a, const AskedPlace& b) const {
  const SupportRow& row = wall_.holes.supports.rows[static_cast<std::size_t>(a.row)];
  if (!hasStretchAllAlong(row, a.u, b.u)) return true;
  const RunMetal& metal = wall_.runs[static_cast<std::size_t>(a.run)].metal;
  std::vector<Nm> ends{a.u, b.u};
  for (const int index : metal.pieces()) {
    for (const Ring& ring : wall_.piece(index).rings) {
      for (const FaceVertex& corner : ring) {
        if (a.u < nm(corner.u) && nm(corner.u) < b.u) ends.push_back(nm(corner.u));
      }
    }
  }
  for (Nm u = a.u + kInch / 4; u < b.u; u += kInch / 4) ends.push_back(u);
  std::sort(ends.begin(), ends.end());
  for (std::size_t i = 1; i < ends.size(); ++i) {
    const Nm u = ends[i - 1] + halved(ends[i] - ends[i - 1]);
    const Nm z = betweenAt(row, a, b, u);
    if (metal.through(u, z).empty() && !metal.nearEdge(u, z, 3)) return true;
  }
  return false;
}

void ScrewRows::lookAt(const std::vector<AskedPlace>& places) {
  const Limits limits = limitsOf(*wall_.runs[static_cast<std::size_t>(places.front().run)].pattern);
  for (std::size_t i = 1; i < places.size(); ++i) {
    const AskedPlace &a = places[i - 1], &b = places[i];
    const bool endLap = a.kind == HoleKind::EndLap || b.kind == HoleKind::EndLap;
    const Nm limit = endLap ? limits.atEndLaps : limits.atSupports;
    if (b.u - a.u <= limit || broken(a, b)) continue;
    wide_.push_back({a.kind, b.kind, a.row, a.run, a.u, b.u, a.z, b.z, limit, 0});
  }
}

bool ScrewRows::fits(const Wide& wide, const WideSpace& found) const {
  const auto near = [&](Length length, Nm stated) {
    const Nm off = nm(length) - stated;
    return -wide.slack <= off && off <= wide.slack;
  };
  return (found.kind == wide.kind || found.kind == wide.orKind) && found.row == wide.row && found.run == wide.run &&
         near(found.from, wide.from) && near(found.to, wide.to) && nm(found.limit) == wide.limit &&
         (nm(found.at) == wide.at || nm(found.at) == wide.orAt);
}

void ScrewRows::check(Complaints& complaints) {
  for (auto& [key, places] : rows_) {
    std::stable_sort(places.begin(), places.end(), [](const AskedPlace& a, const AskedPlace& b) { return a.u < b.u; });
    lookAt(places);
  }
  std::vector<WideSpace> left = wall_.holes.wideSpaces;
  for (const Wide& wide : wide_) {
    const auto found = std::find_if(left.begin(), left.end(), [&](const WideSpace& w) { return fits(wide, w); });
    const std::string place = "kind " + std::to_string(static_cast<int>(wide.kind)) + " run " +
                              std::to_string(wide.run) + " row " + std::to_string(wide.row) + " from " +
                              std::to_string(wide.from) + " to " + std::to_string(wide.to) + " at " +
                              std::to_string(wide.at);
    if (complaints.check(found != left.end(), "a wide space of which nothing is said: " + place)) left.erase(found);
  }
  for (const WideSpace& space : left) {
    complaints.add("no wide space: kind " + std::to_string(static_cast<int>(space.kind)) + " run " +
                   std::to_string(space.run) + " row " + std::to_string(space.row) + " from " +
                   std::to_string(nm(space.from)) + " to " + std::to_string(nm(space.to)) + " at " +
                   std::to_string(nm(space.at)) + " limit " + std::to_string(nm(space.limit)));
  }
}

}  // namespace ribwright::fuzz
