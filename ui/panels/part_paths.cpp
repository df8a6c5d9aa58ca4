#include "ui/panels/part_paths.h"

#include <algorithm>

#include "core/drawing/particulars.h"
#include "core/job/job_file_joined.h"

namespace ribwright {

namespace {

template <class Item>
std::optional<std::size_t> indexOf(const std::vector<Item>& items, const std::string& id) {
  const auto found = std::find_if(items.begin(), items.end(), [&](const Item& item) { return item.id == id; });
  if (found == items.end()) return std::nullopt;
  return static_cast<std::size_t>(found - items.begin());
}

// By its id, or "#1" where it has none.
std::optional<std::size_t> girtIndex(const std::vector<Girt>& girts, const std::string& id) {
  if (const auto index = indexOf(girts, id)) return index;
  for (std::size_t i = 0; i < girts.size(); ++i) {
    if (joined("#", i + 1) == id) return i;
  }
  return std::nullopt;
}

}  // namespace

std::optional<std::string> pathOf(const Job& job, const Part& part) {
  const auto wallAt = wallIndex(job, part.wall);
  if (!wallAt) return std::nullopt;
  const Wall& wall = job.walls[*wallAt];
  const std::string path = itemPath("walls", *wallAt);
  const auto item = [&](std::string_view list, const std::optional<std::size_t>& index) {
    return index ? std::optional(joined(path, ".", itemPath(list, *index))) : std::nullopt;
  };
  switch (part.kind) {
    case Part::Kind::Face:
      return path;
    case Part::Kind::Opening:
      return item("openings", indexOf(wall.openings, part.id));
    case Part::Kind::Penetration:
      return item("penetrations", indexOf(wall.penetrations, part.id));
    case Part::Kind::Girt:
      return item("girts", girtIndex(wall.girts, part.id));
    case Part::Kind::Column:
      return path + ".columns";
    case Part::Kind::Piece:
    case Part::Kind::Screw:
    case Part::Kind::Batch:
      break;
  }
  return std::nullopt;
}

std::vector<std::string> pathsOf(const Job& job, const std::vector<Part>& parts) {
  std::vector<std::string> paths;
  for (const Part& part : parts) {
    const auto path = pathOf(job, part);
    if (!path || part.kind != parts.front().kind) return {};
    if (std::find(paths.begin(), paths.end(), *path) == paths.end()) paths.push_back(*path);
  }
  return paths;
}

}  // namespace ribwright
