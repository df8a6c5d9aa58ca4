#include "core/cutting/rake_fit.h"

#include <algorithm>

#include "core/layout/whole_root.h"

namespace ribwright {
namespace {

// Height of the edge at x (between its ends), up to the next nanometre.
Length heightUp(const TopEdge& edge, Length x) {
  std::size_t i = 1;
  while (i + 1 < edge.size() && edge[i].u < x) ++i;
  const Int128 run = (edge[i].u - edge[i - 1].u).nanometres();
  const Int128 above = Int128((edge[i].z - edge[i - 1].z).nanometres()) * (x - edge[i - 1].u).nanometres();
  const Int128 up = above > 0 ? (above + run - 1) / run : -(-above / run);
  return edge[i - 1].z + Length::nanometres(static_cast<std::int64_t>(up));
}

struct Steep {
  Int128 rise = 0, run = 1;
};

void takeSteepest(Steep& steepest, const TopEdge& edge) {
  for (std::size_t i = 1; i < edge.size(); ++i) {
    const Int128 rise = absolute(edge[i].z - edge[i - 1].z).nanometres(),
                 run = (edge[i].u - edge[i - 1].u).nanometres();
    if (rise * steepest.run > steepest.rise * run) steepest = {rise, run};
  }
}

Length height(const TopEdge& edge) { return std::max(edge.front().z, edge.back().z); }

}  // namespace

std::optional<Length> uprightKerf(const TopEdge& a, const TopEdge& b, Length kerf) {
  Steep steepest;
  takeSteepest(steepest, a);
  takeSteepest(steepest, b);
  if (kerf > Length::millimetres(100) || steepest.rise > Length::millimetres(20'000).nanometres()) return std::nullopt;
  const Int128 wide = kerf.nanometres();
  const Int128 square = wide * wide * (steepest.run * steepest.run + steepest.rise * steepest.rise);
  Int128 root = wholeRoot(square);
  if (root * root < square) ++root;
  return Length::nanometres(static_cast<std::int64_t>((root + steepest.run - 1) / steepest.run));
}

std::optional<Length> rakeFit(const TopEdge& a, const TopEdge& b, Length kerf) {
  const Length from = std::max(a.front().u, b.front().u), to = std::min(a.back().u, b.back().u);
  if (from >= to) return std::nullopt;
  const auto apart = uprightKerf(a, b, kerf);
  if (!apart) return std::nullopt;
  // A corner of one edge or of the other: there the sum is greatest, and one of the two is whole.
  Length most = heightUp(a, from) + heightUp(b, from);
  const auto look = [&](Length x) {
    if (x >= from && x <= to) most = std::max(most, heightUp(a, x) + heightUp(b, x));
  };
  look(to);
  for (const FaceVertex& corner : a) look(corner.u);
  for (const FaceVertex& corner : b) look(corner.u);
  return std::max({most + *apart, height(a), height(b)});
}

}  // namespace ribwright
