// A building of 60 ft by 40 as its plans would state it, and the shipped trim.
#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include "core/job/trim_file.h"
#include "core/layout/lay_out_wall.h"
#include "core/takeoff/trim_pieces.h"
#include "walls_by_hand.h"

namespace ribwright {

using Kind = Opening::Kind;
using Lengths = std::vector<Length>;
using Where = TrimRule::Where;

inline Length feet(std::int64_t whole, std::int64_t inches = 0, std::int64_t sixtyFourths = 0) {
  return Length::feet(whole, inches, sixtyFourths);
}

inline Opening openingOf(const std::string& id, Kind kind, Length fromLeft, Length width, Length height, Length sill) {
  Opening opening;
  opening.id = id;
  opening.kind = kind;
  opening.place.distance = fromLeft;
  opening.width = width;
  opening.height = height;
  opening.sill = sill;
  return opening;
}

inline Job takingShippedTrim(Job job) {
  job.trims = shippedTrim(UnitSystem::FeetInches).trims;
  job.trimRules = shippedTrim(UnitSystem::FeetInches).rules;
  for (Trim& trim : job.trims) trim.colour = "white";
  return job;
}

// Walls A (60 ft) to D, eaves 12 ft, a ridge 6 ft above them over the middle of B and D: sheets end 1/2 in below the
// steel and 1-3/4 in below the concrete. Each hangs left to right.
inline Job workshop() {
  Job job = jobOf({{"A", "sand"}, {"B", "sand"}, {"C", "sand"}, {"D", "sand"}});
  const Length none, long_ = Length::feet(60), wide = Length::feet(40);
  job.building.outline = {{none, none}, {long_, none}, {long_, wide}, {none, wide}};
  job.building.roof.kind = Roof::Kind::Gable;
  job.building.roof.eave = Length::feet(12);
  job.building.roof.ridgeHeight = Length::feet(18);
  for (Wall& wall : job.walls) wall.hang = Hang::LeftToRight;
  return takingShippedTrim(std::move(job));
}

class Trimmed {
 public:
  explicit Trimmed(const Job& job) {
    for (const Wall& wall : job.walls) laid_.push_back(layOutWall(job, wall).value());
    for (const WallLayout& layout : laid_) layouts_.push_back(&layout);
    places_ = trimPlaces(job, layouts_);
    takeoff_ = trimTakeoff(job, layouts_);
  }

  const TrimTakeoff& takeoff() const { return takeoff_; }
  const std::vector<TrimPlace>& places() const { return places_; }
  std::vector<TrimPlace> places(Where where, const std::string& wall) const {
    std::vector<TrimPlace> found;
    std::copy_if(places_.begin(), places_.end(), std::back_inserter(found),
                 [&](const TrimPlace& place) { return place.where == where && place.wall == wall; });
    return found;
  }
  Lengths sizes(Where where, const std::string& wall) const {
    Lengths sizes;
    for (const TrimPlace& place : places(where, wall)) sizes.push_back(place.size);
    return sizes;
  }
  // What is set on one opening, or one wall, in setting order.
  std::vector<std::string> ids(const std::string& startingWith) const {
    std::vector<std::string> ids;
    for (const TrimPiece& piece : takeoff_.pieces) {
      if (piece.id.starts_with(startingWith)) ids.push_back(piece.id);
    }
    return ids;
  }
  const TrimPiece& piece(const std::string& id) const {
    for (const TrimPiece& piece : takeoff_.pieces) {
      if (piece.id == id) return piece;
    }
    throw std::invalid_argument("no piece " + id);
  }
  Length length(const std::string& id) const { return piece(id).length; }

 private:
  std::vector<WallLayout> laid_;
  std::vector<const WallLayout*> layouts_;
  std::vector<TrimPlace> places_;
  TrimTakeoff takeoff_;
};

}  // namespace ribwright
