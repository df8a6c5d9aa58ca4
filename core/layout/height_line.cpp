#include "core/layout/height_line.h"

#include <algorithm>
#include <stdexcept>

namespace ribwright {

namespace {

Length onSegment(const FaceVertex& a, const FaceVertex& b, Length u) {
  if (a.z == b.z) return a.z;
  const FaceVertex& low = a.z < b.z ? a : b;
  const FaceVertex& high = a.z < b.z ? b : a;
  const Int128 rise = (high.z - low.z).nanometres();
  const Int128 along = (u - low.u).nanometres();
  const Int128 run = (high.u - low.u).nanometres();
  return low.z + Length::nanometres(static_cast<std::int64_t>(roundHalfEven(rise * along, run)));
}

}  // namespace

HeightLine::HeightLine(std::vector<FaceVertex> vertices) : vertices_(std::move(vertices)) {
  if (vertices_.empty()) throw std::invalid_argument("a height line needs a vertex");
  for (std::size_t i = 1; i < vertices_.size(); ++i) {
    if (vertices_[i].u < vertices_[i - 1].u) throw std::invalid_argument("a height line must not turn back");
  }
}

HeightLine HeightLine::level(Length z) { return HeightLine({{Length(), z}}); }

// Segment i runs from vertex i to vertex i + 1. Steps (two vertices at one u) are never a place of their own.
int HeightLine::segmentAt(Length u, Beside side) const {
  const auto reached = side == Beside::Right
                           ? std::upper_bound(vertices_.begin(), vertices_.end(), u,
                                              [](Length value, const FaceVertex& vertex) { return value < vertex.u; })
                           : std::lower_bound(vertices_.begin(), vertices_.end(), u,
                                              [](const FaceVertex& vertex, Length value) { return vertex.u < value; });
  const int last = static_cast<int>(vertices_.size()) - 2;
  return std::clamp(static_cast<int>(reached - vertices_.begin()) - 1, 0, std::max(last, 0));
}

Length HeightLine::heightAt(Length u, Beside side) const {
  if (vertices_.size() == 1) return vertices_[0].z;
  const auto segment = static_cast<std::size_t>(segmentAt(u, side));
  const FaceVertex& a = vertices_[segment];
  const FaceVertex& b = vertices_[segment + 1];
  if (a.u == b.u) return u < a.u || (u == a.u && side == Beside::Left) ? a.z : b.z;
  return onSegment(a, b, u);
}

bool HeightLine::isLevelAt(Length u, Beside side) const {
  if (vertices_.size() == 1) return true;
  const auto segment = static_cast<std::size_t>(segmentAt(u, side));
  return vertices_[segment].u == vertices_[segment + 1].u || vertices_[segment].z == vertices_[segment + 1].z;
}

HeightLine HeightLine::mirrored(Length width) const {
  std::vector<FaceVertex> turned;
  turned.reserve(vertices_.size());
  for (auto vertex = vertices_.rbegin(); vertex != vertices_.rend(); ++vertex) {
    turned.push_back({width - vertex->u, vertex->z});
  }
  return HeightLine(std::move(turned));
}

HeightLine HeightLine::raised(Length by) const {
  std::vector<FaceVertex> vertices = vertices_;
  for (FaceVertex& vertex : vertices) vertex.z += by;
  return HeightLine(std::move(vertices));
}

HeightLine HeightLine::moved(Length along) const {
  std::vector<FaceVertex> vertices = vertices_;
  for (FaceVertex& vertex : vertices) vertex.u += along;
  return HeightLine(std::move(vertices));
}

Length HeightLine::highest(Length from, Length to) const {
  Length found = std::max(heightAt(from, Beside::Right), heightAt(to, Beside::Left));
  for (const FaceVertex& vertex : vertices_) {
    if (vertex.u > from && vertex.u < to) found = std::max(found, vertex.z);
  }
  return found;
}

Length HeightLine::lowest(Length from, Length to) const {
  Length found = std::min(heightAt(from, Beside::Right), heightAt(to, Beside::Left));
  for (const FaceVertex& vertex : vertices_) {
    if (vertex.u > from && vertex.u < to) found = std::min(found, vertex.z);
  }
  return found;
}

}  // namespace ribwright
