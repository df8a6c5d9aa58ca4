#include "tests/fuzz/run_metal.h"

#include "tests/fuzz/exact_distance.h"

namespace ribwright::fuzz {
namespace {

bool isInside(const Piece& piece, Nm u, Nm z) {
  for (std::size_t i = 0; i < piece.rings.size(); ++i) {
    if (placeIn(piece.rings[i], at(u), at(z)) != (i == 0 ? Place::Inside : Place::Outside)) return false;
  }
  return true;
}

struct Crossing {
  Nm z = 0;
  bool sloped = false;
};

// Heights of the outlines' edges just left or just right of u, rising.
std::vector<Crossing> crossings(const Piece& piece, Nm u, Side side) {
  std::vector<Crossing> found;
  for (const Ring& ring : piece.rings) {
    for (std::size_t i = 0; i < ring.size(); ++i) {
      FaceVertex a = ring[i], b = ring[(i + 1) % ring.size()];
      if (a.u > b.u) std::swap(a, b);
      const Nm from = nm(a.u), to = nm(b.u);
      if (from == to || (side == Side::Left ? u <= from || u > to : u < from || u >= to)) continue;
      found.push_back({Segment{from, nm(a.z), to, nm(b.z)}.heightAt(u), a.z != b.z});
    }
  }
  std::sort(found.begin(), found.end(), [](const Crossing& a, const Crossing& b) { return a.z < b.z; });
  return found;
}

std::vector<Stand> standsBeside(const Piece& piece, Nm u, Side side) {
  std::vector<Stand> stands;
  const std::vector<Crossing> found = crossings(piece, u, side);
  for (std::size_t i = 0; i + 1 < found.size(); i += 2) {
    if (found[i].z < found[i + 1].z) {
      stands.push_back({{found[i].z, found[i + 1].z}, found[i].sloped, found[i + 1].sloped});
    }
  }
  return stands;
}

}  // namespace

std::vector<Stand> commonStands(const std::vector<Stand>& a, const std::vector<Stand>& b) {
  std::vector<Stand> both;
  for (const Stand& p : a) {
    for (const Stand& q : b) {
      const bool later = p.z.from < q.z.from, earlier = q.z.to < p.z.to;
      const Stand stand{{later ? q.z.from : p.z.from, earlier ? q.z.to : p.z.to},
                        later ? q.fromSloped : p.fromSloped,
                        earlier ? q.toSloped : p.toSloped};
      if (stand.z.from < stand.z.to) both.push_back(stand);
    }
  }
  return both;
}

RunMetal::RunMetal(const WallLayout& layout, int run) : layout_(layout) {
  for (std::size_t i = 0; i < layout.pieces.size(); ++i) {
    const Piece& piece = layout.pieces[i];
    if (piece.run != run) continue;
    pieces_.push_back(static_cast<int>(i));
    widest_ = std::max(widest_, nm(piece.right - piece.left));
  }
  std::sort(pieces_.begin(), pieces_.end(), [&](int a, int b) {
    return layout.pieces[static_cast<std::size_t>(a)].left < layout.pieces[static_cast<std::size_t>(b)].left;
  });
}

template <class Visit>
void RunMetal::near(Nm u, Nm z, Nm limit, const Visit& visit) const {
  const auto leftOf = [&](int i) { return nm(layout_.pieces[static_cast<std::size_t>(i)].left); };
  auto it = std::lower_bound(pieces_.begin(), pieces_.end(), u - limit - widest_,
                             [&](int i, Nm place) { return leftOf(i) < place; });
  for (; it != pieces_.end() && leftOf(*it) <= u + limit; ++it) {
    const Piece& piece = layout_.pieces[static_cast<std::size_t>(*it)];
    if (nm(piece.right) < u - limit || nm(piece.bottom) > z + limit || nm(piece.top) < z - limit) continue;
    visit(*it, piece);
  }
}

std::vector<int> RunMetal::through(Nm u, Nm z) const {
  std::vector<int> found;
  near(u, z, 0, [&](int index, const Piece& piece) {
    if (isInside(piece, u, z)) found.push_back(index);
  });
  std::sort(found.begin(), found.end(), [&](int a, int b) {
    return layout_.pieces[static_cast<std::size_t>(a)].hangOrder <
           layout_.pieces[static_cast<std::size_t>(b)].hangOrder;
  });
  return found;
}

bool RunMetal::nearEdge(Nm u, Nm z, Nm limit) const {
  bool found = false;
  near(u, z, limit, [&](int, const Piece& piece) {
    for (const Ring& ring : piece.rings) found = found || nearerThan({at(u), at(z)}, ring, limit);
  });
  return found;
}

std::vector<Stand> RunMetal::standsOf(const Piece& piece, Nm u) const {
  return commonStands(standsBeside(piece, u, Side::Left), standsBeside(piece, u, Side::Right));
}

std::vector<Stand> RunMetal::standsOf(int module, Nm u) const {
  std::vector<Stand> all;
  for (const int index : pieces_) {
    const Piece& piece = layout_.pieces[static_cast<std::size_t>(index)];
    if (piece.module != module || nm(piece.left) >= u || nm(piece.right) <= u) continue;
    const std::vector<Stand> own = standsOf(piece, u);
    all.insert(all.end(), own.begin(), own.end());
  }
  std::sort(all.begin(), all.end(), [](const Stand& a, const Stand& b) { return a.z.from < b.z.from; });
  std::vector<Stand> joined;
  for (const Stand& stand : all) {
    if (joined.empty() || stand.z.from > joined.back().z.to) {
      joined.push_back(stand);
    } else if (stand.z.to > joined.back().z.to) {
      joined.back().z.to = stand.z.to;
      joined.back().toSloped = stand.toSloped;
    }
  }
  return joined;
}

bool RunMetal::overBox(const Span& u, const Span& z, std::optional<int> module) const {
  return std::any_of(pieces_.begin(), pieces_.end(), [&](int index) {
    const Piece& piece = layout_.pieces[static_cast<std::size_t>(index)];
    return (!module || piece.module == *module) && std::max(nm(piece.left), u.from) < std::min(nm(piece.right), u.to) &&
           std::max(nm(piece.bottom), z.from) < std::min(nm(piece.top), z.to);
  });
}

}  // namespace ribwright::fuzz
