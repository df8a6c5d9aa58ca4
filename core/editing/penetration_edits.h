// Edits of a wall's penetrations. Each gives the job as it is afterwards and leaves the one it was given alone.
//
// `wall` is an index into Job::walls. A penetration stays anchored from the same column or corner. A round one stays
// round: its edges all move alike about its centre. Faults: the wall has no such penetration; its column is not there;
// nothing would be left of it.
#pragma once

#include <cstddef>
#include <string>

#include "core/editing/face_box.h"
#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

Outcome<FaceBox> penetrationBox(const Job& job, const Wall& wall, const Penetration& penetration);

// Between two places in any order, under the next id. A round one is as wide as the farther of the two ways between
// them and stands about their middle.
Outcome<Penetration> drawnPenetration(const Job& job, std::size_t wall, Penetration::Shape shape, FacePoint a,
                                      FacePoint b);

// A penetration without an id is given the next one. Fault: its id is taken on this wall.
Outcome<Job> addPenetration(const Job& job, std::size_t wall, Penetration penetration);
// `centre`: u and z of its middle.
Outcome<Job> penetrationMovedTo(const Job& job, std::size_t wall, const std::string& id, FacePoint centre);
Outcome<Job> penetrationEdgeMovedTo(const Job& job, std::size_t wall, const std::string& id, BoxEdge edge,
                                    FacePoint to);
Outcome<Job> penetrationRemoved(const Job& job, std::size_t wall, const std::string& id);

}  // namespace ribwright
