#include "core/layout/roof_line.h"

namespace ribwright {

namespace {

struct RoofHeights {
  Length ridgeAt, firstEave, ridge, farEave;  // single slope: ridgeAt = 0 and ridge = firstEave
};

bool isRectangleAlongAxes(const std::vector<PlanPoint>& p) {
  return p.size() == 4 && p[0].y == p[1].y && p[1].x == p[2].x && p[2].y == p[3].y && p[3].x == p[0].x &&
         p[0].x < p[1].x && p[1].y < p[2].y;
}

Outcome<RoofHeights> heightsOf(const Roof& roof, Length span) {
  RoofHeights heights;
  heights.firstEave = roof.eave;
  if (roof.kind == Roof::Kind::SingleSlope) {
    heights.ridge = roof.eave;
    if (roof.farEave) {
      heights.farEave = *roof.farEave;
    } else if (roof.slope) {
      heights.farEave = roof.eave + riseOver(*roof.slope, span);
    } else {
      return Fault{"building.roof", "a single slope needs far_eave or slope"};
    }
    return heights;
  }
  heights.ridgeAt = roof.ridgeAt ? *roof.ridgeAt : half(span);
  if (heights.ridgeAt <= Length() || heights.ridgeAt >= span) {
    return Fault{"building.roof.ridge_at", "the ridge stands outside the building; put it between the two eaves"};
  }
  const Length beyond = span - heights.ridgeAt;
  if (roof.ridgeHeight) {
    heights.ridge = *roof.ridgeHeight;
  } else if (roof.slope) {
    heights.ridge = roof.eave + riseOver(*roof.slope, heights.ridgeAt);
  } else {
    return Fault{"building.roof", "a gable needs ridge_height or slope"};
  }
  if (roof.farEave) {
    heights.farEave = *roof.farEave;
  } else if (roof.farSlope) {
    heights.farEave = heights.ridge - riseOver(*roof.farSlope, beyond);
  } else if (roof.slope) {
    heights.farEave = heights.ridge - riseOver(*roof.slope, beyond);
  } else {
    // The same slope as the first side, from its rise over its run.
    heights.farEave =
        heights.ridge - riseOver(Slope{Slope::As::RisePerRun, heights.ridge - roof.eave, heights.ridgeAt, {}}, beyond);
  }
  return heights;
}

// Seen from outside, end walls A and B meet the first eave at their left corner, C and D at their right corner.
HeightLine endWallLine(const RoofHeights& h, Length span, bool firstAtLeft, bool gable) {
  std::vector<FaceVertex> line = {{Length(), h.firstEave}};
  if (gable) line.push_back({h.ridgeAt, h.ridge});
  line.push_back({span, h.farEave});
  const HeightLine fromFirst(std::move(line));
  return firstAtLeft ? fromFirst : fromFirst.mirrored(span);
}

}  // namespace

Outcome<HeightLine> steelLine(const Building& building, const Wall& wall, Length width) {
  const std::string place = "walls." + wall.letter + ".top";
  if (!wall.top.empty()) {
    std::vector<FaceVertex> vertices;
    for (const FacePoint& point : wall.top) {
      if (!vertices.empty() && point.u < vertices.back().u) {
        return Fault{place, "turns back; list its points from the left corner to the right"};
      }
      vertices.push_back({point.u, point.z});
    }
    return HeightLine(std::move(vertices));
  }
  const Roof& roof = building.roof;
  if (roof.kind == Roof::Kind::None)
    return Fault{place, "is not stated and there is no roof; list the points of its steel line"};
  if (wall.line || wall.width) return Fault{place, "is not stated; a free wall lists the points of its steel line"};
  if (roof.kind == Roof::Kind::Level) return HeightLine::level(roof.eave);
  if (!isRectangleAlongAxes(building.outline)) {
    return Fault{"building.roof",
                 "needs a rectangular outline along x and y, from the front left corner counter-clockwise; "
                 "state each wall's top instead"};
  }
  const bool endsAC = roof.ends == Roof::Ends::AC;
  const PlanPoint& nearCorner = building.outline[0];
  const PlanPoint& farCorner = building.outline[2];
  const Length span = endsAC ? farCorner.x - nearCorner.x : farCorner.y - nearCorner.y;
  auto heights = heightsOf(roof, span);
  if (!heights) return heights.faults();
  const bool gable = roof.kind == Roof::Kind::Gable;
  const char letter = wall.letter[0];
  if (endsAC) {
    if (letter == 'A') return endWallLine(heights.value(), width, true, gable);
    if (letter == 'C') return endWallLine(heights.value(), width, false, gable);
    return HeightLine::level(letter == 'D' ? heights.value().firstEave : heights.value().farEave);
  }
  if (letter == 'B') return endWallLine(heights.value(), width, true, gable);
  if (letter == 'D') return endWallLine(heights.value(), width, false, gable);
  return HeightLine::level(letter == 'A' ? heights.value().firstEave : heights.value().farEave);
}

}  // namespace ribwright
