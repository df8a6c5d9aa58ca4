#include "core/editing/face_box.h"

namespace ribwright {

FaceBox withEdgeAt(FaceBox box, BoxEdge edge, const FacePoint& to) {
  if (edge.across != 0) (edge.across < 0 ? box.left : box.right) = to.u;
  if (edge.up != 0) (edge.up < 0 ? box.bottom : box.top) = to.z;
  return box;
}

std::vector<Fault> faultsOfBox(const FaceBox& box, const std::string& place) {
  std::vector<Fault> faults;
  if (box.right <= box.left)
    faults.push_back({place, "would have no width; keep its left edge left of its right edge"});
  if (box.top <= box.bottom)
    faults.push_back({place, "would have no height; keep its lower edge below its upper edge"});
  return faults;
}

}  // namespace ribwright
