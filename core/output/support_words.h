// What a hole is screwed to, in plain words, as the tables say it.
#pragma once

#include <string>

#include "core/fastening/holes.h"

namespace ribwright {

// "base", "eave", "rake", "girt g1", of nested girts "girt g1+g2", "end lap g2", "head W1", "sill W1", "stitch". Where
// a column's or a jamb's flange takes a girt's hole, that: "column 2", "left jamb W1"; of a jamb's own row "left jamb
// W1" too.
std::string supportWords(const WallSupports& supports, const Hole& hole);

}  // namespace ribwright
