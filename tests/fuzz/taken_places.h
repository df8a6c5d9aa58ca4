// Holes that are taken already, and what has been found and not been asked for yet.
#pragma once

#include <map>
#include <unordered_map>
#include <vector>

#include "tests/fuzz/exact_distance.h"
#include "tests/fuzz/stated_places.h"

namespace ribwright::fuzz {

// A hole as it was taken, beside the sheets that it goes through.
struct Taken {
  Nm u = 0, z = 0, diameter = 0;
  HoleKind kind = HoleKind::Girt;
  int row = 0;
};

// Holes of each sheet by height, to find those near a place.
class TakenHoles {
 public:
  void add(const Taken& hole, const std::vector<int>& pieces) {
    for (const int piece : pieces) holes_[key(piece, hole.z / kBucket)].push_back(hole);
  }

  // Those nearer than the limit.
  std::vector<Taken> near(const Taken& place, const std::vector<int>& pieces) const {
    std::vector<Taken> found;
    for (const int piece : pieces) {
      for (Nm bucket = place.z / kBucket - 1; bucket <= place.z / kBucket + 1; ++bucket) {
        const auto holes = holes_.find(key(piece, bucket));
        if (holes == holes_.end()) continue;
        for (const Taken& hole : holes->second) {
          const Nm limit = std::max(3 * std::max(hole.diameter, place.diameter), kInch);
          if (squareOf(hole.u - place.u, hole.z - place.z) < Int128(limit) * limit) found.push_back(hole);
        }
      }
    }
    return found;
  }

 private:
  static constexpr Nm kBucket = 50'000'000;
  static std::int64_t key(int piece, Nm bucket) { return std::int64_t(piece) * 1'000'000 + bucket + 500'000; }
  std::unordered_map<std::int64_t, std::vector<Taken>> holes_;
};

// What has been found, by kind and place along the wall; each is used up once.
template <class Found>
class Unused {
 public:
  explicit Unused(const std::vector<Found>& all) : all_(all), used_(all.size(), false) {
    for (std::size_t i = 0; i < all.size(); ++i) byPlace_[{all[i].kind, all[i].u.nanometres()}].push_back(i);
  }

  template <class Fits>
  const Found* use(const AskedPlace& place, const Fits& fits) {
    const auto here = byPlace_.find({place.kind, place.u});
    if (here == byPlace_.end()) return nullptr;
    for (const std::size_t i : here->second) {
      const Found& found = all_[i];
      const Nm z = found.z.nanometres(), off = z > place.z ? z - place.z : place.z - z;
      const bool same = found.run == place.run && found.row == place.row && found.stretch == place.stretch &&
                        found.screw == place.screw && off <= place.slack;
      if (used_[i] || !same || !fits(found)) continue;
      used_[i] = true;
      return &found;
    }
    return nullptr;
  }

  template <class Fits>
  const Found* useFirst(const Fits& fits) {
    for (std::size_t i = 0; i < all_.size(); ++i) {
      if (used_[i] || !fits(all_[i])) continue;
      used_[i] = true;
      return &all_[i];
    }
    return nullptr;
  }

  template <class Say>
  void eachLeft(const Say& say) const {
    for (std::size_t i = 0; i < all_.size(); ++i) {
      if (!used_[i]) say(all_[i]);
    }
  }

 private:
  const std::vector<Found>& all_;
  std::vector<bool> used_;
  std::map<std::pair<HoleKind, Nm>, std::vector<std::size_t>> byPlace_;
};

}  // namespace ribwright::fuzz
