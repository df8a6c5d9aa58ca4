// Pieces and cut regions as shapes of GEOS, a geometry library that knows nothing of sheets: https://libgeos.org
// Unit: nanometres.
#pragma once

#include <geos_c.h>

#include <catch2/catch.hpp>
#include <memory>
#include <type_traits>
#include <vector>

#include "core/layout/wall_layout.h"

namespace ribwright::outside {

inline constexpr double kFar = 1e12;

struct Corner {
  double u = 0, z = 0;
};

inline double at(Length length) { return static_cast<double>(length.nanometres()); }

inline GEOSContextHandle_t geos() {
  static const std::unique_ptr<std::remove_pointer_t<GEOSContextHandle_t>, decltype(&GEOS_finish_r)> context(
      GEOS_init_r(), &GEOS_finish_r);
  return context.get();
}

struct Destroy {
  void operator()(GEOSGeometry* shape) const { GEOSGeom_destroy_r(geos(), shape); }
};
using Shape = std::unique_ptr<GEOSGeometry, Destroy>;

inline Shape kept(GEOSGeometry* shape) {
  REQUIRE(shape != nullptr);
  return Shape(shape);
}

inline Shape ringOf(const std::vector<Corner>& corners) {
  const auto count = static_cast<unsigned>(corners.size());
  GEOSCoordSequence* points = GEOSCoordSeq_create_r(geos(), count + 1, 2);
  for (unsigned i = 0; i <= count; ++i)
    GEOSCoordSeq_setXY_r(geos(), points, i, corners[i % count].u, corners[i % count].z);
  return kept(GEOSGeom_createLinearRing_r(geos(), points));
}

inline Shape polygonOf(const std::vector<Corner>& corners) {
  return kept(GEOSGeom_createPolygon_r(geos(), ringOf(corners).release(), nullptr, 0));
}

inline std::vector<Corner> cornersOf(const std::vector<FaceVertex>& vertices) {
  std::vector<Corner> corners;
  for (const FaceVertex& vertex : vertices) corners.push_back({at(vertex.u), at(vertex.z)});
  return corners;
}

inline Shape shapeOf(const Piece& piece) {
  std::vector<GEOSGeometry*> holes;
  for (std::size_t i = 1; i < piece.rings.size(); ++i) holes.push_back(ringOf(cornersOf(piece.rings[i])).release());
  return kept(GEOSGeom_createPolygon_r(geos(), ringOf(cornersOf(piece.rings.front())).release(), holes.data(),
                                       static_cast<unsigned>(holes.size())));
}

inline Shape shapeOf(const CutRegion& cut) {
  std::vector<Corner> corners;
  if (cut.reachesFloor) {
    corners = {{at(cut.left), -kFar}, {at(cut.right), -kFar}};
  } else if (cut.lower.vertices().size() < 2) {
    corners = {{at(cut.left), at(cut.bottom)}, {at(cut.right), at(cut.bottom)}};
  } else {
    corners = cornersOf(cut.lower.vertices());
  }
  std::vector<Corner> above = cornersOf(cut.upper.vertices());
  if (above.size() < 2) above = {{at(cut.left), at(cut.top)}, {at(cut.right), at(cut.top)}};
  corners.insert(corners.end(), above.rbegin(), above.rend());
  return polygonOf(corners);
}

}  // namespace ribwright::outside
