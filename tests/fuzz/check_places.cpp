// Completeness: every place that is asked for is taken, refused or merged, in the order in which they are taken; what
// is found beyond that is too much.
#include <algorithm>
#include <map>

#include "tests/fuzz/hole_checker.h"
#include "tests/fuzz/place_reasons.h"
#include "tests/fuzz/screw_rows.h"
#include "tests/fuzz/taken_places.h"

namespace ribwright::fuzz {
namespace {

std::string told(const AskedPlace& p) {
  return "kind " + std::to_string(static_cast<int>(p.kind)) + " run " + std::to_string(p.run) + " row " +
         std::to_string(p.row) + "/" + std::to_string(p.stretch) + " module " + std::to_string(p.module) + " u " +
         std::to_string(p.u) + " z " + std::to_string(p.z) + " x " + std::to_string(p.x);
}

std::string told(const Hole& h) {
  return "kind " + std::to_string(static_cast<int>(h.kind)) + " run " + std::to_string(h.run) + " row " +
         std::to_string(h.row) + "/" + std::to_string(h.stretch) + " u " + std::to_string(nm(h.u)) + " z " +
         std::to_string(nm(h.z)) + " of piece " + std::to_string(h.pieces[0]);
}

std::string told(const Refusal& r) {
  return "why " + std::to_string(static_cast<int>(r.why)) + " kind " + std::to_string(static_cast<int>(r.kind)) +
         " run " + std::to_string(r.run) + " row " + std::to_string(r.row) + "/" + std::to_string(r.stretch) + " u " +
         std::to_string(nm(r.u)) + " z " + std::to_string(nm(r.z)) + " x " + std::to_string(nm(r.x)) + " piece " +
         std::to_string(r.piece);
}

class PlaceCheck {
 public:
  PlaceCheck(const ScrewedWall& wall, Complaints& complaints)
      : wall_(wall),
        complaints_(complaints),
        holes_(wall.holes.holes),
        refusals_(wall.holes.refusals),
        reasons_(wall),
        rows_(wall) {}

  void all() {
    for (const AskedPlace& place : steelPlaces(wall_)) look(place);
    for (const ScrewedRun& run : wall_.runs) lookAtJambs(run);
    for (const ScrewedRun& run : wall_.runs) lookAtLaps(run);
    holes_.eachLeft([&](const Hole& hole) { complaints_.add("nothing asks for the hole " + told(hole)); });
    refusals_.eachLeft([&](const Refusal& r) { complaints_.add("nothing was asked that is refused: " + told(r)); });
    rows_.check(complaints_);
  }

 private:
  const ScrewedRun& runOf(const AskedPlace& place) const { return wall_.runs[static_cast<std::size_t>(place.run)]; }

  void lookAtJambs(const ScrewedRun& run) {
    const JambPlaces jambs = jambPlaces(wall_, run);
    for (const AskedPlace& place : jambs.places) look(place);
    for (const int jamb : jambs.noSeat) {
      const bool said = refusals_.useFirst([&](const Refusal& r) {
        return r.why == Refusal::Why::UnderRib && r.kind == HoleKind::Jamb && r.row == jamb && r.run == run.index;
      });
      complaints_.check(said, "no flat bears on jamb " + std::to_string(jamb) + ", and nothing says so");
    }
  }

  void lookAtLaps(const ScrewedRun& run) {
    const LapLines laps = lapLines(wall_, run);
    if (laps.noCrown) {
      const bool said = refusals_.useFirst([&](const Refusal& r) {
        return r.why == Refusal::Why::NoCrown && r.kind == HoleKind::Stitch && r.run == run.index;
      });
      complaints_.check(said || !laps.noCrownThere, "a lap without a crown, and nothing says so");
    }
    for (const LapLine& lap : laps.lines) {
      for (const Stand& stand : lap.stands) lookAlong(run, lap, stand);
    }
  }

  // Even spaces between the screws that go through the lap already, and the ends of the metal.
  void lookAlong(const ScrewedRun& run, const LapLine& lap, const Stand& stand) {
    std::vector<Nm> stops = throughLap(run.index, lap.later, stand.z);
    rows_.lapStarts(run, lap, stand);
    for (const Nm z : stops) rows_.inLap(z);
    stops.insert(stops.begin(), stand.z.from);
    stops.push_back(stand.z.to);
    for (std::size_t i = 0; i + 1 < stops.size(); ++i) {
      const Nm length = stops[i + 1] - stops[i];
      const bool sloped = (i == 0 && stand.fromSloped) || (i + 2 == stops.size() && stand.toSloped);
      const std::int64_t n = spacesOver(length, nm(*run.pattern->stitchSpacing));
      for (std::int64_t k = 1; k < n; ++k) {
        AskedPlace place;
        place.kind = HoleKind::Stitch;
        place.screw = screwIndex(wall_.job, run.pattern->stitchScrew);
        place.run = run.index;
        place.module = lap.later;
        place.u = lap.u;
        place.z = stops[i] + spaceEnd(length, k, n);
        place.x = run.along.t(lap.u) - run.modules[static_cast<std::size_t>(lap.later)].line;
        place.inPlace = true;
        place.corner = run.modules[static_cast<std::size_t>(lap.later)].corner;
        place.slack = sloped ? 2 : 0;
        look(place);
      }
    }
    rows_.lapEnds();
  }

  // Heights strictly between, rising, of structural holes that go through both modules.
  std::vector<Nm> throughLap(int run, int later, const Span& between) const {
    std::vector<Nm> stops;
    const auto found = laps_.find({run, later});
    if (found == laps_.end()) return stops;
    for (const Nm z : found->second) {
      if (between.from < z && z < between.to) stops.push_back(z);
    }
    std::sort(stops.begin(), stops.end());
    stops.erase(std::unique(stops.begin(), stops.end()), stops.end());
    return stops;
  }

  int ownerOf(const AskedPlace& place, const std::vector<int>& through) const {
    int owner = through.back();
    int tier = -1;
    for (const int index : through) {
      const Piece& piece = wall_.piece(index);
      if (piece.module != place.module || piece.tier <= tier) continue;
      tier = piece.tier;
      owner = index;
    }
    return owner;
  }

  static std::set<int> modulesOf(const ScrewedWall& wall, const std::vector<int>& through) {
    std::set<int> modules;
    for (const int index : through) modules.insert(wall.piece(index).module);
    return modules;
  }

  void look(const AskedPlace& asked) {
    const ScrewedRun& run = runOf(asked);
    const std::vector<int> through = run.metal.through(asked.u, asked.z);
    if (through.empty()) return;
    const std::set<int> modules = modulesOf(wall_, through);
    if (asked.kind == HoleKind::Stitch && modules.size() < 2) return;
    const int owner = ownerOf(asked, through);
    if (const auto why = reasons_.refused(asked, through)) {
      lookForRefusal(asked, *why, owner);
      return;
    }
    const Taken place{asked.u, asked.z, nm(wall_.screw(asked.screw).diameter), asked.kind, asked.row};
    const std::vector<Taken> near = taken_.near(place, through);
    const bool merges = std::any_of(near.begin(), near.end(), [&](const Taken& hole) {
      return rankOf(hole.kind) != rankOf(place.kind) || hole.row != place.row;
    });
    if (near.empty()) {
      lookForHole(asked, through, owner, modules);
    } else if (merges) {
      rows_.add(asked);
    } else {
      lookForRefusal(asked, Refusal::Why::NearHole, owner);
    }
  }

  bool useRefusal(const AskedPlace& asked, Refusal::Why why, int owner) {
    return refusals_.use(asked, [&](const Refusal& r) {
      return r.why == why && r.piece == owner && nm(r.x) == asked.x;
    }) != nullptr;
  }

  void lookForRefusal(const AskedPlace& asked, Refusal::Why why, int owner) {
    complaints_.check(useRefusal(asked, why, owner), "not refused, why " + std::to_string(static_cast<int>(why)) +
                                                         " piece " + std::to_string(owner) + ": " + told(asked));
  }

  void lookForHole(const AskedPlace& asked, std::vector<int> through, int owner, const std::set<int>& modules) {
    const Hole* hole = holes_.use(asked, [&](const Hole& h) { return h.pieces[0] == owner; });
    if (!complaints_.check(hole, "no hole: " + told(asked))) return;
    complaints_.check(hole->inPlace == asked.inPlace, "drilled in place or not: " + told(*hole));
    complaints_.check(hole->corner == asked.corner, "of the corner pattern or not: " + told(*hole));
    const Nm z = nm(hole->z);
    taken_.add({asked.u, z, nm(wall_.screw(asked.screw).diameter), asked.kind, asked.row}, through);
    if (asked.kind == HoleKind::Stitch) {
      rows_.inLap(z);
    } else {
      rows_.add(asked);
      for (const int module : modules) {
        if (modules.contains(module - 1)) laps_[{asked.run, module}].push_back(z);
      }
    }
  }

  const ScrewedWall& wall_;
  Complaints& complaints_;
  Unused<Hole> holes_;
  Unused<Refusal> refusals_;
  PlaceReasons reasons_;
  TakenHoles taken_;
  ScrewRows rows_;
  std::map<std::pair<int, int>, std::vector<Nm>> laps_;  // run, later module: z of structural holes through the lap
};

}  // namespace

void checkPlaces(const ScrewedWall& wall, Complaints& complaints) { PlaceCheck(wall, complaints).all(); }

}  // namespace ribwright::fuzz
