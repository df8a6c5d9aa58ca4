#include "tests/fuzz/stated_places.h"

#include <algorithm>

namespace ribwright::fuzz {
namespace {

bool inPlaceUnlessStated(HoleKind kind) {
  return kind != HoleKind::Base && kind != HoleKind::Eave && kind != HoleKind::Girt;
}

// Of two stretches that meet there the one farther along the hanging direction.
int stretchAt(const SupportRow& row, Nm u, Hand hand) {
  int found = -1;
  for (std::size_t i = 0; i < row.stretches.size(); ++i) {
    const Stretch& stretch = row.stretches[i];
    if (nm(stretch.from) > u || u > nm(stretch.to)) continue;
    if (found < 0 || hand == Hand::LeftToRight) found = static_cast<int>(i);
  }
  return found;
}

class RowPlaces {
 public:
  RowPlaces(const ScrewedWall& wall, const ScrewedRun& run, int row)
      : wall_(wall), run_(run), index_(row), row_(wall.holes.supports.rows[static_cast<std::size_t>(row)]) {}

  void add(std::vector<AskedPlace>& places) const {
    for (const ScrewedModule& module : run_.modules) {
      std::vector<AskedPlace> own;
      add(module, row_.kind, own);
      if (row_.kind == SupportKind::Girt && !module.lapRows.empty()) add(module, SupportKind::EndLap, own);
      std::stable_sort(own.begin(), own.end(), [](const AskedPlace& a, const AskedPlace& b) { return a.x < b.x; });
      places.insert(places.end(), own.begin(), own.end());
    }
  }

 private:
  void add(const ScrewedModule& module, SupportKind kind, std::vector<AskedPlace>& places) const {
    const auto asked = run_.asked(kind, module.corner);
    if (!asked) return;
    const std::set<Length> offsets(asked->row->offsets.begin(), asked->row->offsets.end());
    for (const Length x : offsets) {
      if (x >= run_.profile->cover) continue;
      AskedPlace place;
      place.u = run_.along.u(module.line + nm(x));
      place.stretch = stretchAt(row_, place.u, run_.along.hand);
      if (place.stretch < 0) continue;
      const Stretch& stretch = row_.stretches[static_cast<std::size_t>(place.stretch)];
      const auto lap = row_.kind == SupportKind::Girt ? lapOn(wall_, stretch, module) : std::nullopt;
      if (lap.has_value() != (kind == SupportKind::EndLap)) continue;
      place.kind = holeKind(kind);
      place.row = index_;
      place.screw = asked->screw;
      place.run = run_.index;
      place.module = module.index;
      place.z = lap ? *lap : wall_.rowAt(row_, stretch, place.u);
      place.x = nm(x);
      place.inPlace = asked->row->drilledInPlace.value_or(inPlaceUnlessStated(place.kind));
      place.corner = module.corner;
      places.push_back(place);
    }
  }

  const ScrewedWall& wall_;
  const ScrewedRun& run_;
  int index_;
  const SupportRow& row_;
};

}  // namespace

HoleKind holeKind(SupportKind kind) {
  switch (kind) {
    case SupportKind::Base:
      return HoleKind::Base;
    case SupportKind::Eave:
      return HoleKind::Eave;
    case SupportKind::Rake:
      return HoleKind::Rake;
    case SupportKind::Head:
      return HoleKind::Head;
    case SupportKind::Sill:
      return HoleKind::Sill;
    case SupportKind::Jamb:
      return HoleKind::Jamb;
    case SupportKind::EndLap:
      return HoleKind::EndLap;
    case SupportKind::Girt:
      break;
  }
  return HoleKind::Girt;
}

std::optional<Nm> lapOn(const ScrewedWall& wall, const Stretch& stretch, const ScrewedModule& module) {
  for (const std::int32_t girt : stretch.girts) {
    const Nm row = statedGirtFace(wall.job, wall.wall.girts[static_cast<std::size_t>(girt)]).row;
    if (module.lapRows.contains(row)) return row;
  }
  return std::nullopt;
}

int rankOf(HoleKind kind) {
  switch (kind) {
    case HoleKind::Base:
      return 0;
    case HoleKind::Eave:
    case HoleKind::Rake:
      return 1;
    case HoleKind::Girt:
    case HoleKind::EndLap:
      return 2;
    case HoleKind::Head:
    case HoleKind::Sill:
      return 3;
    case HoleKind::Jamb:
      return 4;
    case HoleKind::Stitch:
      break;
  }
  return 5;
}

std::vector<AskedPlace> steelPlaces(const ScrewedWall& wall) {
  std::vector<AskedPlace> places;
  const auto& rows = wall.holes.supports.rows;
  for (int rank = 0; rank <= 3; ++rank) {
    for (const ScrewedRun& run : wall.runs) {
      for (std::size_t row = 0; row < rows.size(); ++row) {
        if (run.pattern && rankOf(holeKind(rows[row].kind)) == rank) {
          RowPlaces(wall, run, static_cast<int>(row)).add(places);
        }
      }
    }
  }
  return places;
}

}  // namespace ribwright::fuzz
