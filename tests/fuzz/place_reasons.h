// Why a place cannot take a screw, whatever other screws there are.
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "tests/fuzz/stated_places.h"

namespace ribwright::fuzz {

class PlaceReasons {
 public:
  explicit PlaceReasons(const ScrewedWall& wall) : wall_(wall) {}

  // The first reason that holds: too near an edge, off a flat, off the steel. `through`: the pieces that it would go
  // through.
  std::optional<Refusal::Why> refused(const AskedPlace& place, const std::vector<int>& through);

 private:
  const Spans& seatsOf(const ScrewedRun& run, int screw);
  bool offSteel(const AskedPlace& place) const;

  const ScrewedWall& wall_;
  std::map<std::pair<const Profile*, int>, Spans> seats_;  // screw -1: the crowns
};

}  // namespace ribwright::fuzz
