// Parts of the building that is edited in the tests, and where they stand.
#pragma once

#include "core/drawing/drawing.h"
#include "core/editing/opening_edits.h"
#include "tests/core/editing/edited_walls.h"

namespace ribwright {

inline const Part w1{Part::Kind::Opening, "A", "W1"}, w2{Part::Kind::Opening, "A", "W2"},
    p1{Part::Kind::Penetration, "A", "P1"}, g1{Part::Kind::Girt, "A", "g1"}, column2{Part::Kind::Column, "A", "2"},
    column3{Part::Kind::Column, "A", "3"};

inline FaceBox boxOn(const Job& job, const std::string& id, std::size_t wall = A) {
  return openingBox(job, job.walls[wall], *byId(job.walls[wall].openings, id)).value();
}

inline Length leftOn(const Job& job, const std::string& id, std::size_t wall = A) { return boxOn(job, id, wall).left; }

}  // namespace ribwright
