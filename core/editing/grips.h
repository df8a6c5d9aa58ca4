// What can be taken hold of on a wall, and the job when it is dragged to another place.
//
// A drag is reckoned from where the grip stood in the job that it was taken in: give that job each time, not the one
// that the drag has made so far. A place that is where the grip stands gives the same job.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/editing/column_edits.h"
#include "core/editing/face_box.h"
#include "core/job/job.h"
#include "core/plan/plan.h"
#include "core/units/outcome.h"
#include "core/words/words.h"

namespace ribwright {

struct Grip {
  enum class Kind {
    Opening,
    OpeningEdge,
    Penetration,
    PenetrationEdge,
    Girt,
    GirtEnd,
    Column,
    TopPoint,
    BaseStep,
    ModuleLine,
    Band,
    Joint,
  };
  Kind kind = Kind::Opening;
  std::string id;         // of an opening, penetration or girt
  std::size_t index = 0;  // column: 1, 2 ...; else into Wall::top, Base::steps, WallLayout::runs, Wall::bands or
                          // Wall::expansionJoints
  BoxEdge edge;           // of an opening or penetration; of a girt's end: across alone
  FacePoint at;
  bool alongU = false, alongZ = false;  // which way it can be taken
  bool operator==(const Grip&) const = default;
};

// Of the chosen parts that stand on this wall: openings and penetrations whole, by edges and corners (a round one by
// its four sides); girts and their ends; columns. Of the wall's face, where that is chosen: points of its stated top,
// steps of its base, first module lines, limits of its bands, expansion joints. What points nowhere has no grip, and
// nothing has on a wall that is not laid out.
std::vector<Grip> gripsOf(const Job& job, const Plan& plan, std::size_t wall, const std::vector<Part>& parts);

// The grip taken to a place; what does not lie along a way that it can be taken counts for nothing. A girt's end taken
// to its corner runs on to it. `anchored`: what becomes of what is anchored from a column that is dragged. Faults: as
// the edits of each kind give them; what it is of is not there.
Outcome<Job> dragged(const Job& job, const Plan& plan, std::size_t wall, const Grip& grip, FacePoint to,
                     Anchored anchored = Anchored::Follow);

// "Move W1 by 4"", "Make W1 4' 0" × 3' 0"": what dragging it there is called among the edits.
std::string nameOfDrag(const Job& job, std::size_t wall, const Grip& grip, FacePoint to, const Words& words);

// "left jamb of W1", "girt g2".
Phrase nameOf(const Grip& grip);

}  // namespace ribwright
